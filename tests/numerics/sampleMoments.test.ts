import fc from "fast-check";
import { sampleMoments } from "../../src/numerics/sampleMoments";

/** First value, then pairs of one below and one above, 1001 in all. */
const alternating = (first: number, below: number, above: number): number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? below : above)),
];

// NIST Statistical Reference Datasets, univariate summary statistics NumAcc1 to NumAcc4 (the data sets and their certified
// values, exact by construction, from memory). What is lost below is lost in writing 10000000.2 as a double.
test.each([
  ["NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, 15],
  ["NumAcc2", alternating(1.2, 1.1, 1.3), 1.2, 0.1, 14],
  ["NumAcc3", alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 9],
  ["NumAcc4", alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 8],
])("sampleMoments gives the certified mean and standard deviation of %s", (_, values, mean, deviation, digits) => {
  const moments = sampleMoments(values);
  expect(moments.mean / mean).toBeCloseTo(1, 15);
  expect(Math.abs(moments.deviation / deviation - 1)).toBeLessThan(10 ** -digits);
});

test("sampleMoments loses neither very small nor very large spreads", () => {
  expect(sampleMoments([1e-200, 3e-200]).deviation).toBeCloseTo(Math.SQRT2 * 1e-200, 210);
  expect(sampleMoments([1e-200, 3e-200]).deviation / 1e-200).toBeCloseTo(Math.SQRT2, 14);
  expect(sampleMoments([1e200, 3e200]).deviation / 1e200).toBeCloseTo(Math.SQRT2, 14);
});

test("sampleMoments of equal values has no spread, and one value is its own mean", () => {
  expect(sampleMoments([0.1, 0.1, 0.1])).toEqual({ mean: 0.1, deviation: 0 });
  expect(sampleMoments([5])).toEqual({ mean: 5, deviation: 0 });
});

test("sampleMoments leaves its input as it was", () => {
  expect(sampleMoments(Object.freeze([3, 1, 2]))).toEqual({ mean: 2, deviation: 1 });
});

test("shifting and scaling the values shifts and scales the mean, and scales the spread", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 20 }),
      fc.integer({ min: -1000, max: 1000 }),
      fc.integer({ min: 1, max: 100 }),
      (values, shift, scale) => {
        const { mean, deviation } = sampleMoments(values);
        const moved = sampleMoments(values.map((value) => scale * value + shift));
        expect(moved.mean).toBeCloseTo(scale * mean + shift, 8);
        expect(moved.deviation).toBeCloseTo(scale * deviation, 8);
      },
    ),
  );
});
