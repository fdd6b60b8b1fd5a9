import { chiSquareQuantile } from "../../src/numerics/chiSquareQuantile";

// Printed tables of chi-square, tail 1 %, whose normal deviate is 2.326348.
test.each([
  [1, 6.635],
  [2, 9.21],
  [3, 11.345],
  [5, 15.086],
  [10, 23.209],
  [30, 50.892],
])("chiSquareQuantile at 1 %% for %s degrees of freedom is %s within 1 %%", (degrees, printed) => {
  expect(Math.abs(chiSquareQuantile(2.326348, degrees) / printed - 1)).toBeLessThan(0.01);
});

// Tail 5 %, normal deviate 1.644854.
test.each([
  [2, 5.991],
  [10, 18.307],
])("chiSquareQuantile at 5 %% for %s degrees of freedom is %s within 1 %%", (degrees, printed) => {
  expect(Math.abs(chiSquareQuantile(1.644854, degrees) / printed - 1)).toBeLessThan(0.01);
});
