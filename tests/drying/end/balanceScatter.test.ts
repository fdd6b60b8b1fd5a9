import { readingBound, scattersTooMuch, showsSlowing } from "../../../src/drying/end/balanceScatter";
import type { FallingRateFit } from "../../../src/drying/end/fallingRateFit";

// A step of 1 mg is two roundings of 1 mg / sqrt 6; repeating to one step as well makes its variance 1/6 + 1, seven times that.
const STEP = 0.001;
const unknown = { deviation: STEP / Math.sqrt(6), step: STEP, repeatability: undefined };
const known = { ...unknown, deviation: Math.hypot(STEP / Math.sqrt(6), 0.002), repeatability: 0.002 };
const fit = (sumOfSquares: number, degrees: number): FallingRateFit => ({
  final: 8,
  water: 2,
  rate: 0.02,
  from: 0,
  sumOfSquares,
  degrees,
  covariance: [],
});

// Chi-square, tail 1 %, printed tables: 6.635, 11.345 and 23.209; the approximation is within 1 %.
test.each([
  [1, 6.635],
  [3, 11.345],
  [10, 23.209],
])("a scatter about a curve with %s to spare is too much beyond chi-square %s of what the balance explains", (degrees, chiSquare) => {
  expect(scattersTooMuch(fit(7 * chiSquare * 0.99, degrees), unknown)).toBe(false);
  expect(scattersTooMuch(fit(7 * chiSquare * 1.01, degrees), unknown)).toBe(true);
  expect(scattersTooMuch(fit(chiSquare * 0.99, degrees), known)).toBe(false);
  expect(scattersTooMuch(fit(chiSquare * 1.01, degrees), known)).toBe(true);
});

const ends = (gainOfSlowing: number) => ({ lowest: 7, highest: 9, least: 0, gainOfSlowing });

test("a slower decay is shown by more than chi-square 6.635 of what the balance explains", () => {
  const bound = 7 * 6.635;
  expect(showsSlowing(ends(bound * 1.0001), fit(bound * 1.5, 3), unknown)).toBe(true);
  expect(showsSlowing(ends(bound * 0.9999), fit(bound * 1.5, 3), unknown)).toBe(false);
  expect(showsSlowing(ends(6.64), fit(10, 3), known)).toBe(true);
  expect(showsSlowing(ends(6.63), fit(10, 3), known)).toBe(false);
});

test("a slower decay that leaves half of the misfit is not shown, one that takes more than half away is", () => {
  expect(showsSlowing(ends(1000), fit(2000, 3), unknown)).toBe(false);
  expect(showsSlowing(ends(1001), fit(2000, 3), unknown)).toBe(true);
});

// 1.96 sqrt(1 + 1/6) steps where the weighings lie close to the curve; Student's t of one degree, 12.706, else.
test("a weighing may read above the truth by what balance or scatter make of it, the larger", () => {
  expect(readingBound(fit(0, 1), unknown) / STEP).toBeCloseTo(1.96 * Math.sqrt(7 / 6), 3);
  expect(readingBound(fit(100, 1), unknown)).toBeCloseTo(12.706 * 10 * unknown.deviation, 5);
  expect(readingBound(fit(0, 1), known)).toBeCloseTo(1.959964 * known.deviation, 9);
});
