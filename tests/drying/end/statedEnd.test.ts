import { endOfDrying } from "../../../src/drying/end/endOfDrying";
import { every, simulatedRun } from "../simulatedRun";

const none = (): number => 0;
const rounded = (times: readonly number[], step: number, sample: (minutes: number) => number): number[] =>
  times.map((minutes) => Number((step * Math.round(sample(minutes) / step)).toFixed(3)));

test("the stated end of a run that no decay follows reaches to where its last weighings alone point", () => {
  // The rate falls to a third from 120 min on, which is not half way.
  const times = every(20, 14);
  const weights = rounded(times, 0.001, (t) => 20 + 10 * Math.exp(-0.02 * Math.min(t, 120) - 0.0065 * Math.max(0, t - 120)));
  const { final, fit, uncertainty, curveUncertainty, scattersTooMuch } = endOfDrying({ times, weights, readability: 0.001 });
  expect(scattersTooMuch).toBe(true);
  expect(Math.abs(fit.final - 20)).toBeGreaterThan(curveUncertainty.expanded);
  expect(Math.abs(final - 20)).toBeLessThan(uncertainty.expanded);
});

test("the stated end never reaches below nothing", () => {
  const { weights, times } = simulatedRun({ times: every(30, 6), final: 0.2, water: 10, rate: 0.02, readability: 0.01 }, none);
  const { lowest, final, uncertainty } = endOfDrying({ times, weights, readability: 0.01 });
  expect(lowest).toBe(0);
  expect(uncertainty.expanded).toBeCloseTo(final, 9);
});

test("a first weighing above the curve of the others tells of a slower tail, one below it of a constant rate", () => {
  const times = every(30, 10);
  const quick = rounded(times, 0.001, (t) => 6 + 2 * Math.exp(-0.012 * t) + 1.2 * Math.exp(-0.3 * t));
  const above = endOfDrying({ times, weights: quick, readability: 0.001 });
  expect(above.points.length).toBeLessThan(10);
  expect(above.slowerTail).toBe(true);
  const constant = simulatedRun({ times, final: 6, water: 3, rate: 0.02, constantFor: 20, readability: 0.001 }, none);
  const below = endOfDrying(constant);
  expect(below.points.length).toBeLessThan(10);
  expect(below.slowerTail).toBe(false);
});

// The last reading of a run near its end is as far off as the balance strays, 1.96 sqrt(7/6) steps, and no tail is above it.
test("the stated end reaches no higher above the last weighing than that may read too low", () => {
  const times = every(30, 5);
  const weights = rounded(times, 0.01, (t) => 8 + 2 * Math.exp(-0.02 * t));
  const { final, lowest, uncertainty } = endOfDrying({ times, weights, readability: 0.01 });
  const last = weights.at(-1) as number;
  expect(uncertainty.expanded).toBeLessThanOrEqual(Math.max(final - lowest, last - final + 0.01 * 1.97 * Math.sqrt(7 / 6)));
});
