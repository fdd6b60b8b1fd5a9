import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";
import type { Bound, NumberRule } from "../NumberRule";

// Laboratory furnaces with heaters of molybdenum disilicide end near 1800 degC (makers' data, from memory); the hotter cones in degrees
// Fahrenheit, and kilns in kelvin, lie above.
const HOTTEST = 1800;
// As for the air of a weighing room (kinds/temperatures).
const COLDEST = -70;

// 0 degC. Of whole degrees Celsius turned into kelvin every one ends in .15; furnaces are read to 1 or 0.1 degC.
const ZERO_CELSIUS = 273.15;

const inFurnaces: readonly Bound[] = [
  { above: HOTTEST, says: `above ${HOTTEST} °C and looks like kelvin or °F` },
  { below: COLDEST, says: `below ${COLDEST} °C, colder than any weather` },
];

const asKelvin: Bound = {
  from: ZERO_CELSIUS,
  decimals: 0.15,
  says: "a whole °C in kelvin, by its .15; round it if it is °C",
};

const celsius: NumberRule = {
  unit: "°C",
  called: "a furnace temperature",
  advice: "Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
  zeroIsBlank: false,
  bounds: inFurnaces,
};

/** A thermometer's reading in degrees Celsius, -70 to 1800, to any decimals. 0 is a real temperature, so a blank cell counts as 0 degC. */
export const thermometerReading = (about: string): CellInput<number> => numberInput(about, { ...celsius, called: "a thermometer's reading" });

/** A temperature in or beside a furnace, the same but for whole degrees that were turned into kelvin, which are refused. */
export const furnaceTemperature = (about: string): CellInput<number> => numberInput(about, { ...celsius, bounds: [...inFurnaces, asKelvin] });

/** The same where something is hot, so that 0 is a blank cell: above 0 to 1800 degC. */
export const heatedTemperature = (about: string): CellInput<number> =>
  numberInput(about, {
    ...celsius,
    called: "a temperature of heating",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, ...inFurnaces, asKelvin],
  });
