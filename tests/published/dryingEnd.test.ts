import type { Answer } from "../../src/cells/CellProblem";
import { dryingFit } from "../../src/drying/model/dryingFit";
import { endOfDrying } from "../../src/drying/end/endOfDrying";
import { type DryingModel, dryingModels } from "../../src/drying/model/dryingModels";
import { threePointEnd, type ThreePointEnd } from "../../src/drying/end/threePointEnd";
import { callLiteral } from "../functions/callLiteral";
import { halfLastDigit } from "./halfLastDigit";

const named = (name: string): DryingModel => dryingModels.find((model) => model.name === name) as DryingModel;
const end = (weighings: [number, number, number]): ThreePointEnd => threePointEnd(weighings) as ThreePointEnd;

// Pomegranate peel in an air-circulation oven, mass lost in per cent, means of 8 replicates: data set "granada" of the R
// package AgroReg (cran/AgroReg, data/granada.RData). Equal numbers of replicates, so the curve nearest to the means is
// the curve nearest to all 64 values. At the start nothing is lost, by the definition of the loss.
const MINUTES = [0, 60, 210, 390, 720, 930, 1410, 1890, 2370];
const LOST = [0, 18.507, 39.421, 48.01, 65.648, 69.881, 71.219, 71.345, 71.472];
const peel = MINUTES.map((minutes, i) => ({ minutes, grams: 100 - (LOST[i] as number) }));

// Least squares on all 64 values, recomputed independently: Newton ends at 71.368 % with k = 0.003506 1/min; the Page
// form (k t)^n at 72.919 % with k = 0.003384 1/min, n = 0.822.
test.each([
  ["Newton", "71.368", ["0.003506"]],
  ["modified Page", "72.919", ["0.003384", "0.822"]],
])("DRYING.FIT by %s ends the pomegranate peel at %s %% lost, with parameters %j", (name, lost, printed) => {
  const fit = dryingFit(peel, named(name));
  expect(Math.abs(100 - fit.final - Number(lost))).toBeLessThanOrEqual(halfLastDigit(lost));
  for (const [j, digits] of printed.entries())
    expect(Math.abs((fit.parameters[j] as number) - Number(digits))).toBeLessThanOrEqual(halfLastDigit(digits));
});

test("DRYING.FIT gives the same peel curve by both Page forms, with k of one the n-th power of the other's", () => {
  const [outside, inside] = [dryingFit(peel, named("Page")), dryingFit(peel, named("modified Page"))];
  expect(outside.final).toBeCloseTo(inside.final, 6);
  expect(outside.parameters[0]).toBeCloseTo((inside.parameters[0] as number) ** (inside.parameters[1] as number), 9);
});

// The peel does not follow one falling rate exactly (Page's exponent is 0.82), so the scatter is far above the means' own
// digits and the prediction has to say so. 28.528 % were left at 2370 min.
test.each([6, 7, 8])("DRYING.END on the first %s means of the peel covers the mass left at 2370 min, and tells of the misfit", (count) => {
  const weights = peel.slice(0, count).map(({ grams }) => Number(grams.toFixed(3)));
  const { fit, uncertainty, excess } = endOfDrying({ times: MINUTES.slice(0, count), weights, readability: 0.001 });
  expect(Math.abs(fit.final - 28.528)).toBeLessThan(uncertainty.expanded);
  expect(Math.abs(fit.final - 28.528)).toBeLessThan(1);
  expect(excess).toBeGreaterThan(100);
});

// Data set "waterloss" (arsilva87/seedwater, described there as hypothetical): water in g over hours. MR = w / w0, so the
// dry sample is 0. Least squares recomputed independently, tolerance 0.002.
const HOURS = [0, 1 / 12, 2 / 12, 3 / 12, 4 / 12, 5 / 12, 0.5, 0.75, 1, 1.5, 2];
const WATER = [
  0.13999696172, 0.05630950724, 0.04266682476, 0.03004829982, 0.0204798832, 0.01461220992, 0.00604734354, 0.00280339234, 0.00280726152, 0, 0,
];
const waterLoss = HOURS.map((minutes, i) => ({ minutes, grams: WATER[i] as number }));

test("DRYING.FIT by Newton gives k = 7.42282419 per hour for the water-loss data, by Page k = 3.89153623 and n = 0.6164079", () => {
  expect(Math.abs((dryingFit(waterLoss, named("Newton"), 0).parameters[0] as number) - 7.42282419)).toBeLessThan(0.002);
  const [k, n] = dryingFit(waterLoss, named("Page"), 0).parameters as [number, number];
  expect(Math.abs(k - 3.89153623)).toBeLessThan(0.002);
  expect(Math.abs(n - 0.6164079)).toBeLessThan(0.002);
});

// The reference value above is itself a minimum only to about 2 in a million; the sum of squares says which is lower.
test("DRYING.FIT finds no higher sum of squares for the water-loss data than the published parameters have", () => {
  const squares = (ratio: (t: number) => number): number =>
    waterLoss.reduce((sum, { minutes, grams }) => sum + (grams - 0.13999696172 * ratio(minutes)) ** 2, 0);
  const ours = (name: string): number => {
    const fit = dryingFit(waterLoss, named(name), 0);
    return fit.scatter ** 2 * fit.degrees;
  };
  expect(ours("Newton")).toBeLessThanOrEqual(squares((t) => Math.exp(-7.42282419 * t)));
  expect(ours("Page")).toBeLessThanOrEqual(squares((t) => Math.exp(-3.89153623 * t ** 0.6164079)));
});

// The peel's means at 930, 1410 and 1890 min; the mean at 2370 min was 71.4718 %, above the predicted end.
test("the three-point extrapolation of the peel's loss at 930, 1410 and 1890 min is 71.3586 %, below what was lost later", () => {
  const lost = 100 - end([100 - 69.8813, 100 - 71.2191, 100 - 71.3454]).final;
  expect(Math.abs(lost - 71.3585921)).toBeLessThan(0.0005);
  expect(lost).toBeLessThan(71.4718);
});

// Exact for a first-order curve, 20 + 5 exp(-0.8 t): weighings at 0, 0.5 and 1 h.
const EXACT: [number, number, number] = [25, 23.351600230178196, 22.24664482058611];

test("the three-point extrapolation of an exact first-order curve is its end, 20 g, and its rate is 0.8 per hour", () => {
  const { final, ratio } = end(EXACT);
  expect(Math.abs(final - 20)).toBeLessThan(1e-9);
  expect(Math.abs(-Math.log(ratio) / 0.5 - 0.8)).toBeLessThan(1e-9);
});

// The rounding trap: the same weighings on a balance of 10 mg point 50 mg too high.
test("the three-point extrapolation of the same weighings rounded to 0.01 g is 20.05 g", () => {
  expect(Math.abs(end([25, 23.35, 22.25]).final - 20.05)).toBeLessThan(1e-6);
});

test("DRYING.END takes the rounding trap into its uncertainty: six readings rounded to 0.01 g cover 20 g, and say how well", () => {
  const table = callLiteral("=RETORT.DRYING.END({0; 30; 60; 90; 120; 150}, {25; 23.35; 22.25; 21.51; 21.01; 20.68}, , 0.01)") as Answer[][];
  const [final, standard, expanded] = table.map(([, value]) => value) as [number, number, number];
  expect(Math.abs(final - 20)).toBeLessThan(expanded);
  expect(standard).toBeGreaterThan(0.005);
  expect(standard).toBeLessThan(0.05);
});
