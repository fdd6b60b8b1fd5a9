import fc from "fast-check";
import { commonStep } from "../../src/numerics/commonStep";
import { seededNormal } from "./seededNormal";

test.each<[values: number[], step: number]>([
  [[10.1, 10.1, 10.2], 0.1],
  [[3.067, 3.049, 3.039, 2.514], 0.001],
  [[10.1, 10.3, 10.5], 0.2],
  [[12.5, 13, 14.25], 0.25],
  [[1000.0001, 1000.0003, 1000.0006], 0.0001],
  [[-0.2, 0.1, -0.1], 0.1],
  [[0, 300, 500], 100],
  [[5], 0],
  [[5, 5, 5], 0],
  [[0, 1, 1e5], 1],
  [[0, 1, 1e7], 0],
])("all differences of %j are multiples of %d", (values, step) => {
  expect(commonStep(values)).toBeCloseTo(step, 12);
});

test("values worked out to all figures have no common step, unless one scale and one shift made them all", () => {
  const normal = seededNormal(3);
  for (let run = 0; run < 300; run++) expect(commonStep([normal(), normal(), normal(), normal()])).toBe(0);
  expect(commonStep([12.3456789 / 3, 12.3456789 / 3, 17.1 / 7])).toBeCloseTo(12.3456789 / 3 - 17.1 / 7, 12);
  expect(commonStep([1.07, 1.09, 1.12, 1.2].map((grams) => (100 * grams) / 12.04 - 0.123456)) / (1 / 12.04)).toBeCloseTo(1, 9);
});

test("finds the step of decimals on 0.1, 0.2 and 0.5, or a multiple of it, wherever they lie", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(0.1, 0.2, 0.5, 0.001),
      fc.integer({ min: -100_000, max: 100_000 }),
      fc.array(fc.integer({ min: 0, max: 2000 }), { minLength: 3, maxLength: 12 }),
      (step, offset, counts) => {
        const found = commonStep(counts.map((count) => Number(((offset + count) * step).toPrecision(12)))) / step;
        const spread = new Set(counts).size > 1;
        expect(spread ? Math.abs(found - Math.round(found)) : found).toBeLessThan(1e-6);
        if (spread) expect(found).toBeGreaterThan(0.9);
      },
    ),
  );
});

test("leaves the values as they were, and does not depend on their order", () => {
  const values = Object.freeze([3, 1, 2.5]);
  expect(commonStep(values)).toBe(commonStep([2.5, 3, 1]));
});
