import { blankInput } from "../problems/inputProblems";
import { PassedError } from "../problems/PassedError";
import { CellError } from "./CellValue";
import type { ColumnInput } from "./Input";
import { isNothing, readNumber, type NumberRule } from "./scalar";

const result: NumberRule = {
  unit: "",
  called: "a number",
  advice: "Clear the cell or give a number.",
  zeroIsBlank: false,
};

/**
 * A column of replicate results, which may be 0 or negative, by row; undefined where a cell between them is blank. Blanks
 * at the end are left off. A 0 stays 0: whether it was found or is an empty cell is not told apart here.
 */
export const replicateValues = (about: string): ColumnInput<readonly (number | undefined)[]> => ({
  shape: "column",
  about,
  unit: "",
  optional: false,
  read: (cells, argument) => {
    let end = cells.length;
    while (end > 0 && isNothing(cells[end - 1] ?? "")) end--;
    if (end === 0) throw blankInput({ argument }, "Give the replicate results.", false);
    return cells.slice(0, end).map((cell, index) => {
      const row = index + 1;
      if (cell instanceof CellError) throw new PassedError(cell.code, `${argument}: row ${row}`);
      return isNothing(cell) ? undefined : readNumber(cell, { argument, row }, result);
    });
  },
});
