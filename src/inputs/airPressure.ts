import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Air pressure is about 33 kPa on the highest summit; the highest at sea level is near 108.5 kPa (both from memory).
// Figures in hPa (1013), kPa (101) and bar (1.013) lie far below, figures in tenths of a pascal far above.
const LEAST = 30_000;
const MOST = 115_000;

/** The pressure of the air in pascals, as read at the balance and not reduced to sea level. */
export const airPressure = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "Pa",
    called: "a pressure",
    advice: "Give pascals: 1013.25 hPa is 101325.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value < 0) return "below zero";
      if (value < LEAST) return "too low for air and looks like hPa, kPa or bar";
      return value > MOST ? `above ${MOST} Pa, which air does not reach` : undefined;
    },
  });
