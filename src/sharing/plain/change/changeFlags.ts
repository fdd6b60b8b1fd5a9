import { cellAt, covers, rangeOf, type CellArea } from "../../../workbook/cellArea";
import { anyStale } from "./anyStale";
import { changed } from "./changed";
import { FilledCells } from "../reading/FilledCells";
import { flagText, type Largest } from "./flagText";
import type { ReadFormula, ReadSheets } from "../reading/ReadSheets";
import { sheetText } from "../formula/reference";
import type { FormulaSources, Precedent } from "./FormulaSources";
import type { Sizes } from "./Sizes";
import type { FormsHeld, Staleness } from "./staleness";
import type { WorkingsCell, WorkingsSheet } from "../WorkingsSheet";

/** The sheet of flags for one shared sheet: each flag stands where on the shared sheet its cell stands. */
export interface FlagSheet {
  readonly name: string;
  /** The shared sheet that it watches. */
  readonly of: string;
  readonly cells: readonly WorkingsCell[];
}

export interface ChangeFlags {
  readonly sheets: readonly FlagSheet[];
  /** The flag that a formula is guarded by, by its number, where that is not the one in its place. */
  readonly guards: ReadonlyMap<number, string>;
}

/** Where flags come from. */
export interface FlagsFor {
  readonly sheets: ReadSheets;
  readonly sources: readonly FormulaSources[];
  readonly fixed: ReadonlySet<number>;
  /** What a fixed formula gives where none of our functions is asked; undefined where that is nowhere. */
  readonly withoutCalls: (formula: ReadFormula) => string | undefined;
  readonly held: FormsHeld;
  readonly sizes: Sizes;
  readonly staleness: Staleness;
  /** The sheet of flags for a shared sheet. */
  readonly flagSheetOf: (sheet: string) => string;
  readonly workings: WorkingsSheet;
}

/**
 * A flag for each input of a fixed cell, each formula in between, each fixed cell, and each cell calculated from one. A range of cells is
 * asked through the same range of their flags, so that flags grow with the sheet and no faster. An input is compared with what it was; a
 * formula takes the largest flag of what it refers to, and counts the filled cells of a range, which tells of additions. One in between that
 * gives what it gave has not changed, whatever did before it; it is asked only then, because two programs may differ in the last figure. A formula
 * that does not show its references is stale as soon as any fixed cell is; where it is an input itself, it counts as changed once it gives
 * something else.
 */
export function changeFlags({ sheets, sources, fixed, withoutCalls, held, sizes, staleness, flagSheetOf, workings }: FlagsFor): ChangeFlags {
  const { before, after, leaves } = staleness;
  const found = new Map<string, Map<string, string>>(sheets.names.map((name) => [name, new Map()]));
  const flag = (sheet: string, row: number, column: number, text: string): void => void found.get(sheet)?.set(cellAt(row, column), text);
  const changedAt = (sheet: string, row: number, column: number): string => {
    const cell = `${sheetText(sheet)}!${cellAt(row, column)}`;
    return changed(cell, sheets.sheet(sheet)?.at(row, column), (text) => workings.text(`${cell} at sharing`, text));
  };
  for (const { sheet, row, column } of leaves) flag(sheet, row, column, `IF(${changedAt(sheet, row, column)},1,0)`);

  const flagged = flaggedCells(sheets, [...fixed, ...held.keys(), ...sizes.resized.keys(), ...before, ...after], leaves, sizes);
  const filled = new Map(sheets.names.map((name) => [name, new FilledCells(sheets.sheet(name)?.filled ?? new Map())]));
  const largest: Largest = (from, isCounted, ...further) => {
    const precedents = distinct(from);
    const flags = precedents
      .filter(({ sheet, area }) => (flagged.get(sheet)?.count(area) ?? 0) > 0)
      .map(({ sheet, area }) => `${sheetText(flagSheetOf(sheet))}!${rangeOf(area)}`);
    const counts = isCounted
      ? precedents
          .filter(({ area }) => area.rows * area.columns > 1)
          .map(({ sheet, area }) => `IF(COUNTA(${sheetText(sheet)}!${rangeOf(area)})<>${filled.get(sheet)?.count(area) ?? 0},1,0)`)
      : [];
    return largestOf([...flags, ...counts, ...further], workings);
  };

  const any = anyStale({ sheets, sources, fixed, held, sizes, staleness, workings }, largest);
  const guards = new Map<number, string>();
  const beyond: { readonly sheet: string; readonly cell: string; readonly anchor: string }[] = [];
  for (const formula of sheets.formulas) {
    const { id, sheet, area } = formula;
    const part = {
      ...{
        isFixed: fixed.has(id),
        held: held.get(id),
        resized: sizes.resized.get(id),
        isBefore: before.has(id),
        isAfter: after.has(id),
        source: sources[id],
      },
      withoutCalls: fixed.has(id) ? withoutCalls(formula) : undefined,
    };
    const beside = (text: string): string => {
      const guard = workings.rows(`${sheetText(sheet)}!${formula.reading.cell}: whether it can be followed`, [text]);
      guards.set(id, guard);
      return guard;
    };
    const givesElse = (cell: string): string =>
      changed(cell, sheets.sheet(sheet)?.at(area.row, area.column), (text) => workings.text(`${cell} at sharing`, text));
    const texts = { largest, any: () => any(id), beside, givesElse, changedAt: (row: number, column: number) => changedAt(sheet, row, column) };
    const text = flagText(formula, part, texts);
    if (text === undefined) continue;
    const anchor = cellAt(area.row, area.column);
    for (let down = 0; down < area.rows; down++)
      for (let across = 0; across < area.columns; across++) flag(sheet, area.row + down, area.column + across, down + across === 0 ? text : anchor);
    eachCell(sizes.reachOf(formula), (row, column) => void (covers(area, row, column) || beyond.push({ sheet, cell: cellAt(row, column), anchor })));
  }
  // What a formula may come to fill and is not filled yet; a blank cell there may be an input of a fixed one.
  const leafCells = new Set(leaves.map(({ sheet, row, column }) => `${sheet}!${cellAt(row, column)}`));
  for (const { sheet, cell, anchor } of beyond) {
    const before = found.get(sheet)?.get(cell);
    if (before === undefined || leafCells.has(`${sheet}!${cell}`))
      found.get(sheet)?.set(cell, before === undefined ? anchor : `MAX(${before},${anchor})`);
  }
  const flagSheets = sheets.names.flatMap((name) => {
    const cells = [...(found.get(name) ?? [])].map(([cell, text]): WorkingsCell => ({ cell, content: `=${text}` }));
    return cells.length === 0 ? [] : [{ name: flagSheetOf(name), of: name, cells }];
  });
  return { sheets: flagSheets, guards };
}

