import type { NumberRule } from "../../inputs/NumberRule";
import { isFilledInCells, seriesCell } from "./seriesInCells";

/** A column of an argument, as two columns of cells of its own take it. */
export interface ColumnInCells {
  /** Of each row: how many cells are filled from here on. */
  readonly filled: readonly string[];
  /** Of each row what its reader makes of it, "" beyond the last that is filled and an error where it is refused. */
  readonly values: readonly string[];
}

export interface ColumnRules {
  readonly rule: NumberRule;
  /** Whether a 0 in a row is a blank cell. */
  readonly isZeroBlank: (row: number) => boolean;
  /** What a blank cell before others counts as; left out where it is refused. */
  readonly blankAs?: (row: number) => string | undefined;
}

/**
 * @param cells of the argument
 * @param rows of the block, as many as there are cells or more
 * @param filledAt the cell in which the count of a row stands
 */
export function columnInCells(
  cells: readonly string[],
  rows: number,
  filledAt: (row: number) => string,
  { rule, isZeroBlank, blankAs = () => undefined }: ColumnRules,
): ColumnInCells {
  const isFilled = (row: number): string => isFilledInCells(cells[row] ?? "", isZeroBlank(row));
  const filled = Array.from({ length: rows }, (_, row) =>
    row >= cells.length ? "0" : `${isFilled(row)}+${row + 1 < rows ? filledAt(row + 1) : "0"}`,
  );
  const values = Array.from({ length: rows }, (_, row) => {
    const cell = cells[row];
    if (cell === undefined) return '""';
    const read = seriesCell(cell, filledAt(row), rule, isZeroBlank(row), row + 1, cell);
    const blank = blankAs(row);
    return blank === undefined ? read : `IF((${isFilled(row)})*1+(${filledAt(row)}=0)=0,${blank},${read})`;
  });
  return { filled, values };
}
