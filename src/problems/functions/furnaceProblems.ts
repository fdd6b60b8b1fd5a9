import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { counted, plainNumber, SIZE_FIGURES, withUnit } from "../quoted";

export const oneTemperature = (): InputProblem =>
  new InputProblem("temperatures", "one temperature is no step", "Give the start first, then each temperature to be reached.");

export const ratesMissing = (from: number, to: number): InputProblem =>
  new InputProblem("rates", `no rate for the step from ${plainNumber(from)} to ${plainNumber(to)}`, "Give one rate for each step.");

export const columnsOfSchedule = (argument: string, filled: number, steps: number): InputProblem =>
  new InputProblem(
    argument,
    `${counted(filled, "cell")} filled for ${counted(steps, "step")} between temperatures`,
    "Give one for each step; the first temperature is the start.",
  );

export const rateColumnsDiffer = (times: number, temperatures: number): InputProblem =>
  new InputProblem("temperatures", `${counted(temperatures, "reading")} beside ${counted(times, "time")}`, "Give one temperature for each time.");

export const timesOutOfOrder = (row: number, time: number, before: number): InputProblem =>
  new InputProblem(
    "times",
    `row ${row} holds ${withUnit(time, "min")}, before the ${withUnit(before, "min")} above it`,
    "Give minutes since the start, in order; past midnight add 1440.",
  );

export const sameTime = (row: number, time: number): InputProblem =>
  new InputProblem("times", `row ${row} holds ${withUnit(time, "min")} again`, "Remove one of the two rows.");

export const clockTimes = (last: number): InputProblem =>
  new InputProblem(
    "times",
    `the last is ${withUnit(last, "min")}, and they look like clock times or dates`,
    "Give minutes since the start: (time - first time) x 1440.",
  );

export const windowReversed = (from: number, to: number): InputProblem =>
  new InputProblem("to", `${plainNumber(to)} is not above from, ${plainNumber(from)}`, "Give the lower temperature as from.");

export const tooFewForRate = (count: number, fewest: number): NoAnswer =>
  new NoAnswer("times", `${counted(count, "reading")} cannot show how sure a rate is; it takes ${fewest}`, "Read more often.");

export const emptyWindow = (count: number, fewest: number): NoAnswer =>
  new NoAnswer("from", `${counted(count, "reading")} between from and to; it takes ${fewest}`, "Widen the window or read more often.");

export const sharesAboveOne = (sum: number, largest: number): InputProblem =>
  new InputProblem("carbon to oxygen", `the fractions sum to ${plainNumber(sum)}, above ${largest}`, "Give one basis.");

export const moistureAboveElement = (moisture: number, element: string, share: number): InputProblem =>
  new InputProblem(
    "moisture",
    `water of ${plainNumber(moisture)} holds more ${element} than the ${plainNumber(share)} of the sample`,
    "Leave moisture out where the analysis is on the dry basis.",
  );

export const carbonateAboveCarbon = (carbonate: number, carbon: number): InputProblem =>
  new InputProblem(
    "carbonateCO2",
    `CO2 of ${plainNumber(carbonate)} holds all the carbon of the sample, ${plainNumber(carbon)}, or more`,
    "Give the CO2 that acid sets free as a fraction.",
  );

export const rampWithoutRate = (): InputProblem => new InputProblem("rate", "left out, blank or 0, but from is given", "Give both, or neither.");

export const rampWithoutFrom = (): InputProblem => new InputProblem("from", "left out, but rate is given", "Give both, or neither.");

export const noHoldNoRamp = (): InputProblem =>
  new InputProblem("minutes", "nothing here (blank or 0)", "Give the minutes held, or from and rate of a ramp.");

export const rampNotBelow = (from: number, temperature: number): InputProblem =>
  new InputProblem(
    "from",
    `${withUnit(from, "°C")} is not below temperature, ${withUnit(temperature, "°C")}`,
    "Give where the ramp begins; the hold is at temperature.",
  );

