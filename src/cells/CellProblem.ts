import type { Shown } from "../functions/cellFunction";
import { ArgumentProblem } from "../problems/ArgumentProblem";
import { NoAnswer } from "../problems/NoAnswer";
import { PassedError } from "../problems/PassedError";

const ERROR_CODES = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"] as const;

/** The errors a cell can be made to show. */
export type ErrorCode = (typeof ERROR_CODES)[number];

/** An error in place of a value: the code the cell shows, the sentence behind it and the argument that it names. */
export class CellProblem {
  constructor(
    readonly code: ErrorCode,
    readonly message: string,
    /** Undefined for an internal error. */
    readonly argument?: string,
  ) {}
}

export type Answer = Shown | CellProblem;

export const INTERNAL_ERROR = "internal error: please report this cell formula and its inputs.";

/** The cell error for something thrown. What we did not throw ourselves is a defect, and says so. */
export function problemOf(thrown: unknown): CellProblem {
  if (!(thrown instanceof ArgumentProblem)) return new CellProblem("#VALUE!", INTERNAL_ERROR);
  return new CellProblem(codeOf(thrown), thrown.message, thrown.argument);
}

function codeOf(problem: ArgumentProblem): ErrorCode {
  if (problem instanceof NoAnswer) return "#N/A";
  // A function cannot return #REF!, #NAME? and the like; #VALUE! keeps the sentence that names them.
  return (problem instanceof PassedError && ERROR_CODES.find((code) => code === problem.code)) || "#VALUE!";
}

/** A computed value as it may leave: NaN and infinity never do, since inside a spill the host would show them as 0. */
export const leaving = (value: Shown): Answer =>
  typeof value === "number" && !Number.isFinite(value) ? new CellProblem("#VALUE!", INTERNAL_ERROR) : value;

/** A table of them. Loops: for rows of a few cells, mapping takes several times as long. */
export function leavingTable(table: readonly (readonly Shown[])[]): Answer[][] {
  const answers = new Array<Answer[]>(table.length);
  for (let row = 0; row < table.length; row++) {
    const shown = table[row] as readonly Shown[];
    const line = new Array<Answer>(shown.length);
    for (let column = 0; column < shown.length; column++) line[column] = leaving(shown[column] as Shown);
    answers[row] = line;
  }
  return answers;
}
