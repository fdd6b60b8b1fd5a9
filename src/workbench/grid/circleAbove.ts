import type { FWorksheet } from "@univerjs/sheets/facade";
import { sourcesOf } from "../../sharing/plain/change/precedents";
import type { Precedent } from "../../sharing/plain/change/FormulaSources";
import { namesOf } from "../../sharing/plain/reading/ReadSheets";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, covers, rangeOf, type CellArea } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { spillsOver, type SpillAt } from "../../workbook/grid/reading/readCell";
import { namesIn } from "../../workbook/grid/writing/definedNames";
import type { CellAddress } from "../../workbook/Workbook";

/** A cell with a formula. */
interface Node {
  readonly key: string;
  readonly sheet: FWorksheet;
  readonly row: number;
  readonly column: number;
}

// What somebody waits for at each press of a key; a longer way back is not gone to its end.
const MOST_FORMULAS = 2000;
// Of a few large sheets.
const MOST_KNOWN = 20_000;
// Smaller areas are gone through cell by cell.
const SMALL = 1000;

/**
 * The cells of a circle that a cell is calculated from, itself among them or not: each reads the next one, and the last the first. The engine works
 * with what the cells held before, without an error, and goes on at each calculation. A branch that is not taken counts like one that is.
 * @param typed the formula that is about to stand in the cell; left out: what stands there
 * @returns undefined where there is none, or none was found among the nearest formulas
 */
export function circleAbove(engine: GridEngine, address: CellAddress, typed?: string): readonly CellAddress[] | undefined {
  const start = engine.book.getSheetByName(address.sheet);
  if (!start) return undefined;
  const { row, column } = areaNamed(address.cell);
  const walk = formulasRead(engine, nodeAt(start, row, column), typed);
  const way: { readonly node: Node; readonly ahead: Node[] }[] = [];
  const [onWay, done] = [new Set<string>(), new Set<string>()];
  const enter = (node: Node): void => {
    onWay.add(node.key);
    way.push({ node, ahead: [...walk(node)] });
  };
  enter(nodeAt(start, row, column));
  while (way.length > 0) {
    const last = way.at(-1) as (typeof way)[number];
    const next = last.ahead.pop();
    if (next === undefined) {
      onWay.delete(last.node.key);
      done.add(last.node.key);
      way.pop();
    } else if (onWay.has(next.key)) {
      const circle = way.slice(way.findIndex(({ node }) => node.key === next.key));
      return circle.map(({ node }) => ({ sheet: node.sheet.getSheetName(), cell: cellAt(node.row, node.column) }));
    } else if (!done.has(next.key)) {
      if (done.size + way.length >= MOST_FORMULAS) return undefined;
      enter(next);
    }
  }
  return undefined;
}

const nodeAt = (sheet: FWorksheet, row: number, column: number): Node => ({ key: `${sheet.getSheetId()} ${row} ${column}`, sheet, row, column });

/** Tells the cells with formulas that one reads. */
function formulasRead(engine: GridEngine, start: Node, typed: string | undefined): (node: Node) => Node[] {
  const sheets = engine.book.getSheets().map((one) => one.getSheetName());
  const names = namesIn(engine).map(({ name, sheet, refersTo }) => ({ name, formula: `=${refersTo}`, ...(sheet === undefined ? {} : { sheet }) }));
  const nameOf = namesOf(names);
  const known = knownFor(engine, JSON.stringify([sheets, names]));
  const spills = new Map<string, SpillAt>();
  const spillsOn = (sheet: FWorksheet): SpillAt => {
    const found = spills.get(sheet.getSheetId()) ?? spillsOver(engine, sheet.getSheetId());
    spills.set(sheet.getSheetId(), found);
    return found;
  };
  const spillOf = (name: string, cell: string): string | undefined => {
    const sheet = engine.book.getSheetByName(name);
    const { row, column } = areaNamed(cell);
    const area = sheet ? spillsOn(sheet)(row, column) : undefined;
    return area && rangeOf(area);
  };
  const isStart = (key: string): boolean => typed !== undefined && key === start.key;
  return (node) => {
    const formula = isStart(node.key)
      ? (typed ?? "")
      : (engine.spills.getFormulaStringByCell(node.row, node.column, node.sheet.getSheetId(), engine.book.getId()) ?? "");
    if (formula === "") return [];
    const cell = cellAt(node.row, node.column);
    const around = { sheet: node.sheet.getSheetName(), cell, area: cell, nameOf, spillOf, tableOf: () => undefined };
    const found = new Map<string, Node>();
    const key = `${node.key} ${formula}`;
    // The size of a spill changes with what it is calculated from.
    const precedents = (formula.includes("#") ? undefined : known.get(key)) ?? sourcesOf(formula, around, sheets).precedents;
    known.set(key, precedents);
    for (const { sheet: name, area } of precedents) {
      const sheet = engine.book.getSheetByName(name);
      if (!sheet) continue;
      for (const [row, column] of filledIn(sheet, area)) {
        const own = sheet.getSheet().getCellRaw(row, column);
        const place = (own?.f ?? "") === "" && (own?.si ?? "") === "" ? (spillsOn(sheet)(row, column) ?? { row, column }) : { row, column };
        const read = nodeAt(sheet, place.row, place.column);
        found.set(read.key, read);
      }
      if (isStart(start.key) && start.sheet.getSheetName() === name && covers(area, start.row, start.column)) found.set(start.key, start);
    }
    return [...found.values()];
  };
}

type Known = Map<string, readonly Precedent[]>;

/** What formulas read, by their cell and text: long ones take a while to take apart, and somebody looks at one cell after another. */
const KNOWN = new WeakMap<GridEngine, { readonly around: string; readonly formulas: Known }>();

function knownFor(engine: GridEngine, around: string): Known {
  const before = KNOWN.get(engine);
  if (before?.around === around && before.formulas.size < MOST_KNOWN) return before.formulas;
  const formulas: Known = new Map();
  KNOWN.set(engine, { around, formulas });
  return formulas;
}

/** The cells of an area that hold anything, those that formulas of other cells fill among them. */
function filledIn(sheet: FWorksheet, area: CellArea): (readonly [row: number, column: number])[] {
  const found: (readonly [number, number])[] = [];
  if (area.rows * area.columns <= SMALL)
    for (let row = area.row; row < area.row + area.rows; row++)
      for (let column = area.column; column < area.column + area.columns; column++) found.push([row, column]);
  else
    sheet.getSheet().getCellMatrix().forValue((row, column) => void (covers(area, row, column) && found.push([row, column]))); // prettier-ignore
  return found;
}