export const onePoint = (): InputProblem =>
  new InputProblem("readings", "one calibration point makes no line", "Give at least two; a last row of 0 and 0 counts as blank, so put ice first.");

export const pointsDiffer = (readings: number, references: number): InputProblem =>
  new InputProblem("references", `${counted(references, "value")} beside ${counted(readings, "reading")}`, "Give one reference for each reading.");

export const correctionTooLarge = (row: number, reading: number, reference: number, most: number): InputProblem =>
  new InputProblem(
    "references",
    `row ${row} is ${plainNumber(reference)} where ${plainNumber(reading)} was read, over ${withUnit(most, "°C")} off`,
    "Check for a blank cell, swapped rows or °F.",
  );

export const fixedPointInKelvin = (row: number, kelvin: number, celsius: number, what: string): InputProblem =>
  new InputProblem(
    "references",
    `row ${row} is ${plainNumber(kelvin)}, ${what} in kelvin`,
    `Give degrees Celsius, ${plainNumber(celsius)}, there and in readings.`,
  );

export const calibrationOrder = (below: number, reading: number): InputProblem =>
  new InputProblem(
    "references",
    `they do not rise from the reading ${plainNumber(below)} to ${plainNumber(reading)}`,
    "Check for a repeated or swapped point.",
  );

export const outsideCalibration = (reading: number, least: number, most: number): InputProblem =>
  new InputProblem(
    "reading",
    `${withUnit(reading, "°C")} is outside the points, ${plainNumber(least)} to ${withUnit(most, "°C")}`,
    "Calibrate beyond it; nothing is guessed there.",
  );

export const closedWithoutEnd = (): InputProblem =>
  new InputProblem("minutes", "left out, but in a closed room a gas rises without end", "Give the minutes the gas flows.");

export const roomFull = (ppm: number): InputProblem =>
  new InputProblem(
    "gramsPerHour",
    `the gas would come to ${plainNumber(ppm, SIZE_FIGURES)} ppm, more than the room holds`,
    "Check grams an hour, volume and air changes.",
  );

/** What a heating rate says of the rate that was set. */
export const RATE_VERDICTS = {
  noSetRate: "no set rate to compare with",
  asSet: "within 5 % of the set rate",
  open: "cannot tell: the readings allow both within 5 % of the set rate and beyond",
  slower: "slower than the set rate by more than 5 %",
  faster: "faster than the set rate by more than 5 %",
  uneven: "; uneven: the halves differ by more than a fifth, so one rate and its u do not describe the run",
} as const;

// Notes beside an answer: nothing is wrong with the inputs.

export const LOW_PRESSURE =
  "The pressure is below 20 kPa, a vacuum; if the air outside was meant, check that it is in Pa and not in hPa, kPa, mmHg or bar.";

export const closedVessel = (kilopascals: number): string =>
  `Closed in, the same gas would press a vessel of 1 L with ${plainNumber(kilopascals, SIZE_FIGURES)} kPa on top of the air in it, and a smaller one with more: never close one.`;

export const fastSchedule = (rate: number): string =>
  `${plainNumber(rate, SIZE_FIGURES)} a minute is faster than kilns heat: check whether the rates are per hour.`;

export const slowSchedule = (days: number): string => `${plainNumber(days, SIZE_FIGURES)} days in all: check whether the rates are per minute.`;

export const BEYOND_STEAM = "The index was fitted to steam treatment at about 100 to 260 °C; here it only compares runs.";

export const perhapsKelvin = (temperature: number, celsius: number): string =>
  `If ${plainNumber(temperature)} was meant in kelvin, give ${withUnit(celsius, "°C")}: as °C it lies far beyond steam treatment.`;

export const HOLE_BY_FLOW =
  "Least opening by flow alone: tar narrows it, a lid that settles closes it, and nothing is added for either. Not a recommendation.";
