import { BLANK } from "../CellValue";
import { column } from "../column";
import type { CellInput, ColumnInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";
import type { NumberRule } from "../NumberRule";

/** A time in minutes, from 0. */
export const elapsed: NumberRule = {
  unit: "min",
  called: "a time in minutes",
  advice: "Give minutes.",
  zeroIsBlank: false,
  bounds: [BELOW_ZERO],
};

/**
 * A column of times in minutes, in the order of the readings. 0 is a real time in the first row alone: later rows can
 * only be later, so a 0 there is the host's way of handing over a blank cell.
 */
export const minutes = (about: string): ColumnInput<readonly number[]> => {
  const plain = column(about, elapsed);
  return {
    ...plain,
    zero: "first row",
    read: (cells, argument) =>
      plain.read(
        cells.map((cell, index) => (index > 0 && cell === 0 ? BLANK : cell)),
        argument,
      ),
  };
};

/** A least time in minutes, from 1; 0 means none. A clock time is a fraction of a day, so a share of a minute is refused. */
export const leastMinutes = (about: string): CellInput<number> =>
  numberInput(about, {
    ...elapsed,
    zeroIsNone: true,
    advice: "Give minutes, such as 60.",
    bounds: [BELOW_ZERO, { above: 0, below: 1, says: "below 1 min and looks like a clock time" }],
  });

// Weighings of a drying run lie a quarter of an hour or more apart; a doubt of that size is a wrong cell. Common
// practice, no source.
const MOST_DOUBT = 15;

/** How far a clock reading may be off, above 0 to 15 minutes. */
export const timingBound = (about: string): CellInput<number> =>
  numberInput(about, {
    ...elapsed,
    advice: "Give the minutes a time may be off, such as 0.5.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: MOST_DOUBT, says: `above ${MOST_DOUBT} min` }],
  });

const inOneUnit: NumberRule = {
  unit: "",
  called: "a time",
  advice: "Give minutes or clock times, the same for all three.",
  zeroIsBlank: false,
  bounds: [BELOW_ZERO],
};

/** When the first of some readings was taken, where only shares of a span count: any unit. 0 is a value, and so is a blank cell. */
export const startTime = (about: string): CellInput<number> => numberInput(about, inOneUnit);

/** The same for a later reading, which cannot be at 0, so that 0 is a blank cell. */
export const laterTime = (about: string): CellInput<number> => numberInput(about, { ...inOneUnit, zeroIsBlank: true });
