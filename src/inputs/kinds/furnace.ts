import type { CellInput } from "../Input";
import { type Bound, BELOW_ZERO, numberInput, type NumberRule } from "../number";

// Laboratory furnaces with heaters of molybdenum disilicide end near 1800 degC (makers' data, from memory); the hotter cones in degrees
// Fahrenheit, and kilns in kelvin, lie above.
const HOTTEST = 1800;
// As for the air of a weighing room (kinds/temperatures).
const COLDEST = -70;

const inFurnaces: readonly Bound[] = [
  { above: HOTTEST, says: `above ${HOTTEST} °C and looks like kelvin or °F` },
  { below: COLDEST, says: `below ${COLDEST} °C, colder than any weather` },
];

const celsius: NumberRule = {
  unit: "°C",
  called: "a furnace temperature",
  advice: "Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
  zeroIsBlank: false,
  bounds: inFurnaces,
};

/** A temperature in or beside a furnace in degrees Celsius, -70 to 1800. 0 is a real temperature, so a blank cell counts as 0 degC. */
export const furnaceTemperature = (about: string): CellInput<number> => numberInput(about, celsius);

/** The same where something is hot, so that 0 is a blank cell: above 0 to 1800 degC. */
export const heatedTemperature = (about: string): CellInput<number> =>
  numberInput(about, {
    ...celsius,
    called: "a temperature of heating",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, ...inFurnaces],
  });
