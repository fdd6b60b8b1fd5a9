import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Dry air holds 0.2314 by mass, room air with its moisture down to 0.22, older books say 0.23 or 0.232. What is asked
// for is the mass fraction; 0.2095 and 0.21, the mole fraction, would give a tenth too much air.
const LEAST = 0.22;
const MOST = 0.25;
const LEAST_MOLE_FRACTION = 0.2;

/** Mass fraction of oxygen in the air; a percentage and the mole fraction are told apart and refused. */
export const oxygenInAir = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a mass fraction",
    advice: "Give the mass fraction of oxygen, 0.2314 for dry air.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value > 1) return "above 1 and looks like a percentage";
      if (value >= LEAST_MOLE_FRACTION && value < LEAST) return "the share by volume, not by mass";
      return value < LEAST || value > MOST ? `outside ${LEAST} to ${MOST}` : undefined;
    },
  });
