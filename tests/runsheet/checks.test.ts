// Each check of a run sheet on plain values, finding by finding and at its boundary, without a spreadsheet.
import { verdictOf } from "../../src/runsheet/checks/Check";
import { CHECKS } from "../../src/runsheet/checks/everyCheck";
import { is } from "../../src/runsheet/expressions/Expression";
import { RUN_KINDS, type RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import type { CheckName } from "../../src/runsheet/sheet/layout";
import { VALUE } from "../../src/runsheet/sheet/sampleCells";
import { namedCells, type NamedCell } from "./namedCells";
import { plainRun, type PlainRun } from "./plainRun";
import { workOut, type Plain } from "./workOut";

type Given = Partial<Record<NamedCell, Plain>> & { readonly grams?: readonly (number | null)[] };

function filled(given: Given, options: Partial<RunSheetOptions>): PlainRun {
  const run = plainRun(options);
  const { grams = [], ...named } = given;
  run.weigh(grams);
  for (const [name, content] of Object.entries(named)) run.type(namedCells(run)[name as NamedCell](), content);
  return run;
}

/** What a check finds on the first sample. */
function finding(check: CheckName, given: Given, options: Partial<RunSheetOptions> = {}): Plain {
  const run = filled(given, options);
  const row = run.sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
  return run.value(run.first.working(row));
}

test("a check is silent until it can judge, then says the first thing it finds, or that all is in order", () => {
  const check = (silent: boolean, ...holds: boolean[]): Plain =>
    workOut(
      verdictOf({
        silentWhile: is(1, "=", silent ? 1 : 0),
        steps: [
          { when: is(1, "=", holds[0] ? 1 : 0), says: "one" },
          { skipWhile: is(1, "=", holds[1] ? 1 : 0), steps: [{ unless: is(1, "=", holds[2] ? 1 : 0), says: "two" }] },
          { when: is(1, "=", holds[3] ? 1 : 0), says: "three" },
        ],
      }),
      () => null,
    );
  expect(check(true, true, true, true, true)).toBe("");
  expect(check(false, true, false, true, false)).toBe("one");
  expect(check(false, false, false, false, true)).toBe("two");
  expect(check(false, false, true, false, true)).toBe("three");
  expect(check(false, false, true, false, false)).toBe("in order");
  expect(check(false, false, false, true, false)).toBe("in order");
});

test("every check that a sheet has a line for looks at something there", () => {
  for (const kind of RUN_KINDS)
    for (const panZeros of [false, true])
      for (const temperatures of [false, true]) {
        const { sheet, first } = plainRun({ kind, panZeros, temperatures });
        expect(sheet.rows.checks.lines.map(({ check }) => check)).toEqual([
          ...["tare", "order", "gain", "steady", "balance", "range", "material"],
          ...(kind === "drying" ? [] : ["closure"]),
          ...(panZeros ? ["zeros"] : []),
          ...(temperatures ? ["warmth"] : []),
        ]);
        expect(sheet.rows.checks.lines.filter(({ check }) => CHECKS[check](sheet, first) === undefined)).toEqual([]);
      }
});

type Row = readonly [given: Given, says: string, options?: Partial<RunSheetOptions>];

const drying = { kind: "drying" } as const;
const charring = { kind: "charring" } as const;

const FINDINGS: Readonly<Record<CheckName, readonly Row[]>> = {
  tare: [
    [{}, ""],
    [{ vessel: 25 }, ""],
    [{ grams: [65.2] }, "empty vessel not weighed"],
    [{ vessel: 25, grams: [null, 60] }, ""],
    [{ vessel: 25, grams: [25] }, "moist weighing not above the empty vessel: typed without the vessel, or cells swapped"],
    [{ vessel: 25, grams: [40.2] }, "in order"],
    [{ vessel: 25, grams: [24.9] }, "moist weighing not above the empty vessel: typed without the vessel, or cells swapped"],
    [{ vessel: 25, grams: [25.01] }, "moist weighing barely above the empty vessel: wrong vessel, or cells swapped"],
    // 0.25 g in 25 g: one part in a hundred
    [{ vessel: 25, grams: [25.25] }, "in order"],
    [{ vessel: 25, grams: [25.249] }, "moist weighing barely above the empty vessel: wrong vessel, or cells swapped"],
  ],
  order: [
    [{ vessel: 25, moist: 65.2 }, ""],
    [{ vessel: 25, moist: 65.2, dry: 51.21 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21 }, "in order", drying],
    [{ vessel: 25, moist: 65.2, dry: 65.2 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 65.21 }, "dry above moist"],
    [{ vessel: 25, moist: 65.2, dry: 25 }, "dry sample not above the empty vessel"],
    [{ vessel: 25, moist: 65.2, dry: 25.01 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 51.21 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 51.22 }, "char above the dry sample"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 51.22 }, "char above the dry sample", charring],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 25 }, "in order", charring],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 24.99 }, "char below the empty vessel"],
    // Ash is looked at only once the char is weighed.
    [{ vessel: 25, moist: 65.2, dry: 51.21, ash: 60 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 32.53, ash: 32.53 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 32.53, ash: 32.54 }, "ash above char"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 32.53, ash: 25 }, "in order"],
    [{ vessel: 25, moist: 65.2, dry: 51.21, char: 32.53, ash: 24.99 }, "ash below the empty vessel"],
  ],
  gain: [
    [{ vessel: 25, grams: [60] }, ""],
    [{ vessel: 25, grams: [60, 50], u: "" }, ""],
    [{ vessel: 25, grams: [60, 50] }, "in order"],
    // 2 sqrt 2 s + d = 2.8384 g with u = 1 g and d = 0.01 g, whose rounding takes nothing visible from s
    [{ vessel: 20, grams: [60, 50, 52.8384], u: 1 }, "in order"],
    [{ vessel: 20, grams: [60, 50, 52.8385], u: 1 }, "weigh-in 3 is heavier than the one before: damp taken up, a draught, or swapped cells"],
    // By rounding alone two steps of 0.01 g mean nothing, since zero and load may each stand on a border.
    [{ vessel: 20, grams: [60, 50, 50.02], u: 0.01 / Math.sqrt(6) }, "in order"],
    [
      { vessel: 20, grams: [60, 50, 50.03], u: 0.01 / Math.sqrt(6) },
      "weigh-in 3 is heavier than the one before: damp taken up, a draught, or swapped cells",
    ],
    [{ vessel: 20, grams: [60, 63, 70], u: 1 }, "weigh-in 3 is heavier than the one before: damp taken up, a draught, or swapped cells"],
    [{ vessel: 20, grams: [60, 63, 62], u: 1 }, "weigh-in 2 is heavier than the one before: damp taken up, a draught, or swapped cells"],
    [
      { vessel: 20, grams: [60, 50, 49, 48, 47, 46, 45, 55], u: 1 },
      "weigh-in 8 is heavier than the one before: damp taken up, a draught, or swapped cells",
    ],
  ],
  steady: [
    [{ vessel: 25, grams: [65.2] }, ""],
    [{ vessel: 25, grams: [65.2, 55.31] }, "not steady yet"],
    [{ vessel: 25, grams: [65.2, 55.31], char: 30 }, "charred before it was shown steady"],
    [{ vessel: 25, grams: [65.2, 55.31, 55.31] }, "in order"],
    [{ vessel: 25, grams: [65.2, 55.31, 55.31], char: 30 }, "in order"],
    [{ vessel: 25, grams: [65.2, 55.31, 55.35] }, "not shown steady: gain"],
    [{ vessel: 25, grams: [65.2, 55.31, 5.12] }, "see the weigh-in table", drying],
    [{ vessel: 25, grams: [65.2, 55.3], limit: null }, "not shown steady: run details missing"],
  ],
  balance: [
    [{ grams: [27], vessel: 25, wanted: null }, ""],
    [{ grams: [27] }, ""],
    [{ grams: [25], vessel: 25 }, ""],
    // Loss not known: 2 u sqrt 2 / U = 2 * 0.0040825 * 1.414214 / 0.005 = 2.3094 g
    [{ grams: [27.3], vessel: 25 }, "too coarse for the wanted uncertainty: weigh out 2.4 g or more of moist sample"],
    [{ grams: [27.31], vessel: 25 }, "in order"],
    // u = 1 g, U = 0.05: 2 sqrt 2 / 0.05 = 56.57 g with no loss; w = 0.5: 2 sqrt 1.5 / 0.05 = 48.99 g
    [{ grams: [80], vessel: 25, u: 1, wanted: 0.05 }, "too coarse for the wanted uncertainty: weigh out 57 g or more of moist sample"],
    [{ grams: [80], vessel: 25, u: 1, wanted: 0.05, moistureWet: 0.5 }, "in order"],
    [
      { grams: [73.98], vessel: 25, u: 1, wanted: 0.05, moistureWet: 0.5 },
      "too coarse for the wanted uncertainty: weigh out 49 g or more of moist sample",
    ],
    // w = 0.7 of the dry sample: 2 sqrt(0.09 + 1 + 0.49) / 0.05 = 50.28 g
    [{ grams: [90], vessel: 25, dry: 75, u: 1, wanted: 0.05 }, "in order"],
    [
      { grams: [90], vessel: 25, dry: 75, volatile: 0.7, u: 1, wanted: 0.05 },
      "too coarse for the wanted uncertainty: weigh out 51 g or more of dry sample",
    ],
    [{ grams: [90], vessel: 25, dry: 75.29, volatile: 0.7, u: 1, wanted: 0.05 }, "in order"],
    [{ grams: [90], vessel: 25, dry: 75, u: 1, wanted: 0.05 }, "in order", drying],
  ],
  range: [
    [{}, ""],
    [{ moistureWet: 0.3 }, "in order"],
    [{ moistureWet: 0 }, "in order"],
    [{ charYield: 0.3 }, "in order"],
    [{ charYield: 0 }, "no char yield at all: check the weighings"],
    // Shown with one decimal of a percent; a hundredth of that is none.
    [{ charYield: 0.00004 }, "no char yield at all: check the weighings"],
    [{ moistureWet: 0.3, charYield: 0.3, ashShare: 0 }, "no ash at all: check the weighings"],
    [{ moistureWet: 0.3, charYield: 0.3, ashShare: 0.02 }, "in order"],
    [{ moistureWet: 0.7 }, "in order"],
    [{ moistureWet: 0.3, charYield: 0 }, "no char yield at all: check the weighings", charring],
    [{ moistureWet: 0.3 }, "in order", drying],
  ],
  material: [
    [{ material: "tinned steel" }, ""],
    [{ oven: 105 }, ""],
    [{ material: "tinned steel", oven: 230 }, "in order"],
    [{ material: "tinned steel", oven: 231 }, "set to 231 °C, above the 230 °C that tinned steel stands: change vessel or programme"],
    [{ material: "tinned steel", oven: 105, kilnSet: 450 }, "set to 450 °C, above the 230 °C that tinned steel stands: change vessel or programme"],
    [
      { material: "mild steel", oven: 105, kilnSet: 450, furnaceSet: 451 },
      "set to 451 °C, above the 450 °C that mild steel stands: change vessel or programme",
    ],
    [{ material: "mild steel", furnaceSet: 450 }, "in order"],
    [{ material: "unobtainium", oven: 105 }, "this material is not in the list at the foot of the sheet"],
    // The last of the list.
    [{ material: "graphite", kilnSet: 400 }, "in order"],
    [{ material: "graphite", kilnSet: 401 }, "set to 401 °C, above the 400 °C that graphite stands: change vessel or programme"],
  ],
  closure: [
    [{ vessel: 25, dry: 35, formula: "C6H10O5" }, ""],
    [{ vessel: 25, dry: 35, char: 28 }, ""],
    [{ vessel: 25, dry: 35, char: 28, carbon: 0.5 }, ""],
    [{ vessel: 25, dry: 35, char: 28, carbon: 0.5, hydrogen: 0.399 }, "fractions and ash add up to 89.9 % so far: the comparison waits for 90 %"],
    [
      { vessel: 25, dry: 35, char: 28, carbon: 0.5, hydrogen: 0.399 },
      "fractions and ash add up to 89.9 % so far: the comparison waits for 90 %",
      charring,
    ],
    [
      { vessel: 25, dry: 35, char: 28, ash: 25.1, carbon: 0.5, hydrogen: 0.06, oxygen: 0.3 },
      "fractions and ash add up to 87 % so far: the comparison waits for 90 %",
    ],
    [
      { vessel: 25, dry: 35, char: 28, carbon: 0.4, hydrogen: 0.06, oxygen: 0.3, nitrogen: 0.02, sulfur: 0.01 },
      "fractions and ash add up to 79 % so far: the comparison waits for 90 %",
    ],
    // 1 - 0.44 - 0.06 - 0.46 - 0.01 = 0.03, of which the 3 % allowed are not more
    [{ vessel: 25, dry: 35, char: 28, ash: 25.1, carbon: 0.44, hydrogen: 0.06, oxygen: 0.461 }, "in order"],
    [
      { vessel: 25, dry: 35, char: 28, ash: 25.1, carbon: 0.44, hydrogen: 0.06, oxygen: 0.458 },
      "analysis and ash leave 3 % of the dry sample unexplained",
    ],
    [
      { vessel: 25, dry: 35, char: 28, ash: 25.1, carbon: 0.44, hydrogen: 0.06, oxygen: 0.43 },
      "analysis and ash leave 6 % of the dry sample unexplained",
    ],
    [{ vessel: 25, dry: 35, char: 28, formula: "C6H10O5" }, "in order"],
    [{ vessel: 25, dry: 35, char: 28, formula: "C6H10O5", carbon: 0.4 }, "see the comparison with open burning"],
    // Pinned masses of the comparison, readability 0.01 g
    [
      { vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20, massOut: 20.01, notCovered: 0, dryMass: 10 },
      "what goes in and what comes out differ by more than a display step",
    ],
    [{ vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20, massOut: 20.009, notCovered: 0, dryMass: 10 }, "in order"],
    [
      { vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20.02, massOut: 20, notCovered: 0, dryMass: 10 },
      "what goes in and what comes out differ by more than a display step",
    ],
    [{ vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20, massOut: 20, notCovered: 0.3, dryMass: 10 }, "in order"],
    [
      { vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20, massOut: 20, notCovered: 0.301, dryMass: 10 },
      "analysis and ash leave 3 % of the dry sample unexplained",
    ],
    [
      { vessel: 25, dry: 35, char: 28, formula: "C", massIn: 20, massOut: 20, notCovered: -0.5, dryMass: 10 },
      "analysis and ash leave -5 % of the dry sample unexplained",
    ],
    [{ vessel: 25, dry: 35, char: 28, formula: "C6H10O5", readability: null }, ""],
  ],
  zeros: [
    [{}, "", { panZeros: true }],
    [{ zeroBefore1: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ zeroAfter2: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ zeroBefore1: 0, zeroAfter1: 0 }, "in order", { panZeros: true }],
    // One of each, but of two weighings
    [{ zeroBefore1: 0, zeroAfter2: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ vesselZeroBefore: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ vesselZeroBefore: 0, vesselZeroAfter: 0.01 }, "in order", { panZeros: true }],
    [{ charZeroAfter: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ ashZeroBefore: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true }],
    [{ charZeroBefore: 0, charZeroAfter: 0, ashZeroBefore: 0, ashZeroAfter: 0 }, "in order", { panZeros: true }],
    [{ vesselZeroBefore: 0 }, "one of the two zeros is missing: that weighing is not corrected", { panZeros: true, ...drying }],
  ],
  warmth: [
    [{ room1: 20 }, "", { temperatures: true }],
    [{ room1: 20, warmth1: 25, readability: null }, "", { temperatures: true }],
    // A tenth of 0.01 g is 1 mg: 0.00019 g/°C * 5.2632 °C
    [{ room1: 20, warmth1: 25.26 }, "in order", { temperatures: true }],
    [
      { room1: 20, warmth1: 25.27 },
      "weigh-in 1 was 5 °C above the room and reads light: this vessel by an unknown amount; the published case, a 17 g porcelain crucible, by up to 1 mg",
      { temperatures: true },
    ],
    [
      { room1: 20, warmth1: 26, room2: 20, warmth2: 50 },
      "weigh-in 2 was 30 °C above the room and reads light: this vessel by an unknown amount; the published case, a 17 g porcelain crucible, by up to 5.7 mg",
      { temperatures: true },
    ],
    [{ room1: 20, warmth1: 14.74 }, "in order", { temperatures: true }],
    [{ room1: 20, warmth1: 14.73 }, "weighed colder than the room: it reads heavy, and damp settles on it", { temperatures: true }],
  ],
};

