import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Warmer than this a vessel is not a little warm but hot, and temperatures in kelvin lie above. Common practice, no source.
const MOST = 100;

/** How much warmer a vessel is than the balance, in degrees Celsius. 0 is a real difference, so a blank cell counts as 0. */
export const temperatureDifference = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "°C",
    called: "a temperature difference",
    advice: "Give vessel minus room, from 0 to 100 °C.",
    zeroIsBlank: false,
    broken: (value) => {
      if (value < 0) return "below zero: a vessel colder than the room gathers dew";
      return value > MOST ? `above ${MOST} °C, too hot for a balance or not a difference` : undefined;
    },
  });
