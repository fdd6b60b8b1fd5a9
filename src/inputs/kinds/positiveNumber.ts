import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

/**
 * A number that is merely above 0, so that 0 is a blank cell: for an input without a bound of its own and without a confusion to tell
 * apart. A share or a percentage is none such; its readers (`shares`) refuse a percentage typed as a plain number.
 * @param advice what to do about it, one sentence: "Give moles of residue from one mole of solid, such as 0.5."
 * @param called what the value is called in a message, with its article
 */
export const positiveNumber = (about: string, advice: string, called = "a number above 0", unit = ""): CellInput<number> =>
  numberInput(about, { unit, called, advice, zeroIsBlank: true, bounds: [BELOW_ZERO] });
