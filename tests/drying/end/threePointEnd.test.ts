import fc from "fast-check";
import type { DryingPoint } from "../../../src/drying/weighingSeries";
import { equalTriple, threePointEnd } from "../../../src/drying/end/threePointEnd";

test("threePointEnd is exact for any first-order curve", () => {
  const share = fc.double({ min: 0.05, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 0.5, max: 20, noNaN: true }), share, (final, water, ratio) => {
      const answer = threePointEnd([final + water, final + water * ratio, final + water * ratio * ratio]);
      if (typeof answer === "string") throw new Error(answer);
      expect(answer.final).toBeCloseTo(final, 6);
      expect(answer.ratio).toBeCloseTo(ratio, 9);
    }),
  );
});

test("threePointEnd's gain is the root sum square of its slopes, by central differences", () => {
  const weighings: [number, number, number] = [12, 10, 8.9];
  const moved = (j: number, by: number): number => {
    const answer = threePointEnd(weighings.map((grams, i) => (i === j ? grams + by : grams)) as [number, number, number]);
    return typeof answer === "string" ? NaN : answer.final;
  };
  const slopes = [0, 1, 2].map((j) => (moved(j, 1e-5) - moved(j, -1e-5)) / 2e-5);
  expect(threePointEnd(weighings)).toMatchObject({ gain: expect.closeTo(Math.hypot(...slopes), 6) });
});

test.each<readonly [string, [number, number, number], number, string]>([
  ["a gain at the end", [10, 9, 9.1], 0, "gain"],
  ["a gain at the beginning", [9, 10, 9.5], 0, "gain"],
  ["a straight line", [10, 9, 8], 0, "not slowing down"],
  ["a loss that grows", [10, 9, 7], 0, "not slowing down"],
  ["no loss at all", [10, 10, 10], 0, "not slowing down"],
  ["a bend of three steps", [10, 9.99, 9.983], 0.001, "bend inside the balance's noise"],
])("threePointEnd says why there is no answer to %s: %j on a balance of %s g", (_name, weighings, readability, why) => {
  expect(threePointEnd(weighings, readability)).toBe(why);
});

test("threePointEnd answers for a bend of five steps", () => {
  expect(threePointEnd([10, 9.99, 9.985], 0.001)).toEqual({
    final: expect.closeTo(9.98, 9),
    ratio: expect.closeTo(0.5, 9),
    gain: expect.any(Number),
  });
});

const at = (...times: number[]): DryingPoint[] => times.map((minutes) => ({ minutes, grams: 10 }));
const minutesOf = (points: readonly DryingPoint[]): number[] | undefined => equalTriple(points)?.map(({ minutes }) => minutes);

test.each([
  ["the widest of equal intervals", [0, 30, 60, 90, 120], [0, 60, 120]],
  ["the widest there is among an even number", [0, 30, 60, 90], [30, 60, 90]],
  ["intervals equal to half a minute in thirty", [0, 30, 60.5], [0, 30, 60.5]],
  ["three that are far apart among uneven ones", [0, 7, 50, 77, 100], [0, 50, 100]],
])("equalTriple takes %s of %j", (_name, times, taken) => {
  expect(minutesOf(at(...times))).toEqual(taken);
});

test.each([[[0, 30, 61]], [[0, 30]], [[]], [[0, 20, 55, 75, 120]]])("equalTriple finds nothing in %j", (times) => {
  expect(minutesOf(at(...times))).toBeUndefined();
});
