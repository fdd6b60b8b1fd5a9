import { burning } from "../../src/functions/burning";
import { CellProblem } from "../../src/cells/CellProblem";
import { answerOf, column, numberOf, tableOf, workingOf } from "./call";

test("OXYGENDEMAND(formula) of a column answers row by row, blank rows empty and a bad row alone in error", () => {
  const answer = answerOf("OXYGENDEMAND", column(["CH4", 0, "XeF2", "C6H10O5"])) as unknown[][];
  expect(answer[0]?.[0]).toBe(numberOf("OXYGENDEMAND", "CH4"));
  expect(answer[1]?.[0]).toBe("");
  expect(answer[2]?.[0]).toBeInstanceOf(CellProblem);
  expect(answer[3]?.[0]).toBe(numberOf("OXYGENDEMAND", "C6H10O5"));
});

test("OXYGENDEMAND(formula) gives 0 for what has already burned", () => {
  expect(numberOf("OXYGENDEMAND", "CaCO3")).toBe(0);
  expect(numberOf("OXYGENDEMAND", "H2O")).toBe(0);
});

test("OXYGENDEMAND(formula) counts an isotope as its element and weighs it as itself", () => {
  expect(numberOf("OXYGENDEMAND", "C6D6")).toBeCloseTo((7.5 * 31.998) / (6 * 12.011 + 6 * 2.014101778), 9);
});

test("OXYGENDEMAND(formula) says when the formula carries more oxygen than it needs", () => {
  expect(numberOf("OXYGENDEMAND", "NH4NO3")).toBeLessThan(0);
  expect(workingOf("OXYGENDEMAND", { formula: "NH4NO3" })).toEqual([
    "nitrogen ends as N2",
    "O2 per mol = N 2 × 0 + H 4 × 0.25 + O 3 × -0.5 = -0.5 mol",
    "oxygen demand = -0.5 × 31.998 / 80.043 = -0.1998801 g O2 per g",
    "The formula carries more oxygen than it needs: burning takes up none and the rest is given off.",
  ]);
});

test("OXYGENDEMAND(formula) works its answer out with the numbers put in", () => {
  expect(workingOf("OXYGENDEMAND", { formula: "C6H10O5" })).toEqual([
    "O2 per mol = C 6 × 1 + H 10 × 0.25 + O 5 × -0.5 = 6 mol",
    "oxygen demand = 6 × 31.998 / 162.141 = 1.184081 g O2 per g",
  ]);
});

test("OXYGENDEMAND(formula) shows halogen that leaves as the element as its own step", () => {
  expect(workingOf("OXYGENDEMAND", { formula: "CHCl3" })).toEqual([
    "O2 per mol = C 1 × 1 + H 1 × 0.25 + Cl 3 × -0.25 = 0.5 mol",
    "with halogen that leaves as X2 = 0.5 + 0.5 = 1 mol",
    "oxygen demand = 1 × 31.998 / 119.369 = 0.2680595 g O2 per g",
  ]);
});

test.each([
  ["NH3", undefined, "Nitrogen ends as in the water trade but sulfur as in burning: for the water trade throughout, give sulfurTo as H2SO4."],
  [
    undefined,
    "H2SO4",
    "Sulfur ends as in the water trade but nitrogen as in burning: for the water trade throughout, give nitrogenTo as NH3 or HNO3.",
  ],
])("OXYGENDEMAND(C3H7NO2S, %s, %s) says that it mixes burning and the water trade", (nitrogenTo, sulfurTo, said) => {
  expect(workingOf("OXYGENDEMAND", { formula: "C3H7NO2S", nitrogenTo, sulfurTo })?.[2]).toBe(said);
});

test.each([
  ["C3H7NO2S", undefined, undefined],
  ["C3H7NO2S", "NH3", "H2SO4"],
  ["C2H5NO2", "NH3", undefined],
])("OXYGENDEMAND(%s, %s, %s) mixes nothing and says nothing of it", (formula, nitrogenTo, sulfurTo) => {
  expect(workingOf("OXYGENDEMAND", { formula, nitrogenTo, sulfurTo })?.join(" ")).not.toContain("trade");
});

test("OXYGENDEMAND(formula) passes on how an ambiguous formula was read", () => {
  expect(workingOf("OXYGENDEMAND", { formula: "CaC2O4.H2O" })?.[0]).toContain("full stop at character 7");
});

