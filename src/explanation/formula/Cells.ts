import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";

/** A rectangle of values, row by row, at least one by one. */
export type Cells = readonly (readonly CellValue[])[];

export const oneCell = (value: CellValue): Cells => [[value]];

export const isSingle = (cells: Cells): boolean => cells.length === 1 && cells[0]?.length === 1;

/** The value of one cell; undefined for none and for several. */
export const onlyValue = (cells: Cells | undefined): CellValue | undefined => (cells !== undefined && isSingle(cells) ? cells[0]?.[0] : undefined);

/** Which row and column of an answer is meant, from 0. */
export interface Position {
  readonly row: number;
  readonly column: number;
}

const FIRST_CELL: Position = { row: 0, column: 0 };

/** The value that serves one place of the answer; a single row or column serves every place. */
export function valueAt(cells: Cells, { row, column }: Position = FIRST_CELL): CellValue | undefined {
  const line = cells[cells.length === 1 ? 0 : row];
  return line?.[line.length === 1 ? 0 : column];
}

/** Hosts differ: most hand a blank cell over as 0, some as null. */
export type BlankForm = 0 | null;

/** Cells in the form a host hands them to a cell function. */
export const handedOver = (cells: Cells, blankAs: BlankForm): unknown[][] =>
  cells.map((row) => row.map((value) => (value === BLANK ? blankAs : value instanceof CellError ? { type: "Error", code: value.code } : value)));
