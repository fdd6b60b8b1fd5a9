import { checkFalling, checkLoss, checkNoGain, curveMissing } from "../../../src/drying/end/checkFalling";
import { endOfDrying } from "../../../src/drying/end/endOfDrying";
import { endUncertainty, readingDeviations } from "../../../src/drying/end/endUncertainty";
import { fallingPoints, firstFallingPoint } from "../../../src/drying/end/fallingPoints";
import { fallingRateFit, type FallingRateFit } from "../../../src/drying/end/fallingRateFit";
import { equalTriple, threePointEnd } from "../../../src/drying/end/threePointEnd";
import { weighingsToConstant } from "../../../src/drying/end/weighingsToConstant";
import type { DryingPoint } from "../../../src/drying/weighingSeries";
import { every } from "../simulatedRun";

// Each bound of DRYING.END from both sides: what it takes, and what it refuses a little further on.

const halfHourly = (...samples: number[]): DryingPoint[] => samples.map((grams, i) => ({ minutes: 30 * i, grams }));
const step = { grams: 0.01, given: true };

/** The number between two bounds at which an answer turns from true to false. */
function turningPoint(isTrue: (at: number) => boolean, low: number, high: number): number {
  expect([isTrue(low), isTrue(high)]).toEqual([true, false]);
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (isTrue(middle)) low = middle;
    else high = middle;
  }
  return low;
}

// 2 sqrt(2) sqrt(1 + 2/12) = 3.055 steps: repeatability and two roundings of one step, at both readings, k = 2.
test("a rise of 3.05 display steps above the lowest weighing is noise, one of 3.06 a gain", () => {
  expect(() => checkNoGain([10, 9, 9.0305, 8.9, 8.9305], step)).not.toThrow();
  expect(() => checkNoGain([10, 9, 9.0306], step)).toThrow(
    "weights: row 3, 9.0306 g, is above row 2, 9 g, by more than a balance of 0.01 g strays. Look for regained moisture or a wrong cell.",
  );
  expect(() => checkNoGain([10, 9, 9.02, 9.031], step)).toThrow("row 4, 9.031 g, is above row 2, 9 g");
  expect(() => checkNoGain([10, 9, 9, 9.031], step)).toThrow("row 4, 9.031 g, is above row 3, 9 g");
});

// 2 sqrt(2) sqrt(0.03^2 + 2 (0.01)^2 / 12) = 0.0856 g.
test("a balance whose repeatability is given may show a rise of 85 mg where it is three steps of 10 mg, and not of 86 mg", () => {
  const known = { ...step, repeatability: 0.03 };
  expect(() => checkNoGain([10, 9, 9.0856], known)).not.toThrow();
  expect(() => checkNoGain([10, 9, 9.0858], known)).toThrow("row 3, 9.0858 g, is above row 2, 9 g");
});

test("a loss of four display steps is seen, a smaller one is inside the noise, and none is nothing lost", () => {
  expect(() => checkLoss(halfHourly(10, 9.96), 1, step)).not.toThrow();
  expect(() => checkLoss(halfHourly(10, 9.9601), 1, step)).toThrow("weights: 0.0399 g lost since row 1 is below 4 steps of 0.01 g");
  expect(() => checkLoss(halfHourly(10, 10 - 2e-9), 3, { grams: 1e-10, given: true })).not.toThrow();
  expect(() => checkLoss(halfHourly(10, 10 - 5e-10), 3, step)).toThrow("weights: nothing lost since row 3");
});

test("four weighings on the falling rate are enough, three are not, and one means that the rate never fell", () => {
  expect(() => checkFalling(halfHourly(10, 9, 8.5, 8.3), 4, step)).not.toThrow();
  expect(() => checkFalling(halfHourly(10, 9, 8.5), 4, step)).toThrow(
    "weights: the rate falls only since row 4, and 3 weighings cannot show the end; it takes 4. Weigh again.",
  );
  expect(() => checkFalling(halfHourly(10), 4, step)).toThrow("weights: since row 1 the loss does not slow down");
});

test("more than 95 % of the loss in the first interval leaves no rate to see, less does not slow down", () => {
  expect(curveMissing(halfHourly(10, 9.0499, 9.01, 9), 2).message).toContain("nearly all was lost between rows 2 and 3");
  expect(curveMissing(halfHourly(10, 9.0501, 9.01, 9), 2).message).toContain("since row 2 the loss does not slow down");
});

test("an interval above nine tenths of the fastest rate is still the constant rate, one below is not", () => {
  // Losses per interval 1, 0.901 (or 0.899), 0.5, 0.25, 0.12.
  expect(firstFallingPoint(halfHourly(20, 19, 18.099, 17.6, 17.35, 17.23))).toBe(3);
  expect(firstFallingPoint(halfHourly(20, 19, 18.101, 17.6, 17.35, 17.23))).toBe(0);
});

const milligrams = (points: readonly DryingPoint[]): number[] => points.map(() => 0.001);
const exactly = (count: number, stray: number, strays: readonly number[] = []): DryingPoint[] =>
  every(30, count).map((minutes, i) => ({ minutes, grams: 8.4 + 1.6 * 2 ** -i + (i === 0 ? stray : (strays[i - 1] ?? 0)) }));

/** Student's t of the first point, were it left out. */
function strayness(points: readonly DryingPoint[], variance: (without: FallingRateFit) => number): number {
  const all = fallingRateFit(points, milligrams(points)) as FallingRateFit;
  const without = fallingRateFit(points.slice(1), milligrams(points.slice(1))) as FallingRateFit;
  return Math.sqrt((all.sumOfSquares - without.sumOfSquares) / variance(without));
}

