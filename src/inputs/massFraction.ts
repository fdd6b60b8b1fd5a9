import { numberInput } from "./numberInput";
import { isNothing, type NumberRule } from "./scalar";
import type { CellInput } from "./Input";

const share: NumberRule = {
  unit: "",
  called: "a fraction",
  advice: "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
  zeroIsBlank: false,
  broken: (value) => (value < 0 ? "below zero" : value > 1 ? "above 1 and looks like a percentage" : undefined),
};

/**
 * The share of an element in a sample's mass, 0 to 1. An element can be absent, so 0 is a value; the host hands a blank
 * cell over as 0 too, and then it counts as 0. A row of nothing but these and blanks counts as not filled in.
 */
export const massFraction = (about: string): CellInput<number> => ({
  ...numberInput(about, share),
  isBlank: (value) => isNothing(value) || value === 0,
});

/** The share of an element that no such sample is without (carbon in a fuel), so that 0 is a blank cell. */
export const presentMassFraction = (about: string): CellInput<number> => numberInput(about, { ...share, zeroIsBlank: true });