test("OXYGENDEMAND.ULTIMATE(carbon, hydrogen, oxygen) takes ranges, a row of blanks staying empty", () => {
  const answer = answerOf("OXYGENDEMAND.ULTIMATE", column([0.4877, 0, 0.848]), column([0.0613, 0, 0.152]), column([0.4069, 0, 0])) as unknown[][];
  expect(answer.map(([cell]) => cell)).toEqual([
    numberOf("OXYGENDEMAND.ULTIMATE", 0.4877, 0.0613, 0.4069),
    "",
    numberOf("OXYGENDEMAND.ULTIMATE", 0.848, 0.152, 0),
  ]);
});

test("OXYGENDEMAND.ULTIMATE(carbon, hydrogen, oxygen, nitrogen, sulfur, chlorine) works out only what is given", () => {
  expect(workingOf("OXYGENDEMAND.ULTIMATE", { carbon: 0.4877, hydrogen: 0.0613, oxygen: 0.4069 })).toEqual([
    "oxygen demand = 2.664058 × 0.4877 + 7.936012 × 0.0613 - 0.4069 = 1.378839 g O2 per g",
  ]);
  expect(
    workingOf("OXYGENDEMAND.ULTIMATE", { carbon: 0.384, hydrogen: 0.048, oxygen: 0, nitrogen: undefined, sulfur: 0.001, chlorine: 0.567 }),
  ).toEqual(["oxygen demand = 2.664058 × 0.384 + max(0, 7.936012 × 0.048 - 0.2256559 × 0.567) + 0.9980661 × 0.001 - 0 = 1.276978 g O2 per g"]);
});

test("OXYGENDEMAND.ULTIMATE lets chlorine take no more hydrogen than there is", () => {
  // Carbon tetrachloride by mass: C 0.0781, Cl 0.9219.
  expect(numberOf("OXYGENDEMAND.ULTIMATE", 0.0781, 0, 0, 0, 0, 0.9219)).toBeCloseTo((0.0781 * 31.998) / 12.011, 12);
});

test("AIRDEMAND(oxygen) takes 0.2314 of oxygen when the second cell is left out or blank", () => {
  expect(numberOf("AIRDEMAND", 1.184)).toBe(1.184 / 0.2314);
  expect(numberOf("AIRDEMAND", 1.184, 0)).toBe(1.184 / 0.2314);
  expect(workingOf("AIRDEMAND", { oxygen: 1.184 })).toEqual(["air demand = 1.184 / 0.2314 = 5.116681 g air per g"]);
});

test("BURN.EQUATION(formula) keeps the formula as typed, bracketed where a number before it would run into its own", () => {
  expect(answerOf("BURN.EQUATION", " CH4(g) ")).toBe("CH4(g) + 2 O2 → CO2 + 2 H2O");
  expect(answerOf("BURN.EQUATION", "2C8H18")).toBe("2C8H18 + 25 O2 → 16 CO2 + 18 H2O");
  expect(answerOf("BURN.EQUATION", "3C2H2")).toBe("2 (3C2H2) + 15 O2 → 12 CO2 + 6 H2O");
});

test("BURN.EQUATION(formula) of a column gives one reaction a row", () => {
  expect(answerOf("BURN.EQUATION", column(["CH4", "C3H8"]))).toEqual([["CH4 + 2 O2 → CO2 + 2 H2O"], ["C3H8 + 5 O2 → 3 CO2 + 4 H2O"]]);
});

test("BURN.PRODUCTS(formula, excessAir) lists the oxygen and nitrogen of the air, and what goes in equals what comes out", () => {
  const table = tableOf("BURN.PRODUCTS", "CH4", 0.15);
  expect(table.map(([label]) => label)).toEqual([
    "Product",
    "CO2",
    "H2O",
    "O2 left over",
    "N2 of the air, with argon",
    "In: fuel + air",
    "Out: products",
  ]);
  const [massIn, massOut] = table.slice(-2).map((row) => row[2] as number) as [number, number];
  expect(massIn).toBeCloseTo(1 + (1.15 * 3.98902948) / 0.2314, 6);
  expect(massOut).toBeCloseTo(massIn, 12);
});

