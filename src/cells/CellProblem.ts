import { InputProblem } from "../problems/InputProblem";
import { NoAnswer } from "../problems/NoAnswer";
import { PassedError } from "../problems/PassedError";
import type { Shown } from "../functions/cellFunction";

/** The errors a cell can be made to show. */
export type ErrorCode = "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!" | "#NULL!";

/** An error in place of a value: the code the cell shows and the sentence behind it. */
export class CellProblem {
  constructor(
    readonly code: ErrorCode,
    readonly message: string,
  ) {}
}

export type Answer = Shown | CellProblem;

export const INTERNAL_ERROR = "internal error: please report this cell formula and its inputs.";

const PASSED_ON: readonly string[] = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"];

/** The cell error for something thrown. What we did not throw ourselves is a defect, and says so. */
export function problemOf(thrown: unknown): CellProblem {
  if (thrown instanceof InputProblem) return new CellProblem("#VALUE!", thrown.message);
  if (thrown instanceof NoAnswer) return new CellProblem("#N/A", thrown.message);
  // A function cannot return #REF!, #NAME? and the like; #VALUE! keeps the sentence that names them.
  if (thrown instanceof PassedError) return new CellProblem(PASSED_ON.includes(thrown.code) ? (thrown.code as ErrorCode) : "#VALUE!", thrown.message);
  return new CellProblem("#VALUE!", INTERNAL_ERROR);
}
