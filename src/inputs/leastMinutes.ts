import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

/** A least time in minutes; 0 means none. A clock time is a fraction of a day, so a share of a minute is refused. */
export const leastMinutes = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "min",
    called: "a time in minutes",
    advice: "Give minutes, such as 60.",
    zeroIsBlank: false,
    broken: (value) => (value < 0 ? "below zero" : value > 0 && value < 1 ? "below 1 min and looks like a clock time" : undefined),
  });
