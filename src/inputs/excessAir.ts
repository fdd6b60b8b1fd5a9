import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Open fires draw in a few times the air they need; five times more than needed is past any fire that stays alight.
// Common practice, no source. It catches 15 typed for 15 %.
const MOST = 5;

/** Air beyond the air needed, as a share of the air needed. 0 is a real value, so a blank cell counts as 0. */
export const excessAir = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a share of the air needed",
    advice: "Type 0.15 or 15% for 15 % more air than needed.",
    zeroIsBlank: false,
    broken: (value) => (value < 0 ? "below zero" : value > MOST ? `above ${MOST} and looks like a percentage` : undefined),
  });
