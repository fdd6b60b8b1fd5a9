import { type DryingRun, endOfDrying } from "../../../src/drying/end/endOfDrying";
import { lastDigitStep, readingDeviations } from "../../../src/drying/end/endUncertainty";
import { constantWeight } from "../../../src/drying/constantWeight/constancySteps";
import { every, trueSample } from "../simulatedRun";

const HALVING = Math.log(2) / 30;
const exact = (count: number, rest: Partial<DryingRun> = {}): DryingRun => {
  const times = every(30, count);
  return { times, weights: times.map((t) => trueSample({ times, final: 8.4, water: 1.6, rate: HALVING, readability: 0.001 }, t)), ...rest };
};

// 1.6 g of water that halves in every interval: the losses are 0.8, 0.4, 0.2 ... g, and the n-th is 1.6 / 2^n.
test.each([
  ["absolute", 0.025, 2],
  ["absolute", 0.0125, 3],
  ["absolute", 0.0124, 4],
  ["of last", 0.001, 4],
  ["of initial", 0.0005, 5],
  ["per gram", 0.0005, 5],
  ["of total loss", 0.002, 5],
  ["per hour", 0.001, 5],
] as const)("DRYING.END counts the weighings until %s %s is met: %s more", (criterion, limit, more) => {
  const run = exact(5, { criterion, limit });
  expect(endOfDrying(run).weighingsLeft).toBe(more);
  // Weighed on that far, the run is constant by the same rule, and one weighing sooner it is not.
  const asWeighed = (count: number): number => constantWeight({ ...exact(count), criterion, limit });
  expect(asWeighed(5 + more)).toBe(5 + more);
  expect(asWeighed(4 + more)).toBe(0);
});

test("DRYING.END counts no more weighings once the last is steady", () => {
  expect(endOfDrying(exact(10)).weighingsLeft).toBe(0);
});

test("DRYING.END says when the balance is too coarse for the limit that lies ahead", () => {
  const rounded = exact(5).weights.map((grams) => Math.round(grams * 100) / 100);
  expect(endOfDrying(exact(5, { weights: rounded, readability: 0.01 })).weighingsLeft).toBe("balance too coarse");
});

test("DRYING.END says when the interval is far too short", () => {
  const times = every(1, 40);
  const weights = times.map((t) => 8.4 + 1.6 * Math.exp(-0.01 * t));
  expect(endOfDrying({ times, weights, limit: 1e-6, criterion: "of last" }).weighingsLeft).toBe("too many");
});

test("DRYING.END takes the last digit of the weighings for the step where readability is left out", () => {
  expect(endOfDrying({ times: every(30, 5), weights: [10, 9.2, 8.8, 8.6, 8.5] }).uncertainty.standard).toBeCloseTo(
    endOfDrying({ times: every(30, 5), weights: [10, 9.2, 8.8, 8.6, 8.5], readability: 0.1 }).uncertainty.standard,
    12,
  );
});

test.each([
  [[10, 9, 8], 1],
  [[10, 9.2, 8.95], 0.01],
  [[35.1234, 33.893000000000001], 0.0001],
  [[0.1 + 0.2], 0.1],
  [[Math.PI], 1e-9],
])("lastDigitStep of %j is %s g", (weights, step) => {
  expect(lastDigitStep(weights)).toBe(step);
});

// USP <41>: a zeroed reading is known to 0.41 display steps.
test("readingDeviations is 0.41 display steps for exact times", () => {
  const points = every(30, 3).map((minutes) => ({ minutes, grams: 10 }));
  for (const deviation of readingDeviations(points, 0.001)) expect(deviation / 0.001).toBeCloseTo(0.408, 3);
});

// GUM (JCGM 100:2008) 4.3.7: bounds of half a minute are a deviation of 0.2887 min, here at 0.1 g/min.
test("readingDeviations adds what leaves while the time is in doubt", () => {
  const points = [0, 10, 30].map((minutes) => ({ minutes, grams: 20 - 0.1 * minutes }));
  for (const deviation of readingDeviations(points, 0.001, 0.5)) expect(deviation).toBeCloseTo(Math.hypot(0.000408, 0.02887), 5);
});

test("DRYING.END lets fast-losing weighings count for less when timing is in doubt", () => {
  const run = exact(8, { readability: 0.004 });
  const weights = run.weights.map((grams, i) => (i === 2 ? grams + 0.01 : grams));
  const off = (timing?: number): number => Math.abs(endOfDrying({ ...run, weights, timing }).fit.final - 8.4);
  expect(off(2)).toBeLessThan(off() / 2);
});

test("DRYING.END's uncertainty is the balance's own where the weighings lie closer to the curve than its roundings", () => {
  const { uncertainty, scatter } = endOfDrying(exact(8, { readability: 0.01 }));
  expect(scatter).toBeLessThan(1e-9);
  expect(uncertainty.standard).toBeGreaterThan(0.408 * 0.01 * Math.sqrt(1 / 8));
  expect(uncertainty.expanded / uncertainty.standard).toBeCloseTo(1.96, 3);
});
