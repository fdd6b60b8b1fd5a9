import { CellProblem, type Answer } from "../cells/CellProblem";
import { CellError, type CellValue } from "../inputs/CellValue";
import type { CellReading } from "../workbook/Workbook";

// A host may store a result with one rounding more than we compute; a cell keeps 15 digits.
const RELATIVE_DIFFERENCE = 1e-12;

/** True where an answer worked out here is what the cell holds. */
export function agrees(answer: Answer | CellValue | undefined, { value, error }: CellReading): boolean {
  if (answer instanceof CellProblem || answer instanceof CellError) return error === answer.code;
  if (error !== "") return false;
  if (typeof answer === "number" && typeof value === "number") return Math.abs(answer - value) <= RELATIVE_DIFFERENCE * Math.max(1, Math.abs(value));
  return answer === (value ?? "");
}
