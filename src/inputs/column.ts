import { blankInput } from "../problems/inputProblems";
import { PassedError } from "../problems/PassedError";
import { CellError, type CellValue } from "./CellValue";
import { isBlankNumber, readNumber, type NumberRule } from "./scalar";
import type { ColumnInput } from "./Input";

/**
 * A column of numbers in the order they were taken. Blanks at its end are readings not yet made and are left off;
 * a blank between readings is a gap, refused with its row (from 1).
 */
export const column = (about: string, rule: NumberRule): ColumnInput<readonly number[]> => ({
  shape: "column",
  about,
  unit: rule.unit,
  optional: false,
  read: (cells, argument) => {
    const filled = withoutTrailingBlanks(cells, rule);
    if (filled.length === 0) throw blankInput({ argument }, rule.advice);
    return filled.map((cell, index) => {
      const place = { argument, row: index + 1 };
      if (cell instanceof CellError) throw new PassedError(cell.code, `${argument}: row ${place.row}`);
      if (isBlankNumber(cell, rule)) throw blankInput(place, "Fill the gap or remove the row.");
      return readNumber(cell, place, { ...rule, advice: `Clear the cell or ${rule.advice.charAt(0).toLowerCase()}${rule.advice.slice(1)}` });
    });
  },
});

function withoutTrailingBlanks(cells: readonly CellValue[], rule: NumberRule): readonly CellValue[] {
  let end = cells.length;
  while (end > 0 && isBlankNumber(cells[end - 1] as CellValue, rule)) end--;
  return cells.slice(0, end);
}
