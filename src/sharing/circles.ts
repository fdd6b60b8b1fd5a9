import { tokenize, tokenTypes } from "@borgar/fx";
import { cellArea, wholeLines, type CellArea } from "../workbook/cellArea";
import type { RangeReading } from "../workbook/Workbook";
import { CellsLeft } from "./CellsLeft";

/** A cell, and its sheet. */
export interface CellInCircle {
  readonly sheet: string;
  readonly cell: string;
}

interface Node extends CellInCircle {
  readonly formula: string;
  readonly own: CellArea;
}

/** What a formula on the way is calculated from, and how far that has been gone through. */
interface Step {
  readonly node: number;
  readonly from: readonly { readonly sheet: number; readonly area: CellArea }[];
  next: number;
  /** Where to look on in the area at hand. */
  at: { readonly column: number; readonly row: number };
}

/**
 * Formula cells that are calculated from themselves, at whatever distance. Spreadsheets show 0 for them, or whatever came of it last, and no
 * error. Names and tables are not looked through, and a branch that is not taken counts like one that is. Takes time in proportion to the formulas
 * and what they refer to.
 */
export function circles(sheets: readonly RangeReading[]): readonly CellInCircle[] {
  const nodes: Node[] = [];
  const places = new Map(sheets.map(({ sheet }, place) => [sheet.toUpperCase(), place]));
  const left = sheets.map(({ sheet, rows }) => {
    const cells = new CellsLeft();
    for (const row of rows)
      for (const { cell, formula, spill } of row) {
        const own = formula === "" ? undefined : cellArea(spill === "" ? cell : spill);
        if (own === undefined) continue;
        cells.add(own, nodes.length);
        nodes.push({ sheet, cell, formula, own });
      }
    return cells;
  });
  const way: Step[] = [];
  const onWay = new Map<number, number>();
  const found = new Set<number>();
  const begin = (node: number): void => {
    const { sheet, formula } = nodes[node] as Node;
    const here = places.get(sheet.toUpperCase()) ?? 0;
    const from = referred(formula).flatMap(({ name, area }) => {
      const on = name === undefined ? here : places.get(name);
      return on === undefined ? [] : [{ sheet: on, area }];
    });
    onWay.set(node, way.length);
    way.push({ node, from, next: 0, at: { column: 0, row: 0 } });
  };
  for (const first of nodes.keys()) {
    if (!isLeft(first)) continue;
    begin(first);
    for (let step = way.at(-1); step !== undefined; step = way.at(-1)) {
      const from = step.from[step.next];
      if (from === undefined) {
        way.pop();
        onWay.delete(step.node);
        const { sheet, own } = nodes[step.node] as Node;
        left[places.get(sheet.toUpperCase()) ?? 0]?.remove(own);
        continue;
      }
      const met = left[from.sheet]?.firstIn(from.area, step.at);
      if (met === undefined) {
        step.next++;
        step.at = { column: 0, row: 0 };
        continue;
      }
      step.at = { column: met.column, row: met.row + 1 };
      const since = onWay.get(met.node);
      if (since === undefined) begin(met.node);
      else for (const { node } of way.slice(since)) found.add(node);
    }
  }
  return [...found].sort((one, other) => one - other).map((node) => ({ sheet: nodes[node]?.sheet ?? "", cell: nodes[node]?.cell ?? "" }));

  function isLeft(node: number): boolean {
    const { sheet, own } = nodes[node] as Node;
    return left[places.get(sheet.toUpperCase()) ?? 0]?.has(own.row, own.column) === true;
  }
}

/** Asks where cells stand and not what they hold. */
const NO_VALUE: ReadonlySet<string> = new Set(["ROW", "ROWS", "COLUMN", "COLUMNS", "AREAS", "ISREF", "ISFORMULA", "FORMULATEXT", "SHEET", "CELL"]);

/** Cells that a formula reads, with the sheet in capitals where it names one. */
function referred(formula: string): { readonly name: string | undefined; readonly area: CellArea }[] {
  const found: { readonly name: string | undefined; readonly area: CellArea }[] = [];
  const inside: string[] = [];
  let called = "";
  for (const { type, value } of tokenize(formula)) {
    if (type === tokenTypes.FUNCTION) called = value.toUpperCase();
    else if (value === "(") {
      inside.push(called);
      called = "";
    } else if (value === ")") inside.pop();
    else if ((type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM) && !NO_VALUE.has(inside.at(-1) ?? "")) {
      const mark = value.lastIndexOf("!");
      const range = value.slice(mark + 1);
      const area = cellArea(range) ?? wholeLines(range);
      if (area !== undefined && !value.includes("[")) found.push({ name: mark === -1 ? undefined : sheetIn(value.slice(0, mark)), area });
    }
  }
  return found;
}

const sheetIn = (written: string): string => (written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written).toUpperCase();
