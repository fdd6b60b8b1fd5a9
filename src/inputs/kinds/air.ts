import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

// Air pressure is about 31 kPa on the highest summit (ISO 2533, standard atmosphere, at 8849 m); the highest at sea level is
// near 108.5 kPa (from memory). Figures in hPa (1013), kPa (101) and bar (1.013) lie far below, figures in tenths of a
// pascal far above.
const LEAST_PRESSURE = 30_000;
const MOST_PRESSURE = 115_000;

/** The pressure of the air in pascals, 30 000 to 115 000, as read at the balance and not reduced to sea level. */
export const airPressure = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "Pa",
    called: "a pressure",
    advice: "Give pascals: 1013.25 hPa is 101325.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: LEAST_PRESSURE, says: "too low for air and looks like hPa, kPa or bar" },
      { above: MOST_PRESSURE, says: `above ${MOST_PRESSURE} Pa, which air does not reach` },
    ],
  });

// Air is 0.47 kg/m3 on the highest summit and 1.6 kg/m3 in the deepest cold at sea level (ideal gas, 287 J/(kg K)).
const LEAST_DENSITY = 0.4;
const MOST_DENSITY = 1.7;

/** The density of the air in kg/m3, 0.4 to 1.7. A figure in g/cm3 is told apart and refused. */
export const airDensityInput = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kg/m³",
    called: "a density",
    advice: "Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: LEAST_DENSITY, says: "too low for air and looks like g/cm³" },
      { above: MOST_DENSITY, says: `above ${MOST_DENSITY} kg/m³, which air does not reach` },
    ],
  });

// Osmium, the densest material that can be weighed: 22 590 kg/m3 (CRC Handbook, from memory). In g/cm3 no density is
// above 22.59, and no solid body is below that in kg/m3 except foams that are nearly all air.
const DENSEST = 22_600;
const DENSEST_IN_GRAMS_PER_CM3 = 22.6;

/** The density of a solid or liquid in kg/m3, above 22.6 to 22 600. A figure in g/cm3 is told apart and refused. */
export const solidDensity = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kg/m³",
    called: "a density",
    advice: "Give kg/m³: 2.7 g/cm³ is 2700.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { upTo: DENSEST_IN_GRAMS_PER_CM3, says: "too low for a solid and looks like g/cm³" },
      { above: DENSEST, says: `above ${DENSEST} kg/m³, which no material reaches` },
    ],
  });
