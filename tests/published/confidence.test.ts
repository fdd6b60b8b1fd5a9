import { changeVerdict } from "../../src/confidence/changeVerdict";
import { pharmacopoeiaMinimum } from "../../src/confidence/smallestSample";
import { propagated } from "../confidence/propagated";
import { inTable, numberIn, tableIn } from "../functions/call";
import { halfLastDigit } from "./halfLastDigit";

const expectPrinted = (ours: number, printed: string): void => {
  expect(Math.abs(ours - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed));
};

// The smallest mass of USP <41>, which run sheets print; no cell function gives it.
test("2000 standard deviations of 0.00015 g are 0.30000 g (USP <41>, the text of its example)", () => {
  expect(pharmacopoeiaMinimum(0.00015).toFixed(5)).toBe("0.30000");
});

test("with readability alone the smallest mass is 820 display steps (a balance maker's page on USP 41)", () => {
  expect(pharmacopoeiaMinimum(0, 1)).toBeCloseTo(820, 9);
});

// Register of published roundings: 0.15 / sqrt(3) was rounded to 0.09 before it was doubled in quadrature.
test("READING.U of 0.15 mg linearity is not the 0.13 mg that Eurachem A2 prints; early rounding makes that", () => {
  expect(Math.abs(numberIn("=RETORT.READING.U(1e-9, , 0.15, TRUE)") - 0.13)).toBeGreaterThan(halfLastDigit("0.13"));
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

// Worked out by hand, in display steps d: sqrt(24 / 6) = 2; u^2 = 1 + 1/6, so sqrt(24 x 7/6) = 5.292, and with the step known
// s^2 = 1 + 1/12, 2 sqrt(2) x 1.0408 + 1 = 3.944.
test.each([
  ["readability alone, each weighing zeroed", "2.000", "=RETORT.READING.U(1, , , TRUE)", undefined],
  ["the same, the step known", "2.000", "=RETORT.READING.U(1, , , TRUE)", 1],
  ["a repeatability of one step as well", "5.292", "=RETORT.READING.U(1, 1, , TRUE)", undefined],
  ["a repeatability of one step, the step known", "3.944", "=RETORT.READING.U(1, 1, , TRUE)", 1],
])("the largest change without significance, k = 2, with %s is %s d", (_, steps, reading, step) => {
  expectPrinted(changeVerdict(1000, 999, numberIn(reading), 2, step).limit, steps);
});

// Register of published misprints: LibreTexts, Analytical Chemistry 2.x, appendix 7.
test.each([
  [7, 0.05, "2.020", "2.202", "two digits changed places"],
  [15, 0.01, "2.806", "2.755", "the line for n = 14 repeated"],
])("GRUBBS for n = %d at %d is %s, not the misprinted %s (%s)", (n, alpha, right, misprinted) => {
  const values = Array.from({ length: n }, (_, index) => index + 1).join("; ");
  const critical = inTable(tableIn(`=RETORT.GRUBBS({${values}}, ${alpha})`), ["Critical value", 1]) as number;
  expectPrinted(critical, right);
  expect(Math.abs(critical - Number(misprinted))).toBeGreaterThan(0.01);
});
