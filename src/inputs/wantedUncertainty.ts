import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Ten percentage points of the sample: coarser tells nothing, and a percentage typed as a plain number lands above.
const MOST = 0.1;
// A part in a thousand million is finer than any balance tells of its load. Common practice, no source.
const LEAST = 1e-9;

/** The uncertainty that a share of a sample may have, itself a share. */
export const wantedUncertainty = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a fraction",
    advice: "Type 0.5 % as 0.005 or 0.5%.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value < 0) return "below zero";
      if (value < LEAST) return `below ${LEAST}, finer than any balance tells`;
      return value > MOST ? `above ${MOST}, too coarse to be of use` : undefined;
    },
  });
