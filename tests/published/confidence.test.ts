import { changeVerdict } from "../../src/confidence/changeVerdict";
import { criticalRangeFactor } from "../../src/confidence/criticalRangeFactor";
import { dixonAssessment, dixonCritical } from "../../src/confidence/dixonAssessment";
import { grubbsAssessment, grubbsCritical } from "../../src/confidence/grubbsAssessment";
import { lossUncertainty } from "../../src/confidence/lossUncertainty";
import { readingUncertainty } from "../../src/confidence/readingUncertainty";
import { repeatabilityLimit, replicateStatistics } from "../../src/confidence/replicateStatistics";
import { pharmacopoeiaMinimum } from "../../src/confidence/smallestSample";
import { sampleMoments } from "../../src/numerics/sampleMoments";
import { propagated } from "../confidence/propagated";
import { halfLastDigit } from "./halfLastDigit";

const expectPrinted = (ours: number, printed: string): void => {
  expect(Math.abs(ours - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
};
const rows = (values: readonly number[]): { row: number; value: number }[] => values.map((value, index) => ({ row: index + 1, value }));
const TWO_SIDED = { alpha: 0.05, sides: "two" } as const;

describe("weighing", () => {
  test("LOSSFRACTION.U of 5 g losing 3.5 g, u = 1 mg, is 0.000 251 396 (worked out by hand from the GUM formula)", () => {
    expect(lossUncertainty(20, 25, 21.5, 0.001).commonTare).toBeCloseTo(0.0002513961018, 12);
  });

  test("LOSSFRACTION.U of 10 g losing 3 g, u = 0.01 g, is 0.001 256 98 by hand and 0.001 256 5 in a separate simulation of 2,000,000 runs", () => {
    const { commonTare } = lossUncertainty(25, 35, 32, 0.01);
    expectPrinted(commonTare, "0.00125698");
    expect(Math.abs(commonTare / 0.0012565 - 1)).toBeLessThan(0.001);
  });

  test("2000 standard deviations of 0.00015 g are 0.30000 g (USP <41>, the text of its example)", () => {
    expect(pharmacopoeiaMinimum(0.00015).toFixed(5)).toBe("0.30000");
  });

  test("with readability alone the smallest mass is 820 display steps (a balance maker's page on USP 41)", () => {
    expect(pharmacopoeiaMinimum(0, 1)).toBeCloseTo(820, 9);
  });

  test("the 0.41 of a step in USP <41> is two roundings, as READING.U counts a tared mass", () => {
    expectPrinted(readingUncertainty({ readability: 1, tared: true }), "0.41");
  });

  // Eurachem/CITAC CG 4, example A2 (copy in Analytical Chemistry 2.0, appendix): linearity +/-0.15 mg, counted twice.
  const linearityTwice = readingUncertainty({ readability: 0, linearity: 0.15, tared: true });

  test("linearity of 0.15 mg counted twice is 0.1225 mg, unrounded (Eurachem A2)", () => {
    expectPrinted(linearityTwice, "0.1225");
  });

  // Register of published roundings: 0.15 / sqrt(3) was rounded to 0.09 before it was doubled in quadrature.
  test("it is not the 0.13 mg that Eurachem A2 prints; early rounding makes that", () => {
    expect(Math.abs(linearityTwice - 0.13)).toBeGreaterThan(halfLastDigit("0.13"));
    expectPrinted(Math.SQRT2 * 0.09, "0.13");
  });

  // The propagation that checks LOSSFRACTION.U is itself checked on a published case.
  test("numerical propagation gives the published 0.1021 +/- 0.00010 mol/L of Eurachem A2", () => {
    const concentration = (m = 0, purity = 0, molarMass = 0, volume = 0, repeatability = 0): number =>
      (1000 * m * purity * repeatability) / (molarMass * volume);
    expectPrinted(concentration(0.3888, 1, 204.2212, 18.64, 1), "0.1021");
    const u = propagated(concentration, [
      [0.3888, 0.00013],
      [1, 0.00029],
      [204.2212, 0.0038],
      [18.64, 0.013],
      [1, 0.0005],
    ]);
    expectPrinted(u, "0.00010");
    expect(u / 9.86365520824e-5).toBeCloseTo(1, 6);
  });

  // Worked out by hand from |change| > k sqrt(2) u, in display steps d.
  test.each([
    ["readability alone, each weighing zeroed", "1.15", { readability: 1, tared: true }],
    ["a repeatability of one step as well", "3.055", { readability: 1, repeatability: 1, tared: true }],
  ])("the smallest significant change, k = 2, with %s is %s d", (_, steps, balance) => {
    expectPrinted(changeVerdict(1000, 999, readingUncertainty(balance)).limit, steps);
  });
});

describe("REPLICATES", () => {
  // ISO 5725-6, table 1, prints one decimal (from memory).
  test.each([
    [2, "2.8"],
    [3, "3.3"],
    [4, "3.6"],
    [5, "3.9"],
    [6, "4.0"],
    [7, "4.2"],
    [8, "4.3"],
    [9, "4.4"],
    [10, "4.5"],
    [20, "5.0"],
  ])("the critical-range factor for n = %d is %s as ISO 5725-6 prints it", (n, printed) => {
    expectPrinted(criticalRangeFactor(n), printed);
  });

  // SciPy, scipy.stats.studentized_range.ppf(0.95, n, inf).
  test.each([
    [2, 2.7718076487],
    [3, 3.3144931554],
    [4, 3.6331595749],
    [6, 4.03009205318],
    [10, 4.47412422173],
    [20, 5.01168879412],
  ])("the critical-range factor for n = %d is %d as SciPy has it", (n, theirs) => {
    expect(criticalRangeFactor(n)).toBeCloseTo(theirs, 9);
  });

  // BRE aggregates trial, total sulfur: s_r is printed to three decimals, so r may lie where that rounding allows.
  test.each([
    [0.021, "0.059"],
    [0.042, "0.118"],
    [0.047, "0.131"],
  ])("a repeatability standard deviation of %d gives r = %s (BRE total-sulfur trial)", (deviation, printed) => {
    const allowed = repeatabilityLimit(halfLastDigit(String(deviation))) + halfLastDigit(printed);
    expect(Math.abs(repeatabilityLimit(deviation) - Number(printed))).toBeLessThanOrEqual(allowed);
  });

  // Char yield in % of eight 12 mg samples of one pine (MaCFP condensed-phase data, NIST micro-calorimeter, N2, 60 K/min,
  // runs R2 to R9), from the printed masses in mg; mean, s, RSD and r as worked out from them before this program existed.
  const charge = [11.921, 12.04, 11.903, 12.024, 11.989, 12.037, 12.043, 12.019];
  const char = [1.843, 1.843, 1.846, 1.854, 1.844, 1.846, 1.847, 1.866];
  const yields = char.map((mass, index) => (100 * mass) / (charge[index] as number));

  test("eight char yields of one pine: mean 15.409 %, s 0.0827, RSD 0.54 %, r 0.23", () => {
    const { mean, deviation, relativeDeviation = NaN, repeatabilityLimit: r } = replicateStatistics(yields);
    expectPrinted(mean, "15.409");
    expectPrinted(deviation, "0.0827");
    expectPrinted(100 * relativeDeviation, "0.54");
    expectPrinted(r, "0.23");
  });

  test("with the first run, at another temperature, GRUBBS shows it as the outlier: G 2.58 above 2.215", () => {
    const test_ = grubbsAssessment(rows([(100 * 1.747) / 12.037, ...yields]), TWO_SIDED);
    expectPrinted(test_.statistic, "2.58");
    expectPrinted(test_.critical, "2.215");
    expect([test_.suspect.row, test_.isOutlier]).toEqual([1, true]);
  });
});

describe("GRUBBS", () => {
  // LibreTexts, Analytical Chemistry 2.x, appendix 7, critical values of G.
  test.each([
    [8, 0.05, "2.126"],
    [9, 0.05, "2.215"],
    [10, 0.05, "2.290"],
    [12, 0.05, "2.412"],
  ])("the two-sided critical value for n = %d at %d is %s as printed", (n, alpha, printed) => {
    expect(Math.abs(grubbsCritical(n, alpha / 2) - Number(printed))).toBeLessThanOrEqual(2 * halfLastDigit(printed));
  });

  test("for n = 15 the same table prints 2.549; unrounded it is 2.5483", () => {
    expectPrinted(grubbsCritical(15, 0.025), "2.5483");
  });

  // Worked out with SciPy's Student t from Grubbs' formula.
  test.each([
    [3, 0.05, "1.1543"],
    [4, 0.05, "1.48125"],
    [5, 0.05, "1.7150"],
    [6, 0.05, "1.8871"],
    [7, 0.05, "2.0200"],
    [8, 0.05, "2.1266"],
    [9, 0.05, "2.2150"],
    [10, 0.05, "2.2900"],
    [12, 0.05, "2.4116"],
    [10, 0.01, "2.4821"],
    [15, 0.01, "2.8061"],
  ])("the two-sided critical value for n = %d at %d is %s", (n, alpha, digits) => {
    expectPrinted(grubbsCritical(n, alpha / 2), digits);
  });

  // "Grubbs test: finding outliers", scribd document 76685424, one-sided columns 0.05, 0.025 and 0.01. Its two decimals were rounded
  // from three (1.715 to 1.71, 2.285 to 2.29), so half a unit of the third may come on top.
  test.each([
    [4, "1.46", "1.48", "1.49"],
    [5, "1.67", "1.71", "1.75"],
    [6, "1.82", "1.89", "1.94"],
    [7, "1.94", "2.02", "2.10"],
    [8, "2.03", "2.13", "2.22"],
    [9, "2.11", "2.21", "2.32"],
    [10, "2.18", "2.29", "2.41"],
    [12, "2.29", "2.41", "2.55"],
    [15, "2.41", "2.55", "2.71"],
    [20, "2.56", "2.71", "2.88"],
  ])("the one-sided critical values for n = %d are %s, %s and %s as printed", (n, ...printed) => {
    for (const [index, alpha] of [0.05, 0.025, 0.01].entries()) {
      const value = printed[index] ?? "";
      expect(Math.abs(grubbsCritical(n, alpha) - Number(value))).toBeLessThanOrEqual(halfLastDigit(value) + halfLastDigit("0.000"));
    }
  });

  // Register of published misprints: LibreTexts, appendix 7.
  test("for n = 7 it is 2.020, not the misprinted 2.202 (two digits changed places)", () => {
    expectPrinted(grubbsCritical(7, 0.025), "2.020");
    expect(Math.abs(grubbsCritical(7, 0.025) - 2.202)).toBeGreaterThan(0.1);
  });

  test("for n = 15 at 1 % it is 2.806, not the misprinted 2.755 (the line for n = 14 repeated)", () => {
    expectPrinted(grubbsCritical(15, 0.005), "2.806");
    expectPrinted(grubbsCritical(14, 0.005), "2.755");
    expect(Math.abs(grubbsCritical(15, 0.005) - 2.755)).toBeGreaterThan(0.01);
  });

  test("ten assay values: mean 99.54, s 1.369, G 2.805 for the smallest (USP <1010>)", () => {
    const assay = [100.3, 100.2, 100.1, 100.0, 100.0, 100.0, 99.9, 99.7, 99.5, 95.7];
    const { mean, deviation } = sampleMoments(assay);
    expectPrinted(mean, "99.54");
    expectPrinted(deviation, "1.369");
    const { statistic, suspect } = grubbsAssessment(rows(assay), TWO_SIDED);
    expectPrinted(statistic, "2.805");
    expect(suspect).toEqual({ row: 10, value: 95.7 });
  });
});

// Masses of nine coins, g: Harvey, Modern Analytical Chemistry, example 4.22.
const PENNIES = [3.067, 3.049, 3.039, 2.514, 3.048, 3.079, 3.094, 3.109, 3.102];

describe("DIXON", () => {
  // The state laboratory's copy of Dean and Dixon's table ("Q90"), which is one-sided at 5 %; it turns to r11 at n = 8.
  test.each([
    [3, "0.941"],
    [4, "0.765"],
    [5, "0.642"],
    [7, "0.507"],
  ])("the one-sided critical value for n = %d at 0.05 is %s as tabulated", (n, printed) => {
    expect(Math.abs(dixonCritical(n, 0.05) - Number(printed))).toBeLessThanOrEqual(2 * halfLastDigit(printed));
  });

  // That table's third decimals stray by up to two units.
  test("for n = 6 it is 0.562, where the old table has 0.560", () => {
    expectPrinted(dixonCritical(6, 0.05), "0.5624");
  });

  // Rorabacher, Anal. Chem. 63 (1991) 139, from memory; n = 9 in Harvey's example 4.22, n = 10 in its solutions manual.
  test.each([
    [3, "0.970"],
    [4, "0.829"],
    [5, "0.710"],
    [6, "0.625"],
    [7, "0.568"],
    [8, "0.526"],
    [9, "0.493"],
    [10, "0.466"],
  ])("the two-sided critical value for n = %d at 0.05 is %s as tabulated, to within the 0.003 by which old tables stray", (n, printed) => {
    expect(Math.abs(dixonCritical(n, 0.025) - Number(printed))).toBeLessThanOrEqual(0.003);
  });

  // Integrated apart from this program, to four digits.
  test.each([
    [3, "0.9702", "0.9413"],
    [4, "0.8298", "0.7655"],
    [5, "0.7102", "0.6424"],
    [6, "0.6275", "0.5624"],
    [7, "0.5690", "0.5073"],
    [8, "0.5256", "0.4671"],
    [9, "0.4922", "0.4363"],
    [10, "0.4656", "0.4119"],
  ])("the critical values for n = %d at 0.05 are %s two-sided and %s one-sided", (n, two, one) => {
    expectPrinted(dixonCritical(n, 0.025), two);
    expectPrinted(dixonCritical(n, 0.05), one);
  });

  test("nine coins: Q = 0.882, above 0.493, so the light one is an outlier (Harvey, example 4.22)", () => {
    const { statistic, suspect, isOutlier, critical } = dixonAssessment(rows(PENNIES), TWO_SIDED);
    expectPrinted(statistic, "0.882");
    expect(Math.abs(critical - 0.493)).toBeLessThan(0.001);
    expect([suspect.row, isOutlier]).toEqual([4, true]);
  });

  test("GRUBBS agrees on the same coins: G = 2.643 (worked out by hand)", () => {
    const { statistic, suspect, isOutlier } = grubbsAssessment(rows(PENNIES), TWO_SIDED);
    expectPrinted(statistic, "2.643");
    expect([suspect.row, isOutlier]).toEqual([4, true]);
  });
});
