import { sentenceAbout } from "../../problems/ArgumentProblem";
import { InputProblem } from "../../problems/InputProblem";

/** What is in the way of a form: a sentence and the box it belongs to, undefined for the form's own. */
export interface WrongEntry<F extends string> {
  readonly problem: string;
  readonly field: F | undefined;
}

/**
 * What is made of a form's entries, or the problem with them beside the box that its message names.
 * @param boxes the box that each name at the head of a message belongs to
 * @param labels what the form shows beside the box, in place of that name; left out: the name stays
 */
export function orWrongEntry<T, F extends string>(
  make: () => T,
  boxes: Readonly<Record<string, F>>,
  labels: Readonly<Record<string, string>> = {},
): T | WrongEntry<F> {
  try {
    return make();
  } catch (problem) {
    if (!(problem instanceof InputProblem)) throw problem;
    const { argument, wrong, advice } = problem;
    return { problem: sentenceAbout(labels[argument] ?? argument, wrong, advice), field: boxes[argument] };
  }
}
