import { cellArea, wholeLines, type CellArea } from "./cellArea";

/** What somebody sees of a sheet at first, on a larger screen. */
export const FIRST_SCREEN = { rows: 20, columns: 12 } as const;

/** What of a sheet nobody sees. Rows and columns count from 0. */
export interface OutOfView {
  hasRow(row: number): boolean;
  hasColumn(column: number): boolean;
  /** Areas of merged cells: only the first cell of one is shown. */
  readonly merged: readonly CellArea[];
}

/** The same of a sheet's first screen, as a workbook tells it. */
export interface FirstScreen {
  readonly hiddenRows: readonly number[];
  readonly hiddenColumns: readonly number[];
  /** "A2:D3" */
  readonly merged: readonly string[];
  /** Every sheet of the workbook: whoever makes a copy of this one needs a free name, and need not ask twice. */
  readonly sheetNames: readonly string[];
}

export const outOfFirstScreen = ({ hiddenRows, hiddenColumns, merged }: Omit<FirstScreen, "sheetNames">): OutOfView => ({
  hasRow: (row) => hiddenRows.includes(row),
  hasColumn: (column) => hiddenColumns.includes(column),
  merged: merged.flatMap((range) => cellArea(range) ?? wholeLines(range) ?? []),
});
