import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

// A tenth of the sample is no measurement of its loss, and a percentage typed as a plain number lies above.
const COARSEST = 0.1;

/** The standard uncertainty of a loss that is itself a share, above 0 to 0.1. */
export const lossUncertainty = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a fraction",
    advice: "Type 0.2 % as 0.002 or 0.2%.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: COARSEST, says: `above ${COARSEST}, too coarse or a percentage` }],
  });
