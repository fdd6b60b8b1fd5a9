import { CellError, type CellValue } from "../../../inputs/CellValue";
import { onlyValue, type Cells } from "../../formula/Cells";
import type { Certain } from "./certain";

/** An argument as a built-in function gets it. */
export interface Given {
  readonly cells: Cells;
  /** True for cells of a sheet, in which functions pass over texts. */
  readonly isReference: boolean;
}

/** What a function gives, as far as every spreadsheet gives the same. */
export type SureFunction = (...given: readonly Given[]) => Certain<CellValue>;

export const valuesOf = ({ cells }: Given): readonly CellValue[] => cells.flat();

/** The one value of an argument; undefined for one that is left out, or that has several. */
export const valueOf = (given: Given | undefined): Certain<CellValue> => onlyValue(given?.cells);

export const firstError = (given: readonly Given[]): CellError | undefined =>
  given.flatMap(valuesOf).find((value): value is CellError => value instanceof CellError);
