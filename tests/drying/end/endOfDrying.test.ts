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
  const { curveUncertainty, scatter } = endOfDrying(exact(8, { readability: 0.01 }));
  expect(scatter).toBeLessThan(1e-9);
  expect(curveUncertainty.standard).toBeGreaterThan(0.408 * 0.01 * Math.sqrt(1 / 8));
  expect(curveUncertainty.expanded / curveUncertainty.standard).toBeCloseTo(1.96, 3);
});

// GUM (JCGM 100:2008) 4.3.7: what is only known to lie within bounds a has the standard uncertainty a / sqrt 3.
test("DRYING.END's stated uncertainty is the curve's own, widened to the lowest end that the weighings allow", () => {
  const { final, lowest, curveUncertainty, uncertainty, waterCurveUncertainty, waterUncertainty } = endOfDrying(exact(5, { readability: 0.001 }));
  expect(uncertainty.expanded).toBeCloseTo(final - lowest, 12);
  const allowance = uncertainty.expanded - curveUncertainty.expanded;
  expect(uncertainty.standard ** 2 - curveUncertainty.standard ** 2).toBeCloseTo(allowance ** 2 / 3, 12);
  expect(waterUncertainty.expanded - waterCurveUncertainty.expanded).toBeCloseTo(allowance, 12);
  expect(waterUncertainty.standard ** 2 - waterCurveUncertainty.standard ** 2).toBeCloseTo(allowance ** 2 / 3, 12);
});

test("DRYING.END never predicts an end above the last weighing", () => {
  // A fast part, then a slow one: the curve through all ends above the last weighings.
  const times = every(30, 9);
  const weights = times.map((t) => Math.round(1000 * (8 + 1.5 * Math.exp(-0.05 * t) + 0.06 * Math.exp(-0.006 * t))) / 1000);
  const { fit, final, points, slowerTail, lowest } = endOfDrying({ times, weights, readability: 0.02 });
  expect(points).toHaveLength(9);
  expect(fit.final).toBeGreaterThan(weights.at(-1) as number);
  expect(final).toBe(weights.at(-1));
  expect(lowest).toBeLessThan(8);
  expect(endOfDrying({ times, weights, readability: 0.001 }).slowerTail).toBe(true);
  expect(slowerTail).toBe(false);
});

test("DRYING.END of a balance whose repeatability is given is as uncertain as that makes it, and judges the scatter by it", () => {
  const run = { ...exact(8), readability: 0.001 };
  const ragged = { ...run, weights: run.weights.map((grams, i) => grams + (i % 2 === 0 ? 0.004 : -0.004)) };
  expect(endOfDrying(ragged).scattersTooMuch).toBe(true);
  expect(endOfDrying({ ...ragged, repeatability: 0.004 }).scattersTooMuch).toBe(false);
  const [without, given] = [endOfDrying(run), endOfDrying({ ...run, repeatability: 0.004 })];
  const ratio = Math.hypot(0.001 / Math.sqrt(6), 0.004) / (0.001 / Math.sqrt(6));
  expect(given.curveUncertainty.standard / without.curveUncertainty.standard).toBeCloseTo(ratio, 6);
});
