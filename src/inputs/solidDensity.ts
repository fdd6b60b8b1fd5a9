import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Osmium, the densest material that can be weighed: 22 590 kg/m3 (CRC Handbook, from memory). In g/cm3 no density is
// above 22.59, and no solid body is below that in kg/m3 except foams that are nearly all air.
const DENSEST = 22_600;
const DENSEST_IN_GRAMS_PER_CM3 = 22.6;

/** The density of a solid or liquid in kg/m3. A figure in g/cm3 is told apart and refused. */
export const solidDensity = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kg/m³",
    called: "a density",
    advice: "Give kg/m³: 2.7 g/cm³ is 2700.",
    zeroIsBlank: true,
    broken: (value) => {
      if (value < 0) return "below zero";
      if (value <= DENSEST_IN_GRAMS_PER_CM3) return "too low for a solid and looks like g/cm³";
      return value > DENSEST ? `above ${DENSEST} kg/m³, which no material reaches` : undefined;
    },
  });
