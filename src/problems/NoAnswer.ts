import { ArgumentProblem } from "./ArgumentProblem";

/**
 * The inputs are in order, but no answer follows from them (a balance too coarse to decide, too few weighings).
 * A cell shows it as #N/A, with `message` behind it.
 */
export class NoAnswer extends ArgumentProblem {
  override readonly name = "NoAnswer";
}
