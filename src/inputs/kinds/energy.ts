import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

// Hydrogen, the most energetic fuel, has 141.8 MJ/kg (from memory); kJ/kg, kcal/kg and Btu/lb lie above.
const MOST = 150;

/** The higher heating value of a dry sample in MJ/kg, above 0 to 150. Figures in kJ/kg, kcal/kg and Btu/lb are told apart and refused. */
export const dryHeatingValue = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "MJ/kg",
    called: "a heating value",
    advice: "Give MJ/kg: 20000 kJ/kg (J/g) is 20.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: MOST, says: `above ${MOST} MJ/kg and looks like kJ/kg, kcal/kg or Btu/lb` }],
  });

// Water, 4.18, is surpassed by no solid; lead has 0.13 (from memory). Figures in J/(kg K) lie above.
const MOST_HEAT = 5;

/** The specific heat of a solid in kJ/(kg K), the same as J/(g K), above 0 to 5. Figures in J/(kg K) are told apart and refused. */
export const specificHeat = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kJ/(kg K)",
    called: "a specific heat",
    advice: "Give kJ/(kg K): 1400 J/(kg K) is 1.4.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: MOST_HEAT, says: `above ${MOST_HEAT} kJ/(kg K) and looks like J/(kg K)` }],
  });
