import { runInNewContext } from "node:vm";
import { everyFunction } from "../../../src/functions/catalogue";
import { everyPublished } from "../../published/everyPublished";
import { functionNamed, nameIn, tableIn, workingIn } from "../call";

const cells = [
  ...new Set([...everyFunction.flatMap(({ examples }) => examples.map(({ cell }) => cell)), ...everyPublished.map(({ cell }) => cell)]),
].filter((cell) => functionNamed(nameIn(cell)).working !== undefined);

// What is shown has seven figures, so a result is known to a few units of the seventh figure of the largest term.
const SHOWN = 1e-6;
const ARITHMETIC = /^[\d.e\s+\-x×/()^|]*(?:sqrt\([\d.e\s+\-x×/()^]*)*[\d.e\s+\-x×/()^|]*$/;

/** The value of plain arithmetic as it is written there, or undefined of anything else. */
function valueOf(text: string): number | undefined {
  if (!/\d/.test(text) || !ARITHMETIC.test(text)) return undefined;
  const code = text
    .replace(/\|([^|]+)\|/g, "Math.abs($1)")
    .replace(/[x×]/g, "*")
    .replace(/(\d|\)) \(/g, "$1*(")
    .replace(/\^/g, "**")
    .replace(/sqrt/g, "Math.sqrt");
  try {
    return Number(runInNewContext(code));
  } catch {
    return undefined;
  }
}

interface Equation {
  readonly line: string;
  readonly left: number;
  readonly right: number;
  readonly largest: number;
}

/** Each `3.5 / 10 = 0.35` of a line; what stands before the first sign names what is worked out. */
function equationsIn(line: string): Equation[] {
  const sides = line.split(/ = |: (?=\d)/);
  return sides.slice(1).flatMap((side, index) => {
    const before = sides[index] ?? "";
    const left = valueOf(before.slice(Math.max(0, before.search(/sqrt\(|[\d(|-]/))));
    const right = Number(/^-?\d[\d.]*(?:e-?\d+)?/.exec(side)?.[0]);
    if (left === undefined || Number.isNaN(right) || !/[+\-x×/^|]/.test(before.replace(/^\D*/, ""))) return [];
    const terms = (before.match(/\d[\d.]*(?:e-?\d+)?/g) ?? []).map(Number);
    return [{ line, left, right, largest: Math.max(Math.abs(right), ...(/[+-]/.test(before) ? terms : [])) }];
  });
}

const equations = cells.map((cell) => [cell, (workingIn(cell) ?? []).flatMap(equationsIn)] as const);

test.each(equations.filter(([, found]) => found.length > 0))("the arithmetic that %s shows is right", (_cell, found) => {
  for (const { line, left, right, largest } of found) expect([line, Math.abs(left - right) <= 4 * SHOWN * largest]).toEqual([line, true]);
});

// Words, a table repeated, terms that are named and not put in, a curve's points, a gap beside a range: their lines are pinned one by one.
const WITHOUT_ARITHMETIC = ["FORMULA.CHECK", "BURN.EQUATION", "DRYING.END", "DRYING.FIT", "AIRDENSITY", "DIXON", "TYPICALRANGE"];

test("every other function has working lines of the form `name = arithmetic = result`", () => {
  const followed = new Set(equations.filter(([, found]) => found.length > 0).map(([cell]) => nameIn(cell)));
  expect(everyFunction.map(({ name }) => name).filter((name) => !followed.has(name))).toEqual(WITHOUT_ARITHMETIC);
});

/** Lines that no other test pins. */
const pinned: readonly (readonly [cell: string, lines: readonly string[]])[] = [
  ['=RETORT.ATOMS("H2O")', ["H 2 × 1.008 = 2.016 g/mol", "O 1 × 15.999 = 15.999 g/mol", "sum 18.015 g/mol, weights CIAAW 2021"]],
  ["=RETORT.VOLATILEFRACTION(25, 35, 28)", ["loss on heating = 35 - 28 = 7 g", "sample = 35 - 25 = 10 g", "volatile fraction = 7 / 10 = 0.7"]],
  ["=RETORT.CHARYIELD(25, 35, 27.5)", ["char = 27.5 - 25 = 2.5 g", "dry sample = 35 - 25 = 10 g", "char yield = 2.5 / 10 = 0.25"]],
  [
    "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.002, , , 25)",
    [
      "constant when the change is at most 0.002 (of last)",
      "weighing 1: 10 g, first",
      "weighing 2: 9.2 - 10 = -0.8 g against 1; allowed 0.0184 g: not yet",
      "weighing 3: 8.95 - 9.2 = -0.25 g against 2; allowed 0.0179 g: not yet",
      "weighing 4: 8.9 - 8.95 = -0.05 g against 3; allowed 0.0178 g: not yet",
    ],
  ],
  [
    "=RETORT.DRYING.END({0; 30; 60; 90; 120}, {35; 34.2; 33.8; 33.6; 33.5}, 25, 0.001)",
    [
      "falling rate: weighings 1 to 5 of 5",
      "curve: 8.4 + 1.6 * exp(-0.02310491 * (t - 0)) g, t in min",
      "weighing 1, 0 min: 10 g, on the curve 10 g",
      "weighing 2, 30 min: 9.2 g, on the curve 9.2 g",
    ],
  ],
  [
    '=RETORT.BURN.COMPARE("tared", 1, 0.2, , , 0.4877, 0.0613, 0.4069, 0.0005)',
    [
      "dry sample = 1 g",
      "left as vapour = 1 - 0.2 = 0.8 g",
      "share that left = 0.8 / 1 = 0.8",
      "burned, in = 1 + 1.378839 oxygen = 2.378839 g",
      "burned, out = 0 ash + 1.786961 CO2 + 0.5477775 H2O + 0.0005 other + 0.0436 not covered = 2.378839 g",
    ],
  ],
  ["=RETORT.BUOYANCY(2, 2700, 1.16, 8400)", ["mass = 2 x (1 - 1.16 / 8400) / (1 - 1.16 / 2700) = 2.000583 g"]],
  [
    "=RETORT.SAMPLE.MINIMUM(0.01, 0.005, , 3)",
    ["sample = k u sqrt((1 - w)^2 + 1 + w^2) / U = 3 x 0.01 x sqrt((1 - 0)^2 + 1 + 0^2) / 0.005 = 8.485281 g"],
  ],
  [
    "=RETORT.CHANGE.SIGNIFICANT(35, 35.1, 0.01, 3)",
    [
      "change = 35.1 - 35 = 0.1 g",
      "limit = sqrt(12 + the larger of 12 and 2 k^2) u: sqrt(12 + 18) x 0.01 = 0.05477226 g, either way, whatever the display step",
      "level: an unchanged load is called changed in at most 0.27 % of pairs, if u holds the scatter of the weighings",
      "gain: more than the two readings explain",
    ],
  ],
  [
    "=RETORT.REPLICATES({10.1; 10.3; 10.2; 10.6})",
    ["n = 4, mean = 10.3, s (n - 1) = 0.2160247", "r = 2.8 s = 2.8 x 0.2160247 = 0.6048691: two results differ by more in one case of twenty"],
  ],
];

test.each(pinned)("%s is worked out as %j", (cell, lines) => {
  expect(workingIn(cell)?.slice(0, lines.length)).toEqual(lines);
});

test("CONSTANTWEIGHT.STEPS works out the comparisons that CONSTANTWEIGHT works out", () => {
  const inside = '({10; 9.2; 8.95; 8.9; 8.893}, 0.002, "of total loss")';
  expect(workingIn(`=RETORT.CONSTANTWEIGHT.STEPS${inside}`)).toEqual(workingIn(`=RETORT.CONSTANTWEIGHT${inside}`));
});

test("DRYING.FIT repeats the lines of its table", () => {
  const cell = '=RETORT.DRYING.FIT({0; 30; 60; 90; 120; 150}, {35; 34.2; 33.81; 33.6; 33.51; 33.45}, "Newton", 25, 33.39)';
  expect(workingIn(cell)).toEqual(tableIn(cell).map((row) => row.filter((one) => one !== "").join(" | ")));
});
