import { ArgumentProblem } from "./ArgumentProblem";

/**
 * Something the person at the sheet can put right: a wrong, missing or contradictory input.
 * A cell shows it as #VALUE!, with `message` behind it.
 */
export class InputProblem extends ArgumentProblem {
  override readonly name = "InputProblem";
}
