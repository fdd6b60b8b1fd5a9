import { kindWords } from "../runsheet/words/kindWords";
import { sheetWords } from "../runsheet/words/sheetWords";
import { areaNamed } from "../workbook/areaNamed";
import { cellArea, cellAt, COLUMNS_OF_A_SHEET, covers } from "../workbook/cellArea";
import { FIRST_SCREEN } from "../workbook/OutOfView";
import type { CellReading, RangeReading } from "../workbook/Workbook";
import { cellsReferredTo } from "./cellsReferredTo";

// What a reader sees of a sheet without scrolling, on a small screen with the pane open.
const ROWS_IN_VIEW = 5;
const COLUMNS_IN_VIEW = 8;
// Widths of a common column in characters, for text that runs on over the blank cells beside it.
const CHARACTERS = 8;
// A very long text would push it out of view.
const MOST_COLUMNS = 6;
// Blank columns side by side in which a banner can be read.
const COLUMNS_NEEDED = 5;

/**
 * Where a copy says what it is: a blank cell in view. Above what stands on the sheet, else in a blank row near the top, else in a gap of a row near
 * the top, else to the right of the first row and of what its last text runs on over, and where that is out of view in a blank row of the first screen. A run sheet that calculates on has no such gap: there the
 * banner stands behind the printed title in its cell, unless somebody wrote one of their own. A cell that a formula refers to is left blank on a copy that calculates:
 * the text would count there. No row is put in: the record, the formulas and the printed pages name cells by their places.
 * @param isStill true for a copy that does not calculate: on a run sheet it takes the cell that says what to weigh next, which nobody weighs there
 */
export function bannerCell({ range, rows }: Pick<RangeReading, "range" | "rows">, isStill = false): string {
  const used = range === "" || rows.length === 0 ? undefined : areaNamed(range);
  const referred = isStill ? [] : cellsReferredTo(rows, FIRST_SCREEN.rows);
  const isFree = (row: number, column: number): boolean => !referred.some((area) => covers(area, row, column));
  if (used === undefined || (used.row > 0 && isFree(0, 0))) return "A1";
  const [first = []] = rows;
  if (used.row === 0 && isRunSheet(first)) {
    const next = first.find(({ formula }) => formula !== "");
    if (isStill && next !== undefined) return next.cell;
    if (!isStill && isOurTitle(first[0])) return "A1";
  }
  const spills = rows.flat().flatMap(({ spill }) => cellArea(spill) ?? []);
  const inView = Array.from({ length: ROWS_IN_VIEW }, (_, row): RowInView => {
    const isFilled = spills.some((spill) => row >= spill.row && row < spill.row + spill.rows);
    return { isFilled, held: new Map(), isFree: (column) => isFree(row, column) };
  });
  for (const reading of rows.slice(0, ROWS_IN_VIEW).flat()) {
    const { row, column } = areaNamed(reading.cell);
    if (!isBlank(reading)) inView[row]?.held.set(column, reading);
  }
  const last = used.row + used.rows;
  // The first row that is blank from end to end. A formula that shows nothing is none, nor is a row that a spill fills with nothing.
  const blank = inView.findIndex(({ isFilled, held, isFree: isFreeIn }, row) => row < last && !isFilled && held.size === 0 && isFreeIn(0));
  if (blank !== -1) return cellAt(blank, 0);
  const gaps = inView.slice(0, last).map(gapIn);
  const withGap = gaps.findIndex((column) => column !== -1);
  if (withGap !== -1) return cellAt(withGap, gaps[withGap] ?? 0);
  const lower = blankFurtherDown(rows, last, isFree);
  if (lower !== undefined && isOutOfView(inView[used.row]?.held)) return cellAt(lower, 0);
  const heldAbove = inView[used.row]?.held ?? new Map<number, CellReading>();
  let column = Math.max(-1, ...heldAbove.keys());
  column = column === -1 ? 0 : column + runOn(heldAbove.get(column));
  while (!isFree(used.row, column) && column < COLUMNS_OF_A_SHEET - 1) column++;
  return cellAt(used.row, column);
}

/** True where what would be put to the right of a row began where nobody looks. */
const isOutOfView = (held: ReadonlyMap<number, CellReading> | undefined): boolean =>
  Math.max(-1, ...(held ?? new Map()).keys()) >= COLUMNS_IN_VIEW - 1;

/** The first row of the first screen, below what is seen on a small one, that is blank from end to end; one below everything leaves a row free. */
function blankFurtherDown(rows: RangeReading["rows"], last: number, isFree: (row: number, column: number) => boolean): number | undefined {
  const filled = new Set<number>();
  for (const { cell, formula, value, spill } of rows.flat()) {
    if (formula === "" && (value === null || value === "")) continue;
    const { row, rows: down } = areaNamed(spill === "" ? cell : spill);
    for (let one = row; one < Math.min(row + down, FIRST_SCREEN.rows); one++) filled.add(one);
  }
  for (let row = ROWS_IN_VIEW; row < FIRST_SCREEN.rows; row++) if (row !== last && !filled.has(row) && isFree(row, 0)) return row;
  return undefined;
}

interface RowInView {
  /** True where a spill fills some of the row. */
  readonly isFilled: boolean;
  /** What stands in it, by column. */
  readonly held: Map<number, CellReading>;
  isFree(column: number): boolean;
}

/** The first column of enough blank cells in view that no text runs on over; -1 where there are none. */
function gapIn({ isFilled, held, isFree }: RowInView): number {
  if (isFilled) return -1;
  const columns = [...held.keys()].sort((one, other) => one - other);
  let column = 0;
  while (column < COLUMNS_IN_VIEW) {
    const reading = held.get(column);
    // Beyond the last filled cell nothing is in the way.
    const end = columns.find((filled) => filled >= column) ?? Infinity;
    if (reading !== undefined) column += runOn(reading);
    else if (end - column < COLUMNS_NEEDED) column = end;
    else if (isFree(column)) return column;
    else column++;
  }
  return -1;
}

const isRunSheet = (first: readonly CellReading[]): boolean =>
  first.some(({ formula, value }) => formula === "" && typeof value === "string" && value.startsWith(sheetWords.workings.madeWith));

/** Columns that a cell's text takes, its own among them. */
const runOn = (reading: CellReading | undefined): number =>
  typeof reading?.value === "string" ? Math.max(1, Math.min(MOST_COLUMNS, Math.ceil(reading.shown.length / CHARACTERS))) : 1;

const isBlank = ({ value, formula }: CellReading): boolean => formula === "" && (value === null || value === "");

const isOurTitle = (reading: CellReading | undefined): boolean =>
  reading?.cell === "A1" && reading.formula === "" && Object.values(kindWords).some(({ title }) => title === reading.value);
