import { everyFunction } from "../../src/functions/catalogue";
import { nameIn, tableIn } from "./call";

const OUTLIER = (statistic: string): string[] => [
  "Quantity",
  "Results, n",
  "Suspect",
  "Row of the suspect in values",
  statistic,
  "Critical value, two-sided, alpha 0.05",
  "Verdict",
];

const CP = "stated average absolute error 1.45 %; the sample lies inside its range.";
const PARIKH = "stated average absolute error 3.74 %; the sample lies inside its range.";
const NET =
  "Net at constant pressure, of the dry sample; ISO 18125 form, from memory, with no range of its own: its error is that of higherDry; 0 at a moisture of 0.884.";

/** The headings and the row labels of every table, which formulas of a saved workbook count on: a typo or a changed order shows here. */
const labelled: readonly (readonly [cell: string, headings: readonly unknown[], labels: readonly string[]])[] = [
  ['=RETORT.ATOMS("H2O")', ["Symbol", "Count", "Mass [g/mol]", "Mass fraction"], ["Symbol", "H", "O"]],
  ['=RETORT.BURN.PRODUCTS("CH4")', ["Product", "mol per mol fuel", "g per g fuel"], ["Product", "CO2", "H2O", "In: fuel + oxygen", "Out: products"]],
  [
    '=RETORT.BURN.COMPARE(25, 35, 28, 25.125, "C6H10O5")',
    [
      "Dry sample, two ways",
      "Charred without air [g]",
      "Charred without air [g per g dry]",
      "Burned in the open [g]",
      "Burned in the open [g per g dry]",
    ],
    [
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
      "The nitrogen that comes with the air is not counted among the gases.",
    ],
  ],
  ["=RETORT.CONSTANTWEIGHT.STEPS({10; 9.2})", ["Weighing", "Sample (g)", "Change (g)", "Limit (g)", "Verdict"], ["Weighing"]],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {35; 34.2; 33.8; 33.6; 33.5}, 25, 0.001)",
    ["Predicted final sample", 8.4, "g"],
    [
      "Predicted final sample",
      "its standard uncertainty",
      "its 95 % uncertainty, plus or minus",
      "Water still in the sample, by the curve",
      "its standard uncertainty",
      "Rate constant",
      "its standard uncertainty",
      "Time in which the water halves",
      "More weighings until constant",
      "Weighings on the falling rate",
      "Scatter about the curve",
      "Three-point extrapolation",
      "Cross-check",
      "Verdict",
    ],
  ],
  [
    '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {35; 34.2; 33.81; 33.6; 33.51; 33.45}, "Page", 25)',
    ["Quantity", "Value", "Standard error", "Unit"],
    ["Quantity", "k", "n", "Final sample, fitted", "Residual scatter s", "Weighings", "Degrees of freedom", "Model: Page", "Moisture ratio"],
  ],
  [
    '=RETORT.PROXIMATE("tared", 1, 0.5, 0.25, 0.125)',
    ["Share", "As received", "Dry"],
    ["Share", "Moisture", "Volatile matter", "Fixed carbon", "Ash", "Sum"],
  ],
  [
    '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4")',
    ["Hydrate", "Value"],
    ["Hydrate", "Water lost, share of the hydrate", "Water per formula, n", "its standard uncertainty", "Nearest", "Verdict"],
  ],
  [
    '=RETORT.DECOMPOSITION.STEPS("CaMg(CO3)2")',
    ["Step", "Leaves", "Loss of the original", "Loss of the step's start", "Left of the original", "Temperature reported"],
    ["Step", "1: CaMg(CO3)2 → CaCO3 + MgO", "2: CaCO3 + MgO → CaO + MgO"],
  ],
  [
    '=RETORT.PRODUCT.LEDGER(200, 0.125, 50, 75, "", 0.05)',
    ["Ledger", "Mass [g]", "g per g dry feed"],
    [
      "Ledger",
      "Feed as weighed",
      "of it water",
      "Dry feed",
      "Char",
      "Liquids caught",
      "of them water",
      "Water formed",
      "Liquids less feed water",
      "Gas, by difference: holds every leak",
      "Products together",
      "Unaccounted",
      "its standard uncertainty",
      "Verdict",
    ],
  ],
  [
    "=RETORT.VAPOUR.COMPOSITION(0.5, 0.06, 0.42, 0.8, 0.04, 0.12, 0.3)",
    ["Per g of each", "Dry feed", "Char", "Vapour"],
    [
      "Per g of each",
      "Carbon",
      "Hydrogen",
      "Oxygen",
      "Not covered: ash, nitrogen, sulfur, error",
      "Amount [g per g dry feed]",
      "O2 for its clean burning [g/g]",
      "Air for it [g/g]",
      "Higher heating value [MJ/kg]",
      "Share of the feed's energy",
      "Note",
    ],
  ],
  [
    "=RETORT.REPLICATES({10.1; 10.3; 10.2; 10.6}, 0.1)",
    ["Quantity", "Value"],
    [
      "Quantity",
      "Results, n",
      "Mean",
      "Median",
      "Standard deviation, s",
      "Relative standard deviation, s / |mean|",
      "Repeatability limit, r = 2.8 repeatabilitySd",
      "Range, largest - smallest",
      "Critical range, 95 %, f(n) repeatabilitySd",
      "Verdict",
    ],
  ],
  ["=RETORT.GRUBBS({1; 2; 9})", ["Quantity", "Value"], OUTLIER("G = |suspect - mean| / s")],
  ["=RETORT.DIXON({1; 2; 9})", ["Quantity", "Value"], OUTLIER("Q = gap / range (r10)")],
  [
    "=RETORT.HEATINGRATE({0; 10; 20}, {20; 50; 80})",
    ["Quantity", "Value", "Unit"],
    [
      "Quantity",
      "Rate",
      "its standard uncertainty",
      "its 95 % uncertainty, plus or minus",
      "Readings, n",
      "Scatter about the line",
      "Rate of the first half",
      "Rate of the second half",
      "Deviation from the set rate",
      "Verdict",
    ],
  ],
  ["=RETORT.ATOMICRATIO(0.9, 0.03, 0.03)", ["Ratio", "Value"], ["Ratio", "H/C", "O/C", "H/Corg", "O/Corg"]],
  [
    "=RETORT.ROOM.PPM(1, 28.01, 30, 0.5)",
    ["Quantity", "Value", "Unit"],
    [
      "Quantity",
      "Mean in the room, steady",
      "Mean in the room after the minutes given",
      "By mass, steady or else after the minutes",
      "Time to fall to a tenth once the gas has ended",
      "Mixing",
      "Limits of carbon monoxide",
      "Limits of methanol",
      "Limits of carbon dioxide",
      "Rules",
    ],
  ],
  ["=RETORT.HEATINGVALUE.HIGHER(0.5, 0.06, 0.44)", [19.9752], [`Channiwala-Parikh: ${CP}`]],
  ["=RETORT.HEATINGVALUE.PROXIMATE(0.2, 0.79, 0.01)", [19.380300000000002], [`Parikh and others: ${PARIKH}`]],
  ["=RETORT.HEATINGVALUE.NET(20, 0.06, 0.44)", [18.6916], [NET]],
  [
    '=RETORT.COMPARE.GROUPS({1; 2; 4; 6}, {"a"; "a"; "b"; "b"})',
    ["Group", "n", "Mean", "Standard deviation, s", ""],
    [
      "Group",
      "a",
      "b",
      "Test",
      "Welch, spreads not taken as equal",
      "One-way, spreads taken as equal",
      "Pair, first less second",
      "a - b",
      "Verdict",
    ],
  ],
];

test.each(labelled)("%s is headed %j and labelled %j", (cell, headings, labels) => {
  const table = tableIn(cell);
  expect(table[0]).toEqual(headings);
  expect(table.map(([label]) => label).filter((label) => typeof label === "string")).toEqual(labels);
});

test("every function that gives a table is among them", () => {
  const tables = everyFunction.filter(({ examples }) => Array.isArray(examples[0]?.gives)).map(({ name }) => name);
  expect(labelled.map(([cell]) => nameIn(cell))).toEqual(tables);
});
