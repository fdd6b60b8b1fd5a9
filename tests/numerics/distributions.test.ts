import { jStat } from "jstat";
import { gapRatioProbability } from "../../src/numerics/gapRatioProbability";
import { normalProbability } from "../../src/numerics/normalProbability";
import { rangeProbability } from "../../src/numerics/rangeProbability";
import { studentTQuantile } from "../../src/numerics/studentTQuantile";
import { seededNormal } from "./seededNormal";

const span = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1, fifteen decimals.
test.each([
  [0, "0.500000000000000"],
  [0.5, "0.691462461274013"],
  [1, "0.841344746068543"],
  [1.5, "0.933192798731142"],
  [2, "0.977249868051821"],
  [3, "0.998650101968370"],
])("normalProbability(%d) is %s as tabulated", (x, printed) => {
  expect(normalProbability(x).toFixed(15)).toBe(printed);
});

test("normalProbability agrees with jStat to 1e-14 from -12 to 12", () => {
  for (const x of span(-12, 12, 0.1)) expect(Math.abs(normalProbability(x) - jStat.normal.cdf(x, 0, 1))).toBeLessThan(1e-14);
});

test("normalProbability of x and of -x sum to 1", () => {
  for (const x of span(0, 10, 0.25)) expect(normalProbability(x) + normalProbability(-x)).toBeCloseTo(1, 15);
});

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values of Student's t.
test.each([
  [1, 0.025, "12.706"],
  [2, 0.025, "4.303"],
  [3, 0.025, "3.182"],
  [4, 0.05, "2.132"],
  [5, 0.025, "2.571"],
  [6, 0.01, "3.143"],
  [8, 0.005, "3.355"],
  [10, 0.001, "4.144"],
  [15, 0.1, "1.341"],
  [29, 0.025, "2.045"],
  [30, 0.025, "2.042"],
  [100, 0.025, "1.984"],
])("studentTQuantile with %d degrees of freedom and a tail of %d is %s as tabulated", (degrees, tail, printed) => {
  expect(studentTQuantile(tail, degrees).toFixed(3)).toBe(printed);
});

test("studentTQuantile agrees with jStat, which is good to seven digits, wherever GRUBBS can ask", () => {
  for (const degrees of span(1, 60, 1)) {
    const apart = [0.25, 0.1, 0.05, 0.025, 0.01, 0.001, 1e-4, 1e-5, 1e-6].map((tail) =>
      Math.abs(studentTQuantile(tail, degrees) / jStat.studentt.inv(1 - tail, degrees) - 1),
    );
    expect(Math.max(...apart)).toBeLessThan(1e-7);
  }
});

// SciPy 1.17.1, scipy.stats.t.isf(tail, degrees).
test.each([
  [0.025, 1, 12.706204736174705],
  [0.025 / 7, 5, 4.381752962166306],
  [0.0005, 28, 3.673906400701276],
  [0.3, 2, 0.6172133998483678],
  [0.025, 1000, 1.9623390808264085],
  [1e-6, 1, 318309.8861827435],
  [1e-6, 28, 5.967007414716865],
  [1e-8, 3, 479.5250695797382],
])("studentTQuantile(%d, %d) agrees with SciPy to eight digits", (tail, degrees, theirs) => {
  expect(Math.abs(studentTQuantile(tail, degrees) / theirs - 1)).toBeLessThan(1e-8);
});

test("studentTQuantile with one degree of freedom is the Cauchy quantile, with two its closed form", () => {
  for (const tail of [0.4, 0.1, 0.01, 1e-4]) {
    expect(studentTQuantile(tail, 1) * Math.tan(Math.PI * tail)).toBeCloseTo(1, 9);
    expect(studentTQuantile(tail, 2)).toBeCloseTo((1 - 2 * tail) / Math.sqrt(2 * tail * (1 - tail)), 8);
  }
});

test("studentTQuantile nears the normal quantile with many degrees of freedom", () => {
  expect(Math.abs(studentTQuantile(0.025, 100_000) - jStat.normal.inv(0.975, 0, 1))).toBeLessThan(5e-5);
});

test("rangeProbability agrees with jStat's studentized range at very many degrees of freedom", () => {
  for (const n of [2, 3, 5, 10, 20, 50]) {
    for (const range of [0.5, 1, 2, 3, 4, 5, 6]) {
      expect(Math.abs(rangeProbability(range, n) - jStat.tukey.cdf(range, n, 1e9))).toBeLessThan(1e-6);
    }
  }
});

test("rangeProbability of two deviates is that of their difference, normal with variance 2", () => {
  for (const range of span(0, 8, 0.25)) expect(rangeProbability(range, 2)).toBeCloseTo(2 * normalProbability(range / Math.SQRT2) - 1, 13);
});

// Dixon, Ann. Math. Stat. 22 (1951) 68, equation for n = 3 (from memory): density 3 sqrt(3) / (2 pi (r^2 - r + 1)).
test("gapRatioProbability of three deviates is Dixon's closed form", () => {
  for (const ratio of span(0, 1, 0.05)) {
    const below = (3 / Math.PI) * (Math.atan((2 * ratio - 1) / Math.sqrt(3)) + Math.PI / 6);
    expect(gapRatioProbability(ratio, 3)).toBeCloseTo(1 - below, 13);
  }
});

test.each([3, 4, 7, 15, 30])("gapRatioProbability of %d deviates is 1 at ratio 0, 0 at ratio 1, and falls in between", (n) => {
  expect(gapRatioProbability(0, n)).toBeCloseTo(1, 7);
  expect(gapRatioProbability(1, n)).toBe(0);
  const probabilities = span(0, 1, 0.05).map((ratio) => gapRatioProbability(ratio, n));
  for (const [index, probability] of probabilities.slice(1).entries()) expect(probability).toBeLessThan(probabilities[index] as number);
});

test.each([4, 10, 25])("gapRatioProbability of %d deviates is what 20,000 seeded samples show", (n) => {
  const normal = seededNormal(n);
  const samples = 20_000;
  const exceeded = [0.1, 0.3, 0.5].map((ratio) => ({ ratio, count: 0 }));
  for (let sample = 0; sample < samples; sample++) {
    let [smallest, second, largest] = [Infinity, -Infinity, -Infinity];
    for (let index = 0; index < n; index++) {
      const value = normal();
      if (value < smallest) smallest = value;
      if (value > largest) [second, largest] = [largest, value];
      else if (value > second) second = value;
    }
    for (const one of exceeded) if (largest - second > one.ratio * (largest - smallest)) one.count++;
  }
  for (const { ratio, count } of exceeded) {
    const expected = gapRatioProbability(ratio, n);
    expect(Math.abs(count / samples - expected)).toBeLessThan(4 * Math.sqrt((expected * (1 - expected)) / samples));
  }
});
