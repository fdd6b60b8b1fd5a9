import type { Answer } from "../../src/cells/CellProblem";
import { dryingEndFunction } from "../../src/functions/drying/dryingEndFunction";
import { tableIn } from "./call";

const table = (inside: string): Answer[][] => tableIn(`=RETORT.DRYING.END(${inside})`);
const shown = (inside: string, label: string): Answer => table(inside).find(([name]) => name === label)?.[1] as Answer;
const verdict = (inside: string): Answer => shown(inside, "Verdict");
const crossCheck = (inside: string): Answer => shown(inside, "Cross-check");

const HALVING = "{0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}";
const PREDICTION = "A prediction, not the dry weight: that is what you weigh once it is constant.";
const TAIL = "These weighings cannot rule out a slower tail, with which the end may be as low as";
const FEW = "Few weighings carry the curve, so go by the 95 % uncertainty.";

test("DRYING.END always spills fourteen rows of label, value and unit", () => {
  for (const inside of [HALVING, `${HALVING}, , 0.01`, "{0; 25; 60; 90; 130}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.1"]) {
    expect(table(inside).map((row) => row.length)).toEqual(new Array(14).fill(3));
  }
});

test.each([
  [
    "ahead of the end",
    `${HALVING}, , 0.001`,
    "Not constant yet: about 0.1 g of water still in it. About 4 more weighings, 30 min apart, until 0.001 (of last) is met.",
  ],
  [
    "one weighing short",
    '{0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001, 0.05, "absolute"',
    "Not constant yet: about 0.1 g of water still in it. About one more weighing, 30 min apart, until 0.05 (absolute) is met.",
  ],
  [
    "constant already",
    "{0; 30; 60; 90; 120; 150; 180; 210; 240}, {10; 9.2; 8.8; 8.6; 8.5; 8.45; 8.425; 8.413; 8.406}, , 0.001",
    "Constant at the last weighing by 0.001 (of last), with about 0.0062 g of water still to go by the curve.",
  ],
  [
    "on a balance too coarse",
    `${HALVING}, , 0.01`,
    "Not constant yet: about 0.1 g of water still in it. By then 0.001 (of last) is below two display steps, which this balance cannot decide.",
  ],
  [
    "weighed far too often",
    '{0; 5; 10; 15; 20; 25; 30; 35; 40; 45; 50; 55; 60; 65}, {10.000000000; 9.902458849; 9.809674836; 9.721415953; 9.637461506; 9.557601566; 9.481636441; 9.409376179; 9.340640092; 9.275256303; 9.213061319; 9.153899621; 9.097623272; 9.044091554}, , , 0.00000001, "of initial"',
    "Not constant yet: about 1 g of water still in it, and the interval is too short to reach 1e-8 (of initial). Weigh less often.",
  ],
])("DRYING.END says in words where a run stands: %s", (_name, inside, words) => {
  const said = String(verdict(inside));
  expect(said.startsWith(words)).toBe(true);
  expect(said.endsWith(PREDICTION)).toBe(true);
});

test("DRYING.END warns that few weighings carry the curve up to two degrees of freedom, and not above", () => {
  expect(verdict(`${HALVING}, , 0.001`)).toContain(FEW);
  expect(verdict("{0; 30; 60; 90; 120; 150}, {10; 9.2; 8.8; 8.6; 8.5; 8.45}, , 0.001")).not.toContain(FEW);
});

test("DRYING.END warns when the weighings scatter more than the balance explains", () => {
  const ragged = "{0; 30; 60; 90; 120; 150}, {10; 9.23; 8.77; 8.62; 8.49; 8.46}, , 0.001";
  expect(verdict(ragged)).toContain("The weighings scatter by 0.028 g about the curve, more than the balance explains: the end is in doubt.");
  expect(verdict("{0; 30; 60; 90; 120; 150}, {10; 9.23; 8.77; 8.62; 8.49; 8.46}, , 0.02")).not.toContain("in doubt");
  expect(verdict("{0; 30; 60; 90; 120; 150}, {10; 9.23; 8.77; 8.62; 8.49; 8.46}, , 0.001, , , , 0.02")).not.toContain("in doubt");
});