// A function takes 255 arguments, a cell 8,192 characters (Excel specifications and limits).
const MOST_ARGUMENTS = 200;
const LONGEST = 4000;

/** The largest of flags, in steps on the sheet of workings where there are too many for one formula. */
function largestOf(texts: readonly string[], workings: WorkingsSheet): string {
  if (texts.length === 0) return "0";
  const lots: string[][] = [[]];
  let length = 0;
  for (const text of texts) {
    const lot = lots.at(-1) as string[];
    if (lot.length > 0 && (lot.length >= MOST_ARGUMENTS || length + text.length > LONGEST)) {
      lots.push([text]);
      length = text.length;
    } else {
      lot.push(text);
      length += text.length + 1;
    }
  }
  const largest = (lot: readonly string[]): string => `MAX(${lot.join(",")})`;
  if (lots.length === 1) return largest(lots[0] ?? []);
  return `MAX(${workings.rows("Whether inputs changed", lots.map(largest))})`;
}

const distinct = (precedents: readonly Precedent[]): readonly Precedent[] => [
  ...new Map(precedents.map((one) => [`${one.sheet}!${rangeOf(one.area)}`, one])).values(),
];

function flaggedCells(
  sheets: ReadSheets,
  formulas: readonly number[],
  leaves: readonly { readonly sheet: string; readonly row: number; readonly column: number }[],
  { reachOf }: Sizes,
): ReadonlyMap<string, FilledCells> {
  const columns = new Map<string, Map<number, Set<number>>>(sheets.names.map((name) => [name, new Map()]));
  const note = (sheet: string, row: number, column: number): void => {
    const here = columns.get(sheet);
    const rows = here?.get(column) ?? new Set<number>();
    here?.set(column, rows.add(row));
  };
  for (const { sheet, row, column } of leaves) note(sheet, row, column);
  for (const id of formulas) {
    const formula = sheets.formulas[id] as ReadFormula;
    const { sheet } = formula;
    eachCell(reachOf(formula), (row, column) => note(sheet, row, column));
  }
  return new Map(
    [...columns].map(([sheet, byColumn]) => [
      sheet,
      new FilledCells(new Map([...byColumn].map(([column, rows]) => [column, [...rows].sort((a, b) => a - b)]))),
    ]),
  );
}

function eachCell({ row, column, rows, columns }: CellArea, visitor: (row: number, column: number) => void): void {
  for (let down = 0; down < rows; down++) for (let across = 0; across < columns; across++) visitor(row + down, column + across);
}
