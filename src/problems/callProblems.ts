import { InputProblem } from "./InputProblem";

/** @param position from 1 */
export const argumentLeftOut = (argument: string, position: number): InputProblem =>
  new InputProblem(`${argument}: argument ${position} is left out. Give it, with commas between the arguments.`);

export const tooManyArguments = (name: string, given: number, most: number): InputProblem =>
  new InputProblem(`${name}: ${given} arguments given; it takes ${most} at most. Use a decimal point, and commas only between the arguments.`);

/** For a spreadsheet whose cell formulas take commas. */
export const semicolonsBetween = (name: string): InputProblem =>
  new InputProblem(`${name}: semicolons stand between the arguments. Cell formulas here take commas: type a comma in place of each.`);
