import { columnsOfSchedule, oneTemperature, ratesMissing } from "../problems/functions/furnaceProblems";

/** What a rate is counted for; a program that guessed would be wrong sixtyfold. */
export const RATE_UNITS = ["per hour", "per minute"] as const;
export type RateUnit = (typeof RATE_UNITS)[number];

/** A column of steps as the cells hold it: blank cells are undefined, and `rows` counts the cells given. */
export interface StepCells {
  readonly values: readonly (number | undefined)[];
  readonly rows: number;
}

/** One ramp and the hold after it. */
export interface ScheduleStep {
  readonly from: number;
  readonly to: number;
  /** As typed, in the unit of the rates. */
  readonly rate: number;
  readonly rampMinutes: number;
  readonly holdMinutes: number;
}

export interface Schedule {
  /** Minutes held at the first temperature. */
  readonly firstHold: number;
  readonly steps: readonly ScheduleStep[];
  readonly minutes: number;
}

const MINUTES_PER_HOUR = 60;

/**
 * The time that a firing schedule takes: sum of |step| / rate + holds, min. As programmed: a kiln that cannot keep up takes longer.
 * Rates and holds stand either beside the temperatures, the first rate blank, or one cell shorter and then beside the steps.
 * @param temperatures from the start on, in one unit, and rates in the same unit
 * @throws InputProblem for one temperature alone, for columns that do not fit, and for a step without a rate
 */
export function schedule(temperatures: readonly number[], rates: StepCells, holds: StepCells, unit: RateUnit): Schedule {
  const count = temperatures.length - 1;
  if (count < 1) throw oneTemperature();
  const rate = besideSteps("rates", rates, count);
  const hold = besideSteps("holds", holds, count);
  const perMinute = unit === "per hour" ? 1 / MINUTES_PER_HOUR : 1;
  const steps = temperatures.slice(1).map((to, index): ScheduleStep => {
    const from = temperatures[index] as number;
    const asked = rate.steps[index];
    if (asked === undefined) throw ratesMissing(from, to);
    return { from, to, rate: asked, rampMinutes: Math.abs(to - from) / (asked * perMinute), holdMinutes: hold.steps[index] ?? 0 };
  });
  const firstHold = hold.first ?? 0;
  return { firstHold, steps, minutes: steps.reduce((sum, step) => sum + step.rampMinutes + step.holdMinutes, firstHold) };
}

interface BesideSteps {
  readonly first: number | undefined;
  readonly steps: readonly (number | undefined)[];
}

/**
 * The cells of a column as they stand beside the steps, and the one beside the start. A rate in the first cell can only be that of the
 * first step; a hold there is one at the start, where the range reaches as far as the temperatures.
 * @throws InputProblem where more cells are filled than there are steps
 */
function besideSteps(argument: "rates" | "holds", { values, rows }: StepCells, count: number): BesideSteps {
  const [first] = values;
  const fromFirstCell = argument === "rates" ? first !== undefined : rows <= count;
  if (values.length > (fromFirstCell ? count : count + 1)) throw columnsOfSchedule(argument, values.length, count);
  return fromFirstCell ? { first: undefined, steps: values } : { first, steps: values.slice(1) };
}
