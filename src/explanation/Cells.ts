import type { CellValue } from "../inputs/CellValue";

/** A rectangle of values, row by row, at least one by one. */
export type Cells = readonly (readonly CellValue[])[];

export const oneCell = (value: CellValue): Cells => [[value]];
