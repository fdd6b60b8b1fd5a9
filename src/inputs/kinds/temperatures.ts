import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

// No weighing room is hotter than boiling water; room temperatures in kelvin begin near 270.
const HOTTEST = 100;
// Inhabited places have not been measured colder than about -68 degC (Oymyakon, from memory).
const COLDEST = -70;

/** An air temperature in degrees Celsius, -70 to 100. 0 is a real temperature, so a blank cell counts as 0 degC. */
export const roomTemperature = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "°C",
    called: "a temperature",
    advice: "Give degrees Celsius: 293.15 K is 20.",
    zeroIsBlank: false,
    bounds: [
      { above: HOTTEST, says: `above ${HOTTEST} °C and looks like kelvin` },
      { below: COLDEST, says: `below ${COLDEST} °C` },
    ],
  });

// Warmer than this a vessel is not a little warm but hot, and temperatures in kelvin lie above. Common practice, no source.
const MOST_ABOVE_ROOM = 100;

/** How much warmer a vessel is than the balance, 0 to 100 °C. 0 is a real difference, so a blank cell counts as 0. */
export const temperatureDifference = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "°C",
    called: "a temperature difference",
    advice: "Give vessel minus room, from 0 to 100 °C.",
    zeroIsBlank: false,
    bounds: [
      { below: 0, says: "below zero: a vessel colder than the room gathers dew" },
      { above: MOST_ABOVE_ROOM, says: `above ${MOST_ABOVE_ROOM} °C, too hot for a balance or not a difference` },
    ],
  });

// Fifty times the largest published figure, 0.19 mg per degC (Blade); a figure in mg lies above.
const MOST_PER_DEGREE = 0.01;

/** An error of weighing for each degree that the vessel is too warm, above 0 to 0.01 g/°C. A figure in milligrams is told apart and refused. */
export const gramsPerDegree = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g/°C",
    called: "a rate",
    advice: "Give grams per °C: 0.19 mg is 0.00019.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: MOST_PER_DEGREE, says: `above ${MOST_PER_DEGREE} g/°C and looks like milligrams` }],
  });
