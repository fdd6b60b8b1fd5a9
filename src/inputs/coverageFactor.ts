import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// The widest factor in use is Student's t for 95 % at one degree of freedom, 12.71 (GUM, JCGM 100:2008, table G.2).
const MOST = 13;

/** How many standard uncertainties an expanded uncertainty spans. A confidence level (0.95, 95) is refused. */
export const coverageFactor = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a coverage factor",
    advice: "Give a coverage factor, such as 2 for about 95 %.",
    zeroIsBlank: true,
    broken: (value) => (value < 1 ? "below 1" : value > MOST ? `above ${MOST} and looks like a confidence level` : undefined),
  });
