/**
 * A sentence about one argument. The form of every message is made here alone: `argument: what is wrong. What to do.`
 * @param wrong quoting the value with its unit, without a full stop
 * @param advice whole sentences; left out where what is wrong says it
 */
export const sentenceAbout = (argument: string, wrong: string, advice = ""): string => `${argument}: ${wrong}.${advice === "" ? "" : ` ${advice}`}`;

/** Something to be said about one argument, its parts kept apart so that nobody has to read the name out of the sentence again. */
export abstract class ArgumentProblem extends Error {
  /**
   * @param argument its name as the person at the sheet knows it, or that of the form's box, the function or the run of
   *   arguments that stands in its place
   */
  constructor(
    readonly argument: string,
    readonly wrong: string,
    readonly advice = "",
  ) {
    super(sentenceAbout(argument, wrong, advice));
  }
}
