import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Air is 0.47 kg/m3 on the highest summit and 1.6 kg/m3 in the deepest cold at sea level (ideal gas, 287 J/(kg K)).
const LEAST = 0.4;
const MOST = 1.7;

/** The density of the air in kg/m3. A figure in g/cm3 is told apart and refused. */
export const airDensityInput = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kg/m³",
    called: "a density",
    advice: "Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value < 0) return "below zero";
      if (value < LEAST) return "too low for air and looks like g/cm³";
      return value > MOST ? `above ${MOST} kg/m³, which air does not reach` : undefined;
    },
  });
