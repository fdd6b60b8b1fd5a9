import { studentTQuantile } from "../numerics/studentTQuantile";
import {
  clockTimes,
  emptyWindow,
  rateColumnsDiffer,
  sameTime,
  timesOutOfOrder,
  tooFewForRate,
  windowReversed,
} from "../problems/functions/furnaceProblems";

/** Part of a run by temperature; an end left out is open. */
export interface Window {
  readonly from: number | undefined;
  readonly to: number | undefined;
}

/** How fast it really went, per minute in the unit of the temperatures. */
export interface HeatingRate {
  readonly count: number;
  readonly rate: number;
  readonly u: number;
  /** Student's t for 95 % times u. */
  readonly halfWidth: number;
  /** Standard deviation of the readings about the line, at least that of their rounding. */
  readonly scatter: number;
  /** Rates of the first and the second half, undefined below six readings. */
  readonly halves: readonly [first: number, second: number] | undefined;
}

interface Reading {
  readonly time: number;
  readonly temperature: number;
}

interface Line {
  readonly slope: number;
  readonly spread: number;
  readonly squares: number;
}

const TAIL = 0.025;
export const FEWEST = 3;
export const FEWEST_FOR_HALVES = 6;

/**
 * The rate of a run from all its readings: the slope of the least-squares line through them, with u = s / sqrt(sum (t - mean)^2) and
 * n - 2 degrees of freedom, because a rate from the two end points hangs on two readings. The scatter is taken as independent from reading
 * to reading; a bend is not, and makes u too small, so the rates of both halves stand beside it.
 * @param times min, rising
 * @param temperatures one for each time
 * @throws InputProblem for times that do not rise and columns that do not fit; NoAnswer below three readings
 */
export function heatingRate(times: readonly number[], temperatures: readonly number[], window: Window): HeatingRate {
  const readings = inWindow(readingsOf(times, temperatures), window);
  const { slope, spread, squares } = lineThrough(readings);
  const degrees = readings.length - 2;
  // Readings on a coarse display can lie on a line by rounding alone: no scatter is less than that of the last digit shown, step / sqrt(12).
  const scatter = Math.max(Math.sqrt(squares / degrees), shownStep(readings) / Math.sqrt(OF_WIDTH));
  const u = scatter / Math.sqrt(spread);
  const half = Math.ceil(readings.length / 2);
  return {
    count: readings.length,
    rate: slope,
    u,
    halfWidth: studentTQuantile(TAIL, degrees) * u,
    scatter,
    halves: readings.length < FEWEST_FOR_HALVES ? undefined : [lineThrough(readings.slice(0, half)).slope, lineThrough(readings.slice(-half)).slope],
  };
}

function readingsOf(times: readonly number[], temperatures: readonly number[]): readonly Reading[] {
  if (times.length !== temperatures.length) throw rateColumnsDiffer(times.length, temperatures.length);
  if (areClockTimes(times)) throw clockTimes(times[times.length - 1] as number);
  return times.map((time, index) => {
    const before = times[index - 1];
    if (before !== undefined && time < before) throw timesOutOfOrder(index + 1, time, before);
    if (time === before) throw sameTime(index + 1, time);
    return { time, temperature: temperatures[index] as number };
  });
}

// Spreadsheets count clock times in days: a time of day lies between 0 and 1, a date of this century above 36 000, and a run takes a day or two.
export const FIRST_DATE = 36_000;
export const DAYS = 3;

const areClockTimes = (times: readonly number[]): boolean => {
  const [first = 0, last = 0] = [times[0], times[times.length - 1]];
  return first > 0 && last > first && (last < 1 || (first > FIRST_DATE && last - first < DAYS));
};

function inWindow(readings: readonly Reading[], { from, to }: Window): readonly Reading[] {
  if (from !== undefined && to !== undefined && from >= to) throw windowReversed(from, to);
  const inside = readings.filter(({ temperature }) => temperature >= (from ?? -Infinity) && temperature <= (to ?? Infinity));
  if (inside.length >= FEWEST) return inside;
  throw inside.length === readings.length ? tooFewForRate(inside.length, FEWEST) : emptyWindow(inside.length, FEWEST);
}

function lineThrough(readings: readonly Reading[]): Line {
  const mean = (of: (reading: Reading) => number): number => readings.reduce((sum, reading) => sum + of(reading), 0) / readings.length;
  const [time, temperature] = [mean((one) => one.time), mean((one) => one.temperature)];
  const sum = (of: (reading: Reading) => number): number => readings.reduce((total, reading) => total + of(reading), 0);
  const spread = sum((one) => (one.time - time) ** 2);
  const slope = sum((one) => (one.time - time) * (one.temperature - temperature)) / spread;
  return { slope, spread, squares: sum((one) => (one.temperature - temperature - slope * (one.time - time)) ** 2) };
}

// Variance of a rectangular distribution, width^2 / 12: GUM (JCGM 100:2008) 4.3.7.
export const OF_WIDTH = 12;
export const MOST_DECIMALS = 6;
export const HAIR = 1e-6;

/** The last decimal place that any of the temperatures shows; 0 for values worked out to all figures. */
function shownStep(readings: readonly Reading[]): number {
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    const scale = 10 ** decimals;
    if (readings.every(({ temperature }) => Math.abs(scale * temperature - Math.round(scale * temperature)) < HAIR)) return 1 / scale;
  }
  return 0;
}