test("BURN.PRODUCTS(formula, 0) reckons with just the air needed, so a blank cell counts as none in excess", () => {
  expect(tableOf("BURN.PRODUCTS", "CH4", 0)[3]).toEqual(["O2 left over", 0, 0]);
});

test("BURN.PRODUCTS works the closure out with the numbers put in", () => {
  expect(workingOf("BURN.PRODUCTS", { formula: "CH4" })).toEqual([
    "in = 1 + 3.989029 = 4.989029 g per g fuel",
    "out = 2.74319 + 2.245839 = 4.989029 g per g fuel",
  ]);
});

const LABELS = [
  "Dry sample, two ways",
  "In: dry sample",
  "In: oxygen taken up",
  "In, together",
  "Stays: char, or ash",
  "Leaves: vapours, or burned gases",
  "of these CO2",
  "of these H2O",
  "of these other gases and smoke",
  "Not covered by the analysis",
  "Out, together",
  "Air that brings the oxygen",
];

test.each([
  ["a formula", [25, 35, 28, 25.1, "C6H10O5"]],
  ["a formula without ash", [25, 35, 28, null, "C6H10O5"]],
  ["an analysis", ["tared", 10, 3, 0.1, null, 0.4877, 0.0613, 0.4069, 0.0005]],
  ["an analysis with blank cells for what is left out", [25, 35, 28, 25.1, 0, 0.4877, 0.0613, 0.4069, 0, 0]],
])("BURN.COMPARE of %s has the same thirteen rows by five columns, so a sheet can count on its shape", (_, raw) => {
  const table = tableOf("BURN.COMPARE", ...raw);
  expect(table.map((row) => row.length)).toEqual(Array(13).fill(5));
  expect(table.slice(0, 12).map(([label]) => label)).toEqual(LABELS);
  const row = (label: string): readonly number[] => table.find(([first]) => first === label)?.slice(1) as number[];
  row("In, together").forEach((entry, place) => expect(row("Out, together")[place]).toBeCloseTo(entry, 9));
  expect(row("Stays: char, or ash")[1]).toBeCloseTo(0.3, 12);
  expect(row("Leaves: vapours, or burned gases")[1]).toBeCloseTo(0.7, 12);
});

const note = (...raw: readonly unknown[]): unknown => tableOf("BURN.COMPARE", ...raw).at(-1)?.[0];
const NITROGEN = "The nitrogen that comes with the air is not counted among the gases.";

test("BURN.COMPARE notes an ash that was not weighed, solids of the formula, and an analysis that does not close", () => {
  expect(note(25, 35, 28, 25.1, "C6H10O5")).toBe(NITROGEN);
  expect(note(25, 35, 28, null, "C6H10O5")).toBe(`${NITROGEN} No ash weighed: taken as none.`);
  expect(note(25, 35, 32, null, "CaC2O4·H2O")).toBe(`${NITROGEN} No ash weighed: the solids are those of the formula.`);
  expect(note(25, 35, 28, 25.1, null, 0.4877, 0.0613, 0.4069, 0.0005)).toBe(
    `${NITROGEN} The fractions and ash sum to 0.9664 of the dry sample, outside 0.97 to 1.03: check the analysis.`,
  );
  expect(note(25, 35, 28, 25.2, null, 0.4877, 0.0613, 0.4069, 0.0005)).toBe(NITROGEN);
});

test("BURN.COMPARE works the run out with the numbers put in", () => {
  expect(workingOf("BURN.COMPARE", { vessel: 25, dry: 35, char: 28, ash: 25.125, formula: "C6H10O5" })).toEqual([
    "dry sample = 10 g",
    "left as vapour = 10 - 3 = 7 g",
    "share that left = 7 / 10 = 0.7",
    "burned, in = 10 + 11.6928 oxygen = 21.6928 g",
    "burned, out = 0.125 ash + 16.08189 CO2 + 5.485908 H2O + 0 other + 0 not covered = 21.6928 g",
    NITROGEN,
  ]);
});

test.each(burning)("$name states its source, and a caution that defers to local rules", ({ source, caution, summary }) => {
  expect(source.length).toBeGreaterThan(20);
  expect(caution).toMatch(/Follow your local .*rules; ask a qualified person\.$/);
  expect(summary.length).toBeLessThanOrEqual(250);
});
