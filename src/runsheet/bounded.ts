import { runOptionOutOfBounds } from "../problems/runSheetProblems";
import type { OptionBounds } from "./optionBounds";

/** @throws InputProblem when the value is not a number within the bounds */
export function bounded({ name, atLeast, atMost, unit }: OptionBounds, value: number): void {
  if (!(value >= atLeast && value <= atMost)) throw runOptionOutOfBounds(name, value, atLeast, atMost, unit);
}
