import type { DryingRun } from "../../src/drying/end/endOfDrying";

/** A drying run of known truth, with a balance that repeats to one display step. */
export interface Simulation {
  readonly times: readonly number[];
  /** Where drying ends, g. */
  readonly final: number;
  /** Water at the end of the constant-rate beginning, g. */
  readonly water: number;
  /** 1/min */
  readonly rate: number;
  /** How long the rate stays constant at first, min. */
  readonly constantFor?: number;
  readonly readability: number;
}

/** The sample at some minutes, g: a straight line that runs on into the falling rate without a kink. */
export function trueSample({ final, water, rate, constantFor = 0 }: Simulation, minutes: number): number {
  const since = minutes - constantFor;
  return since < 0 ? final + water * (1 - rate * since) : final + water * Math.exp(-rate * since);
}

/** The run as it is read: repeatability of one step, then rounded to the step. */
export function simulatedRun(simulation: Simulation, normal: () => number): DryingRun {
  const { times, readability } = simulation;
  const weights = times.map((minutes) => readability * Math.round(trueSample(simulation, minutes) / readability + normal()));
  return { times, weights, readability };
}

/** Times every so many minutes, the first at 0. */
export const every = (minutes: number, count: number): number[] => Array.from({ length: count }, (_, i) => i * minutes);
