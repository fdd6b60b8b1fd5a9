import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import type { NumberRule } from "./scalar";

const rule: NumberRule = {
  unit: "",
  called: "a moisture content",
  advice: "Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  zeroIsBlank: false,
  broken: (value) => (value < 0 ? "below zero" : value >= 1 ? "not below 1 and looks like a percentage" : undefined),
};

/** A moisture content on the wet basis, 0 to below 1. A dried sample has none, so 0 is a value and a blank cell counts as 0. */
export const wetMoisture = (about: string): CellInput<number> => numberInput(about, rule);

/** The same for a sample that is moist by its name (as received, as analysed), so that 0 is a blank cell. */
export const presentMoisture = (about: string): CellInput<number> =>
  numberInput(about, { ...rule, advice: "Type a fraction of the moist sample, such as 0.08 or 8%.", zeroIsBlank: true });
