import fc from "fast-check";
import { jStat } from "jstat";
import { incompleteBeta, logGamma } from "../../src/numerics/incompleteBeta";
import { studentTQuantile } from "../../src/numerics/studentTQuantile";
import { studentTOfAnyDegrees, varianceRatioTail } from "../../src/numerics/varianceRatio";

// Abramowitz and Stegun (1964), table 6.1 and 6.1.8: gamma of 1/2 is the root of pi, of whole numbers a factorial.
test.each([
  [1 / 2, Math.log(Math.PI) / 2],
  [1, 0],
  [2, 0],
  [5, Math.log(24)],
  [11, Math.log(3_628_800)],
  [20.5, Math.log(20.5 - 1) + logGamma(19.5)],
])("ln gamma of %d", (x, expected) => {
  expect(logGamma(x)).toBeCloseTo(expected, 12);
});

// Critical values of F that books print (Fisher and Yates, from memory): 5 and 1 %.
test.each([
  [2.866, 4, 20, 0.05],
  [4.431, 4, 20, 0.01],
  [161.448, 1, 1, 0.05],
  [3.098, 3, 20, 0.05],
  [19, 2, 2, 0.05],
])("F of %d with %d and %d degrees of freedom is exceeded in %d", (ratio, between, within, tail) => {
  expect(varianceRatioTail(ratio, between, within)).toBeCloseTo(tail, 4);
});

test("the chance of a ratio of 0 is 1, and of one beyond all is 0", () => {
  expect(varianceRatioTail(0, 3, 7.5)).toBe(1);
  expect(varianceRatioTail(1e300, 3, 7.5)).toBe(0);
  expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]);
});

test("F's tail is jStat's, whole degrees of freedom or not", () => {
  const degrees = fc.integer({ min: 2, max: 400 }).map((tenths) => tenths / 4);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 20 }), degrees, (hundredths, between, within) => {
      const ratio = hundredths / 20;
      expect(varianceRatioTail(ratio, between, within)).toBeCloseTo(1 - jStat.centralF.cdf(ratio, between, within), 7);
    }),
  );
});

test("of whole degrees of freedom t is the finite sum's, of a half between its neighbours, and of one it is a tangent", () => {
  for (const tail of [0.05, 0.025, 0.005, 0.0001])
    for (const degrees of [1, 2, 3, 8, 30, 200]) {
      expect(studentTOfAnyDegrees(tail, degrees) / studentTQuantile(tail, degrees)).toBeCloseTo(1, 9);
      const between = studentTOfAnyDegrees(tail, degrees + 1 / 2);
      expect(between).toBeLessThan(studentTQuantile(tail, degrees));
      expect(between).toBeGreaterThan(studentTQuantile(tail, degrees + 1));
    }
  expect(studentTOfAnyDegrees(0.025, 1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 8);
});
