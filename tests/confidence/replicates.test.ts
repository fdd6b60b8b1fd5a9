import fc from "fast-check";
import { countedReplicates } from "../../src/confidence/countedReplicates";
import { criticalRangeFactor } from "../../src/confidence/criticalRangeFactor";
import { replicateStatistics, replicateVerdict } from "../../src/confidence/replicateStatistics";
import { seededNormal } from "../numerics/seededNormal";

const results = fc.array(fc.integer({ min: -1_000_000, max: 1_000_000 }), { minLength: 2, maxLength: 12 });

test("the order of the results plays no part", () => {
  fc.assert(
    fc.property(results, (values) => {
      const plain = replicateStatistics(values, 3);
      const turned = replicateStatistics([...values].reverse(), 3);
      expect(turned.mean).toBeCloseTo(plain.mean, 6);
      expect(turned.deviation).toBeCloseTo(plain.deviation, 6);
      for (const name of ["count", "median", "range", "criticalRange"] as const) expect(turned[name]).toBe(plain[name]);
    }),
  );
});

test("r is 2.8 s, and 2.8 times the method's own standard deviation once that is given", () => {
  fc.assert(
    fc.property(results, fc.double({ min: 0.001, max: 1000, noNaN: true }), (values, sd) => {
      const { deviation, repeatabilityLimit } = replicateStatistics(values);
      expect(repeatabilityLimit).toBe(2.8 * deviation);
      expect(replicateStatistics(values, sd).repeatabilityLimit).toBe(2.8 * sd);
    }),
  );
});

test("the mean and the median lie between the smallest and the largest, and s is at most range / sqrt(2)", () => {
  fc.assert(
    fc.property(results, (values) => {
      const { mean, median, deviation, range } = replicateStatistics(values);
      for (const middle of [mean, median]) {
        expect(middle).toBeGreaterThanOrEqual(Math.min(...values) - 1e-6);
        expect(middle).toBeLessThanOrEqual(Math.max(...values) + 1e-6);
      }
      // Half the values at either end spread the most: s^2 = n (range/2)^2 / (n - 1), largest for two.
      expect(deviation).toBeLessThanOrEqual((range / Math.SQRT2) * (1 + 1e-12));
    }),
  );
});

test("a mean of 0, exactly or but for rounding, has no relative standard deviation", () => {
  expect(replicateStatistics([-1, 1]).relativeDeviation).toBeUndefined();
  expect(replicateStatistics([0.1, 0.2, -0.3]).relativeDeviation).toBeUndefined();
  expect(replicateStatistics([-2, -4]).relativeDeviation).toBeCloseTo(Math.SQRT2 / 3, 14);
});

test.each([2, 3, 5])("%d simulated results of one method exceed the critical range in about one case of twenty", (n) => {
  const normal = seededNormal(n);
  const cases = 20_000;
  let exceeded = 0;
  for (let run = 0; run < cases; run++) {
    const values = Array.from({ length: n }, () => 20 + 0.1 * normal());
    if (replicateVerdict(replicateStatistics(values, 0.1)).startsWith("not acceptable")) exceeded++;
  }
  expect(Math.abs(exceeded / cases - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / cases));
});

test("the critical-range factor grows with every further result", () => {
  for (let n = 3; n <= 60; n++) expect(criticalRangeFactor(n)).toBeGreaterThan(criticalRangeFactor(n - 1));
});

test("replicates keep the rows they were given in when empty cells are passed over", () => {
  expect(countedReplicates([5, undefined, 0, 6], "skip")).toEqual([
    { row: 1, value: 5 },
    { row: 4, value: 6 },
  ]);
  expect(countedReplicates([5, 0], "count")).toEqual([
    { row: 1, value: 5 },
    { row: 2, value: 0 },
  ]);
});
