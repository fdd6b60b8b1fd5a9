import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";
import { belowZero } from "./scalar";

/** A moisture content as a fraction. 0 is a real moisture; the upper bound depends on the basis. */
export const moistureContent = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a moisture content",
    advice: "Type a fraction such as 0.35 or 35%.",
    zeroIsBlank: false,
    broken: belowZero,
  });
