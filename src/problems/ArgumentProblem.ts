/**
 * A sentence about one argument. The form of every message is made here alone: `argument: what is wrong. What to do.`
 * @param wrong quoting the value with its unit, without a full stop
 * @param advice whole sentences; left out where what is wrong says it
 */
export const sentenceAbout = (argument: string, wrong: string, advice = ""): string => `${argument}: ${wrong}.${advice === "" ? "" : ` ${advice}`}`;

// How many calls an error notes down, where the engine keeps such a number. Reflect.set, because a host may have frozen it.
const CALLS_NOTED = "stackTraceLimit";

/**
 * Something to be said about one argument, its parts kept apart so that nobody has to read the name out of the sentence again.
 * It notes no calls down, which costs more than finding out what is wrong: the sentence is all that is read of it. Defects keep theirs.
 */
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
    const sentence = sentenceAbout(argument, wrong, advice);
    const noted: unknown = Reflect.get(Error, CALLS_NOTED);
    Reflect.set(Error, CALLS_NOTED, 0);
    super(sentence);
    Reflect.set(Error, CALLS_NOTED, noted);
  }
}