describe.each(Object.entries(FINDINGS))("The check %s", (check, rows) => {
  it.each(rows.map(([given, says, options = {}]) => [given, says, options] as const))("of %j says: %s", (given, says, options) => {
    expect(finding(check as CheckName, given, options)).toBe(says);
  });
});

// What TYPICALRANGE says is its own affair; which share it is asked about, and to how many figures, is the sheet's.
it.each([
  [{ moistureWet: 0.825, charYield: 0, ashShare: 0 }, /^outside: moisture of 0\.825, wet basis, is above /],
  [{ moistureWet: 0.7, charYield: 0.90004, ashShare: 0 }, /^outside: char yield of 0\.9, dry/],
  [{ moistureWet: 0.3, charYield: 0.3, ashShare: 0.6 }, /^outside: ash of 0\.6, dry, is above /],
  [{ ashShare: 0.00006 }, /^outside: ash of 0\.0001, dry, is below /],
] as const)("The check range of %j names the first share that the literature does not report", (given, says) => {
  expect(finding("range", given)).toMatch(says);
});

describe("The line of a check", () => {
  const line = (...findings: string[]): Plain => {
    const run = plainRun({ replicates: findings.length });
    const { row } = run.sheet.rows.checks.lines[1] ?? { row: 0 };
    for (const [index, found] of findings.entries()) run.type(run.sheet.samples[index]?.working(row) ?? run.first.dry, found);
    return run.value({ kind: "cell", row, column: VALUE, fixed: "nothing" });
  };

  it.each([
    [["dry above moist"], "dry above moist"],
    [["", ""], ""],
    [["in order", ""], "in order"],
    [["", "in order"], "in order"],
    [["in order", "in order"], "in order"],
    [["dry above moist", "in order"], "Sample 1: dry above moist"],
    [["in order", "ash above char", ""], "Sample 2: ash above char"],
    [["in order", "", "ash above char"], "Sample 3: ash above char"],
    [["dry above moist", "ash above char", "", "char below the empty vessel"], "Sample 1: dry above moist; also sample 2; also sample 4"],
    [["in order", "ash above char", "in order", "", "", "dry above moist"], "Sample 2: ash above char; also sample 6"],
  ])("of %j is %j", (findings, said) => {
    expect(line(...findings)).toBe(said);
  });

  it("ends before the source of a typical range, which stands in full at the side", () => {
    const run = filled({ moistureWet: 0.825 }, { kind: "drying" });
    const row = run.sheet.rows.checks.lines.find(({ check }) => check === "range")?.row ?? 0;
    expect(run.value({ kind: "cell", row, column: VALUE, fixed: "nothing" })).toBe(
      "outside: moisture of 0.825, wet basis, is above the 0 to 0.7 of untreated plant matter",
    );
    expect(run.value(run.first.working(row))).toContain(" (common practice, no source)");
  });
});
