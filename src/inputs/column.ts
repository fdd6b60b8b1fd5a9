import { blankInput } from "../problems/inputProblems";
import { BLANK, type CellValue } from "./CellValue";
import type { ColumnInput } from "./Input";
import { isBlankNumber, readNumber } from "./number";
import type { NumberRule } from "./NumberRule";

/**
 * A column of numbers in the order they were taken. Blanks at its end are readings not yet made and are left off;
 * a blank between readings is a gap, refused with its row (from 1).
 */
export const column = (about: string, rule: NumberRule): ColumnInput<readonly number[]> => ({
  shape: "column",
  each: rule,
  about,
  called: rule.called,
  unit: rule.unit,
  optional: false,
  zero: "nothing",
  read: (cells, argument) => {
    const filled = withoutTrailing(cells, (cell) => isBlankNumber(cell, rule));
    if (filled.length === 0) throw blankInput({ argument }, rule.advice);
    return filled.map((cell, index) => {
      const place = { argument, row: index + 1 };
      if (isBlankNumber(cell, rule)) throw blankInput(place, "Fill the gap or remove the row.");
      return readNumber(cell, place, { ...rule, advice: `Clear the cell or ${rule.advice.charAt(0).toLowerCase()}${rule.advice.slice(1)}` });
    });
  },
});

/** The cells up to the last that is not blank. */
export function withoutTrailing(cells: readonly CellValue[], isBlank: (cell: CellValue) => boolean): readonly CellValue[] {
  let end = cells.length;
  while (end > 0 && isBlank(cells[end - 1] ?? BLANK)) end--;
  return cells.slice(0, end);
}

/** A column's values with the number of cells given, blanks at the end included. */
export interface RowCounted<T> {
  readonly values: T;
  readonly rows: number;
}

/** The same column with its number of cells, so that two columns can be held to one size though both end in blanks. */
export const rowCounted = <T>(input: ColumnInput<T>): ColumnInput<RowCounted<T>> => ({
  ...input,
  read: (cells, argument) => ({ values: input.read(cells, argument), rows: cells.length }),
});
