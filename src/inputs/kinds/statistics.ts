import { blankInput } from "../../problems/inputProblems";
import { withoutTrailing } from "../column";
import type { CellInput, ColumnInput } from "../Input";
import { BELOW_ZERO, isNothing, numberInput, readNumber } from "../number";
import type { NumberRule } from "../NumberRule";
import { positiveNumber } from "./positiveNumber";

/** A replicate result: any number. */
export const result: NumberRule = {
  unit: "",
  called: "a number",
  advice: "Clear the cell or give a number.",
  zeroIsBlank: false,
};

/**
 * A column of replicate results, which may be 0 or negative, by row; undefined where a cell between them is blank. Blanks
 * at the end are left off. A 0 stays 0: whether it was found or is an empty cell is not told apart here.
 */
export const replicateValues = (about: string): ColumnInput<readonly (number | undefined)[]> => ({
  shape: "column",
  each: result,
  about,
  called: result.called,
  unit: result.unit,
  optional: false,
  zero: "asked",
  read: (cells, argument) => {
    const filled = withoutTrailing(cells, isNothing);
    if (filled.length === 0) throw blankInput({ argument }, "Give the replicate results.", false);
    return filled.map((cell, index) => (isNothing(cell) ? undefined : readNumber(cell, { argument, row: index + 1 }, result)));
  },
});

/** A standard deviation in the unit of the values it is for, above 0. */
export const standardDeviation = (about: string): CellInput<number> =>
  positiveNumber(about, "Give a number above 0 in the unit of the values, or leave the argument out.", "a standard deviation");

/** The standard uncertainty of one reading, in grams, above 0. */
export const standardUncertainty = (about: string): CellInput<number> =>
  positiveNumber(about, "Give the standard uncertainty in grams, such as 0.0005.", "an uncertainty", "g");

// Ten percentage points of the sample: coarser tells nothing, and a percentage typed as a plain number lands above.
const COARSEST = 0.1;
// A part in a thousand million is finer than any balance tells of its load. Common practice, no source.
const FINEST = 1e-9;

/** The uncertainty that a share of a sample may have, itself a share, 1e-9 to 0.1. */
export const wantedUncertainty = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a fraction",
    advice: "Type 0.5 % as 0.005 or 0.5%.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: FINEST, says: `below ${FINEST}, finer than any balance tells` },
      { above: COARSEST, says: `above ${COARSEST}, too coarse to be of use` },
    ],
  });

// The widest factor in use is Student's t for 95 % at one degree of freedom, 12.71 (GUM, JCGM 100:2008, table G.2).
const WIDEST_FACTOR = 13;

/** How many standard uncertainties an expanded uncertainty spans, 1 to 13. A confidence level (0.95, 95) is refused. */
export const coverageFactor = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a coverage factor",
    advice: "Give a coverage factor, such as 2 for about 95 %.",
    zeroIsBlank: true,
    bounds: [
      { below: 1, says: "below 1" },
      { above: WIDEST_FACTOR, says: `above ${WIDEST_FACTOR} and looks like a confidence level` },
    ],
  });

// Tables go from 0.1 to 0.001; below a millionth the answer would hang on how normal the farthest tail is.
const LEAST_ALPHA = 1e-6;
// From a half on a test errs more often than a coin; confidence levels (0.9, 0.95, 0.99) lie above.
const COIN = 1 / 2;

/** The chance of a false alarm that a test accepts, alpha, 1e-6 to below 0.5. Percentages and confidence levels are told apart and refused. */
export const significanceLevel = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a significance level",
    advice: "Type 0.05 or 5% for 95 % confidence.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { from: 1, says: "not below 1 and looks like a percentage" },
      { from: COIN, says: `not below ${COIN} and looks like a confidence level` },
      { below: LEAST_ALPHA, says: `below ${LEAST_ALPHA}` },
    ],
  });
