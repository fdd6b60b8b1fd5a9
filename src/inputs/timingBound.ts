import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Weighings of a drying run lie a quarter of an hour or more apart; a doubt of that size is a wrong cell. Common
// practice, no source.
const MOST_MINUTES = 15;

/** How far a clock reading may be off, in minutes. */
export const timingBound = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "min",
    called: "a time in minutes",
    advice: "Give the minutes a time may be off, such as 0.5.",
    zeroIsBlank: true,
    broken: (value) => (value < 0 ? "below zero" : value > MOST_MINUTES ? `above ${MOST_MINUTES} min` : undefined),
  });
