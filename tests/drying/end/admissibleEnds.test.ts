import { admissibleEnds } from "../../../src/drying/end/admissibleEnds";
import { type Decay, departures, steadyDecay } from "../../../src/drying/end/decays";
import { readingDeviations } from "../../../src/drying/end/endUncertainty";
import { type FallingRateFit, fallingRateFit } from "../../../src/drying/end/fallingRateFit";
import { laterEnds } from "../../../src/drying/end/laterEnds";
import type { DryingPoint } from "../../../src/drying/weighingSeries";
import { every } from "../simulatedRun";

const STEP = 0.001;
const SPAN = 180;

/** 8 g that had 2 g of water, weighed without error. */
const weighed = (count: number, stage: number, decay: Decay): DryingPoint[] =>
  every(SPAN / (count - 1), count).map((minutes) => ({ minutes, grams: 8 + 2 * decay((stage * minutes) / SPAN, minutes / SPAN)[0] }));

function endsOf(points: readonly DryingPoint[], step = STEP) {
  const deviations = readingDeviations(points, step);
  const fit = fallingRateFit(points, deviations) as FallingRateFit;
  return { fit, ...admissibleEnds(points, deviations, fit, 2) };
}

const everyDecay = departures(1).flatMap(({ steps, decayAt }, path) => steps.map((step) => ({ path, step, decay: decayAt(step) })));

test("every path begins with the steady decay, and every decay begins with all the water and never rises", () => {
  for (const { steps, decayAt } of departures(1))
    for (const x of [0, 0.3, 2])
      expect(decayAt(steps[0] as number)(x, x / 2)).toEqual(steadyDecay(x, x / 2).map((value) => expect.closeTo(value, 12) as number));
  for (const { decay } of everyDecay) {
    expect(decay(0, 0)[0]).toBe(1);
    const left = every(0.05, 21).map((done) => decay(4 * done, done)[0]);
    expect(left).toEqual([...left].sort((a, b) => b - a));
  }
});

test("every decay's slope is that to the logarithm of the rate, by central differences", () => {
  for (const { decay } of everyDecay) {
    for (const [x, done] of [
      [0.4, 0.2],
      [1.5, 0.5],
      [3, 0.9],
    ] as const) {
      const moved = (by: number): number => decay(x * Math.exp(by), done)[0];
      expect(decay(x, done)[1]).toBeCloseTo((moved(1e-5) - moved(-1e-5)) / 2e-5, 8);
    }
  }
});

test("the slow part may be a fifth of all the water, a larger share of what is left at a later first point, never more than all", () => {
  const most = (waterOver: number): number => departures(waterOver)[0]?.steps.at(-1) as number;
  expect([1, 2, 5, 7].map(most)).toEqual([0.2, 0.4, 1, 1]);
});

test("a tail that is seen may be three tenths of all the water and leave at a fifteenth of the rate", () => {
  const last = departures(1, true)[4];
  expect(last?.steps.at(-1)).toBe(0.3);
  expect(last?.decayAt(1)(15, 1)[0]).toBeCloseTo(Math.exp(-1), 12);
  expect(departures(1)[4]?.steps.at(-1)).not.toBe(0.3);
});

test.each([5, 8, 12])(
  "the ends that %s exact weighings allow hold the true one, whichever decay they follow, and lie close to no less than the steady curve's",
  (count) => {
    for (const stage of [2.5, 4, 6]) {
      for (const { decay } of everyDecay) {
        const { lowest, highest } = endsOf(weighed(count, stage, decay));
        expect(lowest).toBeLessThanOrEqual(8);
        expect(highest).toBeGreaterThanOrEqual(8);
      }
    }
  },
);

// Decays between the steps that are fitted: shares, exponents and falls halfway from one to the next.
test("the ends hold the true one for decays between two that are fitted, too", () => {
  for (const { steps, decayAt } of departures(1)) {
    for (const [i, step] of steps.slice(1).entries()) {
      const { lowest, highest } = endsOf(weighed(9, 4, decayAt(((steps[i] as number) + step) / 2)));
      expect(lowest).toBeLessThanOrEqual(8);
      expect(highest).toBeGreaterThanOrEqual(8);
    }
  }
});

test("a finer balance, a longer run and more weighings each narrow the ends of a steady decay", () => {
  const width = (count: number, stage: number, step: number): number => {
    const { lowest, highest } = endsOf(weighed(count, stage, steadyDecay), step);
    return highest - lowest;
  };
  expect(width(6, 4, 0.01)).toBeGreaterThan(2 * width(6, 4, 0.001));
  expect(width(6, 3, 0.001)).toBeGreaterThan(2 * width(6, 6, 0.001));
  expect(width(4, 4, 0.001)).toBeGreaterThan(width(10, 4, 0.001));
});

test("slowing gains where the weighings slow down beyond one exponential, and nothing where they hurry", () => {
  const [slow, quick] = [departures(1)[1], departures(1).at(-1)].map((path) => path?.decayAt(path.steps.at(-1) as number) as Decay);
  expect(endsOf(weighed(9, 5, slow as Decay)).gainOfSlowing).toBeGreaterThan(100);
  expect(endsOf(weighed(9, 5, quick as Decay)).gainOfSlowing).toBe(0);
  const { least, fit } = endsOf(weighed(9, 5, slow as Decay));
  expect(least).toBeLessThan(fit.sumOfSquares / 100);
});

test("laterEnds holds the end of what follows a sudden change, which the curve through all does not", () => {
  const points = every(20, 12).map((minutes) => ({
    minutes,
    grams: 8 + 2 * Math.exp(-0.03 * Math.min(minutes, 100) - 0.006 * Math.max(0, minutes - 100)),
  }));
  const deviations = readingDeviations(points, STEP);
  const { lowest, highest } = laterEnds(points, deviations);
  expect(lowest).toBeLessThanOrEqual(8);
  expect(highest).toBeGreaterThanOrEqual(8);
  expect((fallingRateFit(points, deviations) as FallingRateFit).final).toBeGreaterThan(8.04);
});

test("laterEnds of four weighings, which have no later stretch, is empty", () => {
  expect(laterEnds(weighed(4, 3, steadyDecay), [1, 1, 1, 1])).toEqual({ lowest: Infinity, highest: -Infinity });
});