// Nine weighings leave the others 8 - 3 = 5 degrees of freedom; Student's t, 1 % two-sided, 5 degrees: 4.032 (printed tables).
test("a first weighing is left out beyond t = 4.032 of the balance's own deviation where the others lie closer than that", () => {
  const keeps = (stray: number): boolean => fallingPoints(exactly(9, stray), milligrams(exactly(9, stray))).points.length === 9;
  const bound = turningPoint(keeps, 0, 0.1);
  expect(strayness(exactly(9, bound), () => 1)).toBeCloseTo(4.032, 3);
});

test("a first weighing is left out beyond t = 4.032 of the others' scatter where that is the larger", () => {
  const strays = [0.004, -0.005, 0.003, 0.002, -0.004, 0.005, -0.003, 0.002];
  const keeps = (stray: number): boolean => fallingPoints(exactly(9, stray, strays), milligrams(exactly(9, stray))).points.length === 9;
  const bound = turningPoint(keeps, 0, 0.5);
  const variance = ({ sumOfSquares, degrees }: FallingRateFit): number => sumOfSquares / degrees;
  expect(strayness(exactly(9, bound, strays), variance)).toBeCloseTo(4.032, 3);
});

// The bound itself is in the code's reasons: the 95 % interval of ln(rate) may reach 1, an e-fold, and no more.
test("a rate is refused where its 95 % uncertainty reaches an e-fold", () => {
  const times = every(30, 5);
  const weights = times.map((t) => 8 + Math.exp(-0.1 * t));
  const answers = (readability: number): boolean => {
    try {
      endOfDrying({ times, weights, readability });
      return true;
    } catch {
      return false;
    }
  };
  const bound = turningPoint(answers, 0.001, 0.24);
  const points = times.map((minutes, i) => ({ minutes, grams: weights[i] as number }));
  const fit = fallingRateFit(points, readingDeviations(points, bound)) as FallingRateFit;
  expect(endUncertainty(fit, [0, 0, 1]).expanded).toBeCloseTo(1, 4);
});

test("an end is refused where its 95 % uncertainty is all that was lost so far", () => {
  const times = every(30, 8);
  const weights = times.map((_, i) => 8 + 0.65 ** i);
  const answers = (readability: number): boolean => {
    try {
      endOfDrying({ times, weights, readability });
      return true;
    } catch (thrown) {
      expect((thrown as Error).message).toContain("the loss does not slow down clearly enough");
      return false;
    }
  };
  const bound = turningPoint(answers, 0.1, 0.2);
  expect(endOfDrying({ times, weights, readability: bound }).uncertainty.expanded / (1 - 0.65 ** 7)).toBeCloseTo(1, 4);
  const points = times.map((minutes, i) => ({ minutes, grams: weights[i] as number }));
  const fit = fallingRateFit(points, readingDeviations(points, bound)) as FallingRateFit;
  expect(endUncertainty(fit, [0, 0, 1]).expanded).toBeLessThan(1);
});

test("a three-point end needs a bend of four display steps, no less", () => {
  // Losses of 1 and 0.5 g: the end's slopes to the three weighings are 1, -4 and 4.
  expect(threePointEnd([10, 9, 8.5], 0.125)).toEqual({ final: 8, ratio: 0.5, gain: Math.sqrt(1 + 16 + 16) });
  expect(threePointEnd([10, 9, 8.5], 0.126)).toBe("bend inside the balance's noise");
});

test("intervals count as equal within 2 %, the shorter of the two taken as whole", () => {
  const at = (...times: number[]): DryingPoint[] => times.map((minutes) => ({ minutes, grams: 10 }));
  expect(equalTriple(at(0, 50, 101))).toHaveLength(3);
  expect(equalTriple(at(0, 51, 101))).toHaveLength(3);
  expect(equalTriple(at(0, 50, 101.01))).toBeUndefined();
});

// Water of 1 g that falls by 1 % an interval: the n-th loss to come is 0.01 x 0.99^(n - 1) g.
test("more weighings are counted up to 200, and not beyond", () => {
  const fit: FallingRateFit = { final: 8, water: 1, rate: -Math.log(0.99), from: 0, sumOfSquares: 0, degrees: 1, covariance: [] };
  const ahead = (count: number): number | string =>
    weighingsToConstant(fit, { criterion: "absolute", limit: 0.01 * 0.99 ** (count - 1), first: 9, last: 0, interval: 1 });
  expect([1, 2, 100, 200, 201].map(ahead)).toEqual([1, 2, 100, 200, "too many"]);
});

test("the balance is too coarse for weighings to come just where the limit is below two display steps", () => {
  const fit: FallingRateFit = { final: 8, water: 1, rate: Math.LN2 / 30, from: 0, sumOfSquares: 0, degrees: 1, covariance: [] };
  const more = (readability: number): number | string =>
    weighingsToConstant(fit, { criterion: "absolute", limit: 0.02, first: 9, last: 0, interval: 30, readability });
  expect([more(0.01), more(0.0101)]).toEqual([6, "balance too coarse"]);
});

// Water of 1 g that halves every half hour: the fifth loss to come is 1/32 g, of 8 + 1/32 g, in half an hour.
test("weighings to come are held to a limit per hour over the interval between them", () => {
  const fit: FallingRateFit = { final: 8, water: 1, rate: Math.LN2 / 30, from: 0, sumOfSquares: 0, degrees: 1, covariance: [] };
  const more = (limit: number): number | string => weighingsToConstant(fit, { criterion: "per hour", limit, first: 9, last: 0, interval: 30 });
  const fifth = 1 / 32 / (8 + 1 / 32) / 0.5;
  expect([more(1.001 * fifth), more(0.999 * fifth)]).toEqual([5, 6]);
});
