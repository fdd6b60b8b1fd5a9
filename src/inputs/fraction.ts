import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

/** A share between 0 and 1. 0 is a real value here. A percentage typed as a plain number is refused, never rescaled. */
export const fraction = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a fraction",
    advice: "Type a share from 0 to 1, such as 0.35 or 35%.",
    zeroIsBlank: false,
    broken: (value) => (value < 0 ? "below zero" : value > 1 ? "above 1 and looks like a percentage" : undefined),
  });
