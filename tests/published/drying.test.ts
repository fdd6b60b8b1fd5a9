import { dryingCriteria } from "../../src/drying/constantWeight/dryingCriteria";
import { endOfDrying } from "../../src/drying/end/endOfDrying";
import { column, inTable, tableIn, tableOf } from "../functions/call";

// One worked series, net g, last pair 8.900 and 8.893.
const SERIES = [10, 9.2, 8.95, 8.9, 8.893];
const [SAMPLE, CHANGE, VERDICT] = [1, 2, 4];

test("CONSTANTWEIGHT.STEPS: the last pair of the series changes by 0.079 % of the mass and 0.632 % of the total loss", () => {
  const change = -(inTable(tableOf("CONSTANTWEIGHT.STEPS", column(SERIES)), [5, CHANGE]) as number);
  expect((100 * change) / 8.893).toBeCloseTo(0.0787, 4);
  expect((100 * change) / (10 - 8.893)).toBeCloseTo(0.632, 3);
});

// Definition: 8.950 -> 8.900 g net is 0.562 % (of 8.9 g), but 0.147 % once a 25 g vessel is left in.
test.each([
  ["left in", "=RETORT.CONSTANTWEIGHT.STEPS({33.95; 33.9}, 0.002)", 0.147492625369, 4],
  ["taken off", "=RETORT.CONSTANTWEIGHT.STEPS({33.95; 33.9}, 0.002, , , 25)", 0.562, 3],
])("CONSTANTWEIGHT.STEPS with the vessel %s shows a change of %3$s %% of the sample", (_vessel, cell, percent, decimals) => {
  const last = tableIn(cell).at(-1) ?? [];
  expect((-100 * (last[CHANGE] as number)) / (last[SAMPLE] as number)).toBeCloseTo(percent, decimals);
});

test.each(dryingCriteria.map((known) => [known.standard, known] as const))("the limit of %s is one that CONSTANTWEIGHT takes", (_name, known) => {
  const times = SERIES.map((_, index) => index * (known.intervalMinutes ?? 30));
  const rest = [known.limit, known.criterion, column(times), null, 0.00001, known.intervalMinutes ?? null];
  expect(inTable(tableOf("CONSTANTWEIGHT.STEPS", column(SERIES), ...rest), [2, VERDICT])).toBe("not yet");
});

// Pomegranate peel in an air-circulation oven, mass lost in per cent, means of 8 replicates: data set "granada" of the R
// package AgroReg (cran/AgroReg, data/granada.RData). Equal numbers of replicates, so the curve nearest to the means is
// the curve nearest to all 64 values. At the start nothing is lost, by the definition of the loss.
const MINUTES = [0, 60, 210, 390, 720, 930, 1410, 1890, 2370];
const LEFT = [0, 18.507, 39.421, 48.01, 65.648, 69.881, 71.219, 71.345, 71.472].map((lost) => Number((100 - lost).toFixed(3)));

test("DRYING.FIT gives the same peel curve by both Page forms, with k of one the n-th power of the other's", () => {
  const [outside, inside] = ["Page", "modified Page"].map((model) => tableOf("DRYING.FIT", column(MINUTES), column(LEFT), model));
  const figure = (table: typeof outside, label: string): number => inTable(table ?? [], [label, 1]) as number;
  expect(figure(outside, "Final sample")).toBeCloseTo(figure(inside, "Final sample"), 6);
  expect(figure(outside, "k")).toBeCloseTo(figure(inside, "k") ** figure(inside, "n"), 9);
});

// The peel does not follow one falling rate exactly (Page's exponent is 0.82), so the scatter is far above the means' own
// digits and the prediction has to say so. 28.528 % were left at 2370 min.
test.each([6, 7, 8])("DRYING.END on the first %s means of the peel covers the mass left at 2370 min, and tells of the misfit", (count) => {
  const table = tableOf("DRYING.END", column(MINUTES.slice(0, count)), column(LEFT.slice(0, count)), null, 0.001);
  const figure = (label: string): unknown => inTable(table, [label, 1]);
  expect(Math.abs((figure("Predicted final sample") as number) - 28.528)).toBeLessThan(figure("its 95 % uncertainty") as number);
  expect(Math.abs((figure("Predicted final sample") as number) - 28.528)).toBeLessThan(1);
  // A hundred display steps, and a step counts for less than its width.
  expect(figure("Scatter about the curve")).toBeGreaterThan(100 * 0.001);
  expect(figure("Verdict")).toContain("more than the balance explains: the end is in doubt.");
});

// Data set "waterloss" (arsilva87/seedwater, described there as hypothetical): water in g over hours, to the nanogram to
// which a cell's sample is taken.
const HOURS = [0, 1 / 12, 2 / 12, 3 / 12, 4 / 12, 5 / 12, 0.5, 0.75, 1, 1.5, 2];
const WATER = [
  0.13999696172, 0.05630950724, 0.04266682476, 0.03004829982, 0.0204798832, 0.01461220992, 0.00604734354, 0.00280339234, 0.00280726152, 0, 0,
].map((grams) => Number(grams.toFixed(9)));

// The table shows ten figures of the scatter, so its square is known to 1e-9.
const TABLE_ROUNDING = 1e-9;

// The reference value of the fit is itself a minimum only to about 2 in a million; the sum of squares says which is lower.
test("DRYING.FIT finds no higher sum of squares for the water-loss data than the published parameters have", () => {
  const squares = (ratio: (t: number) => number): number =>
    HOURS.reduce((sum, t, index) => sum + ((WATER[index] as number) - (WATER[0] as number) * ratio(t)) ** 2, 0);
  const ours = (model: string): number => {
    const table = tableOf("DRYING.FIT", column(HOURS), column(WATER.map((grams) => Number((1 + grams).toFixed(9)))), model, null, 1);
    return (inTable(table, ["Residual scatter", 1]) as number) ** 2 * (inTable(table, ["Degrees of freedom", 1]) as number);
  };
  expect(ours("Newton")).toBeLessThanOrEqual(squares((t) => Math.exp(-7.42282419 * t)) * (1 + TABLE_ROUNDING));
  expect(ours("Page")).toBeLessThanOrEqual(squares((t) => Math.exp(-3.89153623 * t ** 0.6164079)) * (1 + TABLE_ROUNDING));
});

test("the three-point extrapolation of the peel's loss at 930, 1410 and 1890 min ends above the mass that was left at 2370 min", () => {
  const table = tableOf("DRYING.END", column(MINUTES.slice(0, 8)), column(LEFT.slice(0, 8)), null, 0.001);
  expect(inTable(table, ["Three-point extrapolation", 1])).toBeGreaterThan(100 - 71.4718);
});

test("DRYING.END takes the rounding trap into its uncertainty: six readings rounded to 0.01 g cover 20 g, and say how well", () => {
  const table = tableIn("=RETORT.DRYING.END({0; 30; 60; 90; 120; 150}, {25; 23.35; 22.25; 21.51; 21.01; 20.68}, , 0.01)");
  const [final, standard, expanded] = table.map(([, value]) => value) as [number, number, number];
  expect(Math.abs(final - 20)).toBeLessThan(expanded);
  expect(standard).toBeGreaterThan(0.005);
  // What one curve says of itself, and what a slower tail may add while 0.68 g are still to go by that curve: a fifth of the 5 g of water.
  const run = { times: [0, 30, 60, 90, 120, 150], weights: [25, 23.35, 22.25, 21.51, 21.01, 20.68], readability: 0.01 };
  expect(endOfDrying(run).curveUncertainty.standard).toBeLessThan(0.05);
  expect(expanded).toBeLessThan(1);
});