test.each([
  ["agrees", `${HALVING}, , 0.001`, "The three-point extrapolation agrees within the 95 % uncertainties."],
  [
    "needs equal intervals",
    "{0; 20; 55; 75; 120}, {10; 9.408; 8.849; 8.683; 8.5}, , 0.001",
    "No three-point extrapolation: no three weighings that end with the last have equal intervals.",
  ],
  [
    "is silent where the balance blurs the bend",
    "{0; 10; 40; 90; 120; 150}, {10; 9.67; 9.035; 8.6; 8.5; 8.45}, , 0.02",
    "No three-point extrapolation: bend inside the balance's noise.",
  ],
  [
    "speaks up where it points elsewhere",
    "{0; 10; 20; 30; 40; 50; 60; 70; 80; 90; 100; 110; 120; 130; 140; 150; 160; 170; 180; 190; 200; 210; 220; 230; 240}, {10.0; 9.846; 9.704; 9.573; 9.452; 9.341; 9.238; 9.142; 9.055; 8.974; 8.899; 8.83; 8.766; 8.707; 8.683; 8.602; 8.556; 8.513; 8.474; 8.437; 8.404; 8.373; 8.344; 8.318; 8.293}, , 0.001",
    "The three-point extrapolation is 0.098 g off, more than the 95 % uncertainties explain: weigh on before relying on either.",
  ],
])("DRYING.END's cross-check by three points %s", (_name, inside, words) => {
  expect(crossCheck(inside)).toBe(words);
});

test("DRYING.END leaves the three-point cell empty, not 0, where there is no extrapolation", () => {
  expect(shown("{0; 20; 55; 75; 120}, {10; 9.408; 8.849; 8.683; 8.5}, , 0.001", "Three-point extrapolation")).toBe("");
});

test("DRYING.END leaves the count of weighings empty, not 0, where the balance cannot decide", () => {
  expect(shown(`${HALVING}, , 0.01`, "More weighings until constant")).toBe("");
});

test("DRYING.END leaves out the constant-rate beginning and says how many weighings carry the curve", () => {
  // 60 min at 0.0369684 g/min, then 1.6 g of water that halves every 30 min.
  const inside = "{0; 30; 60; 90; 120; 150; 180; 210; 240}, {12.218; 11.109; 10; 9.2; 8.8; 8.6; 8.5; 8.45; 8.425}, , 0.001";
  const rows = table(inside);
  expect(rows[9]).toEqual(["Weighings on the falling rate", 6, "of 9"]);
  expect(rows[0]?.[1]).toBeCloseTo(8.4, 3);
});

test("DRYING.END reads rows as it reads columns", () => {
  expect(table("{0; 30; 60; 90; 120}, {10; 9.2; 8.8; 8.6; 8.5}, , 0.001")).toEqual(table(`${HALVING}, , 0.001`));
});

test("DRYING.END works its answer out with the curve at every weighing it used", () => {
  const read = {
    times: { values: [0, 30, 60, 90, 120], rows: 5 },
    weights: { values: [35, 34.2, 33.8, 33.6, 33.5], rows: 5 },
    vessel: 25,
    readability: 0.001,
  };
  expect(dryingEndFunction.working?.(read)).toEqual([
    "falling rate: weighings 1 to 5 of 5",
    "curve: 8.4 + 1.6 * exp(-0.02310491 * (t - 0)) g, t in min",
    "weighing 1, 0 min: 10 g, on the curve 10 g",
    "weighing 2, 30 min: 9.2 g, on the curve 9.2 g",
    "weighing 3, 60 min: 8.8 g, on the curve 8.8 g",
    "weighing 4, 90 min: 8.6 g, on the curve 8.6 g",
    "weighing 5, 120 min: 8.5 g, on the curve 8.5 g",
    "scatter = 0 g with 5 - 3 = 2 to spare",
    "predicted final sample = 8.4 g",
    "its 95 % uncertainty by this curve alone: 0.001213635 g; standard 0.0006192127 g",
    expect.stringMatching(/^by every curve that the weighings allow, down to 8\.36\d+ g: 0\.03\d+ g; standard 0\.02\d+ g$/),
    "The three-point extrapolation agrees within the 95 % uncertainties.",
    `Not constant yet: about 0.1 g of water still in it. About 4 more weighings, 30 min apart, until 0.001 (of last) is met. ${TAIL} 8.361 g. ${FEW} ${PREDICTION}`,
  ]);
});
