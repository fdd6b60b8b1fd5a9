/** An input cell already shows an error: the answer is that same error, not a new one. */
export class PassedError extends Error {
  override readonly name = "PassedError";

  /** @param code what the input cell shows, such as "#N/A" */
  constructor(
    readonly code: string,
    argument: string,
  ) {
    super(`${argument}: the cell given here shows ${code}. Mend that cell first.`);
  }
}
