import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// No weighing room is hotter than boiling water; room temperatures in kelvin begin near 270.
const HOTTEST = 100;
// Inhabited places have not been measured colder than about -68 degC (Oymyakon, from memory).
const COLDEST = -70;

/** An air temperature in degrees Celsius. 0 is a real temperature, so a blank cell counts as 0 degC. */
export const roomTemperature = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "°C",
    called: "a temperature",
    advice: "Give degrees Celsius: 293.15 K is 20.",
    zeroIsBlank: false,
    broken: (value) => (value > HOTTEST ? `above ${HOTTEST} °C and looks like kelvin` : value < COLDEST ? `below ${COLDEST} °C` : undefined),
  });
