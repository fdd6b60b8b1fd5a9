import { cellAt, rangeOf, type CellArea } from "../../workbook/cellArea";
import { changed } from "./changed";
import { FilledCells } from "./FilledCells";
import type { FormulaSources, Precedent } from "./precedents";
import type { ReadFormula, ReadSheets } from "./ReadSheets";
import { sheetText } from "./reference";
import type { FormsHeld, Staleness } from "./staleness";
import type { WorkingsCell, WorkingsSheet } from "./WorkingsSheet";

/** What a flag says: 0 nothing changed, 1 an input changed since sharing, 2 the cell at the same place is stale. */
export const STALE = 2;

/** The sheet of flags for one shared sheet: each flag stands where on the shared sheet its cell stands. */
export interface FlagSheet {
  readonly name: string;
  /** The shared sheet that it watches. */
  readonly of: string;
  readonly cells: readonly WorkingsCell[];
}

/** Where flags come from. */
export interface FlagsFor {
  readonly sheets: ReadSheets;
  readonly sources: readonly FormulaSources[];
  readonly fixed: ReadonlySet<number>;
  /** What a fixed formula gives where none of our functions is asked; undefined where that is nowhere. */
  readonly withoutCalls: (formula: ReadFormula) => string | undefined;
  readonly held: FormsHeld;
  readonly staleness: Staleness;
  /** The sheet of flags for a shared sheet. */
  readonly flagSheetOf: (sheet: string) => string;
  readonly workings: WorkingsSheet;
}

/**
 * A flag for each input of a fixed cell, each formula in between, each fixed cell, and each cell calculated from one. A range of cells is
 * asked through the same range of their flags, so that flags grow with the sheet and no faster. An input is compared with what it was; a
 * formula takes the largest flag of what it refers to, and counts the filled cells of a range, which tells of additions. One in between that
 * gives what it gave has not changed, whatever did before it; it is asked only then, because two programs may differ in the last figure.
 */
export function changeFlags({ sheets, sources, fixed, withoutCalls, held, staleness, flagSheetOf, workings }: FlagsFor): readonly FlagSheet[] {
  const { before, after, leaves } = staleness;
  const found = new Map<string, WorkingsCell[]>(sheets.names.map((name) => [name, []]));
  const flag = (sheet: string, row: number, column: number, text: string): void =>
    void found.get(sheet)?.push({ cell: cellAt(row, column), content: `=${text}` });
  for (const { sheet, row, column } of leaves) {
    const cell = `${sheetText(sheet)}!${cellAt(row, column)}`;
    flag(sheet, row, column, `IF(${changed(cell, sheets.sheet(sheet)?.at(row, column), (text) => workings.text(`${cell} at sharing`, text))},1,0)`);
  }

  const flagged = flaggedCells(sheets, [...fixed, ...held.keys(), ...before, ...after], leaves);
  const filled = new Map(sheets.names.map((name) => [name, new FilledCells(sheets.sheet(name)?.filled ?? new Map())]));
  const largest = (from: readonly Precedent[], isCounted: boolean): string => {
    const precedents = distinct(from);
    const flags = precedents
      .filter(({ sheet, area }) => (flagged.get(sheet)?.count(area) ?? 0) > 0)
      .map(({ sheet, area }) => `${sheetText(flagSheetOf(sheet))}!${rangeOf(area)}`);
    const counts = isCounted
      ? precedents
          .filter(({ area }) => area.rows * area.columns > 1)
          .map(({ sheet, area }) => `IF(COUNTA(${sheetText(sheet)}!${rangeOf(area)})<>${filled.get(sheet)?.count(area) ?? 0},1,0)`)
      : [];
    return largestOf([...flags, ...counts], workings);
  };
  for (const formula of sheets.formulas) {
    const { id, sheet, area } = formula;
    const was = (cell: string): string =>
      changed(cell, sheets.sheet(sheet)?.at(area.row, area.column), (text) => workings.text(`${cell} at sharing`, text));
    const part = {
      was,
      withoutCalls: fixed.has(id) ? withoutCalls(formula) : undefined,
      isFixed: fixed.has(id),
      held: held.get(id),
      isBefore: before.has(id),
      isAfter: after.has(id),
      source: sources[id],
    };
    const text = flagText(formula, part, largest);
    if (text === undefined) continue;
    const anchor = cellAt(area.row, area.column);
    for (let down = 0; down < area.rows; down++)
      for (let across = 0; across < area.columns; across++) flag(sheet, area.row + down, area.column + across, down + across === 0 ? text : anchor);
  }
  return sheets.names.flatMap((name) => {
    const cells = found.get(name) ?? [];
    return cells.length === 0 ? [] : [{ name: flagSheetOf(name), of: name, cells }];
  });
}

