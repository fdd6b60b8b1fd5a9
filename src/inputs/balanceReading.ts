import { weighing } from "./mass";
import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

/** A thousand tonnes in grams: more than any weighbridge carries, and far from what arithmetic cannot hold. */
export const HEAVIEST = 1e9;

export const tooHeavy = `above ${HEAVIEST} g, more than any balance weighs`;

/** A reading above zero of one balance, in grams, that a correction is to be made to. 0 is a blank cell. */
export const balanceReading = (about: string): CellInput<number> =>
  numberInput(about, { ...weighing, broken: (value) => (value < 0 ? "below zero" : value > HEAVIEST ? tooHeavy : undefined) });
