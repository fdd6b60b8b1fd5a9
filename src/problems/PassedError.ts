import { ArgumentProblem } from "./ArgumentProblem";

/** An input cell already shows an error: the answer is that same error, not a new one. */
export class PassedError extends ArgumentProblem {
  override readonly name = "PassedError";

  /**
   * @param code what the input cell shows, such as "#N/A"
   * @param row from 1, where the cell is one of a column
   */
  constructor(
    readonly code: string,
    argument: string,
    row?: number,
  ) {
    super(argument, `${row === undefined ? "" : `row ${row}: `}the cell given here shows ${code}`, "Mend that cell first.");
  }
}