interface Part {
  /** The condition that a cell holds something else than at sharing. */
  readonly was: (cell: string) => string;
  readonly isFixed: boolean;
  readonly withoutCalls: string | undefined;
  /** The cells for whose content the formula is written, where that is so. */
  readonly held: readonly Precedent[] | undefined;
  readonly isBefore: boolean;
  readonly isAfter: boolean;
  readonly source: FormulaSources | undefined;
}

function flagText(
  { sheet, reading, area }: ReadFormula,
  { was, withoutCalls, isFixed, held, isBefore, isAfter, source }: Part,
  largest: (from: readonly Precedent[], isCounted: boolean) => string,
): string | undefined {
  const all = source?.precedents ?? [];
  // What gives another value each time, and what cannot be looked through, has changed as soon as it is calculated again.
  const isRestless = source?.isVolatile === true || (isFixed && source?.isUnseen === true);
  if (isFixed && isRestless) return String(STALE);
  if (isFixed) return fixedFlag(largest(all, true), withoutCalls, was);
  const outlived = (otherwise: string): string => (held === undefined ? otherwise : `IF(${largest(held, true)}>0,${STALE},${otherwise})`);
  if (isBefore && isRestless) return outlived(`MAX(${largest(all, true)},IF(${changed(`${sheetText(sheet)}!${reading.cell}`, reading)},1,0))`);
  // One that says itself that it is fixed asks its own flag, and a spill has more cells than the first.
  const isAlone = !isAfter && held === undefined && area.rows * area.columns === 1;
  if (isBefore && isAlone) return `IF(${largest(all, true)}>0,IF(${was(`${sheetText(sheet)}!${reading.cell}`)},1,0),0)`;
  if (isBefore) return outlived(largest(all, true));
  if (isAfter) return outlived(`IF(${largest(all, false)}=${STALE},${STALE},0)`);
  return held === undefined ? undefined : outlived("0");
}

// A cell holds 8,192 characters, and calls stand in 64 others (Excel specifications and limits).
const LONGEST_FLAG = 8000;

/** Stale once inputs changed, unless the formula goes past our functions and gives what it gave; while anything it asks is stale, it is too. */
function fixedFlag(inputs: string, withoutCalls: string | undefined, was: (text: string) => string): string {
  const plainly = `IF(${inputs}>0,${STALE},0)`;
  if (withoutCalls === undefined) return plainly;
  const precisely = `IF(${inputs}=1,IF(${was(`(${withoutCalls})`)},${STALE},0),${inputs})`;
  return precisely.length > LONGEST_FLAG ? plainly : precisely;
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
): ReadonlyMap<string, FilledCells> {
  const columns = new Map<string, Map<number, Set<number>>>(sheets.names.map((name) => [name, new Map()]));
  const note = (sheet: string, row: number, column: number): void => {
    const here = columns.get(sheet);
    const rows = here?.get(column) ?? new Set<number>();
    here?.set(column, rows.add(row));
  };
  for (const { sheet, row, column } of leaves) note(sheet, row, column);
  for (const id of formulas) {
    const { sheet, area } = sheets.formulas[id] as ReadFormula;
    eachCell(area, (row, column) => note(sheet, row, column));
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
