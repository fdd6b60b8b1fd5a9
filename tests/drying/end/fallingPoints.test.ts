import { fallingPoints, firstFallingPoint } from "../../../src/drying/end/fallingPoints";
import type { DryingPoint } from "../../../src/drying/weighingSeries";
import { every, trueSample } from "../simulatedRun";

const run = (times: readonly number[], constantFor: number, rate = 0.02): DryingPoint[] =>
  times.map((minutes) => ({ minutes, grams: trueSample({ times, final: 6, water: 3, rate, constantFor, readability: 0.001 }, minutes) }));
const grams = (...samples: number[]): DryingPoint[] => samples.map((sample, i) => ({ minutes: 30 * i, grams: sample }));
const milligrams = (points: readonly DryingPoint[]): number[] => points.map(() => 0.001);
const used = (points: readonly DryingPoint[]): number => fallingPoints(points, milligrams(points)).points.length;

test("firstFallingPoint is the first weighing of a run that falls from the start", () => {
  expect(firstFallingPoint(run(every(30, 8), 0))).toBe(0);
  expect(firstFallingPoint(run([0, 10, 60, 70, 200, 210, 215], 0))).toBe(0);
});

test.each([
  [60, 3],
  [75, 4],
  [90, 4],
  [95, 4],
  [110, 5],
  [119, 5],
])("firstFallingPoint leaves out %s min of constant rate, weighed every 30 min, and starts at index %s", (constantFor, index) => {
  const points = run(every(30, 12), constantFor);
  expect(firstFallingPoint(points)).toBe(index);
  expect((points[index] as DryingPoint).minutes).toBeGreaterThanOrEqual(constantFor);
});

test("firstFallingPoint leaves out a slow beginning while the sample warms up", () => {
  expect(firstFallingPoint(grams(10, 9.9, 9.5, 8.5, 7.5, 6.9, 6.5, 6.3, 6.2))).toBe(5);
});

test("firstFallingPoint is the last weighing where the rate never falls", () => {
  expect(firstFallingPoint(grams(10, 9, 8, 7, 6))).toBe(4);
});

test("fallingPoints keeps every weighing of an exact falling-rate curve and finds the curve", () => {
  const points = run([0, 15, 50, 60, 130, 170, 260], 0, 0.013);
  const { points: kept, fit } = fallingPoints(points, milligrams(points));
  expect(kept).toEqual(points);
  expect(fit?.final).toBeCloseTo(6, 9);
  expect(fit?.water).toBeCloseTo(3, 9);
  expect(fit?.rate).toBeCloseTo(0.013, 11);
});

// 20 min of constant rate hide inside the first interval: no two intervals lose mass alike, only the curve can tell.
test("fallingPoints leaves out a first weighing clearly off the others' curve, and its neighbour with it", () => {
  const points = run(every(30, 9), 20);
  const { points: kept, fit } = fallingPoints(points, milligrams(points));
  expect(kept).toEqual(points.slice(2));
  expect(fit?.final).toBeCloseTo(6, 9);
});

test("fallingPoints never goes below four weighings to find a better curve", () => {
  expect(used(run(every(30, 6), 20))).toBe(4);
  expect(used(run(every(30, 4), 20))).toBe(4);
});

test("fallingPoints gives no curve for fewer than four weighings on the falling rate", () => {
  const points = run(every(30, 6), 75);
  const { points: kept, fit } = fallingPoints(points, milligrams(points));
  expect([kept.length, fit]).toEqual([2, undefined]);
});
