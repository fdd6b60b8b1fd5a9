// Salts and minerals worked out by hand, and the sheet's own formulas worked out on plain values, without a spreadsheet. The runs are
// invented: blue crystals of a salts class, and lime burnt for an orchard's whitewash.
import { cell } from "../../src/runsheet/expressions/Expression";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import type { ShareName } from "../../src/runsheet/sheet/layout";
import type { Plain } from "../../src/explanation/runSheet/Plain";
import { seededNormal } from "../numerics/seededNormal";
import { seededUniform } from "../numerics/seededUniform";
import { plainRun, type PlainRun } from "./plainRun";

// Zero and load each rounded to 0.001 g: 0.001 sqrt(2 / 12).
const U = 0.000408248;
const FINE = { kind: "salt", readability: 0.001 } as const;
const LIME = { kind: "salt", formula: "CaCO3", residue: "CaO" } as const;
// g/mol, CIAAW 2021: CuSO4 159.602, with 5 H2O 249.677; CaCO3 100.086, CaO 56.077.
const [ANHYDROUS, WATER] = [159.602, 18.015];

const share = (run: PlainRun, name: ShareName, sample = 1): Plain => run.value(run.sheet.share(name, sample));
const plusMinus = (run: PlainRun, name: ShareName, sample = 1): Plain => run.value(run.sheet.plusMinus(name, sample));
const together = (run: PlainRun, name: ShareName): Plain => run.value(cell(run.sheet.rows.results.shares[name] ?? 0, run.sheet.columns.verdict));
const trust = (run: PlainRun, name: ShareName): Plain => run.value(cell(run.sheet.rows.results.shares[name] ?? 0, CLOCK));

const saltOf = ({ sheet }: PlainRun) => {
  if (sheet.salt === undefined) throw new Error("a run of a salt");
  return sheet.salt;
};
const beside = (run: PlainRun): readonly Plain[] => {
  const { rows } = saltOf(run);
  return [rows.formula, rows.residue, rows.water].map((row) => run.value(run.sheet.columns.reckoned(row, 1)));
};

/** One crucible, as weighed in, and what it weighed after each heating. */
function heated(options: Partial<RunSheetOptions>, vessel: number | string, before: number, after: readonly Plain[]): PlainRun {
  const run = plainRun(options);
  run.vessel(vessel);
  run.weigh([before]);
  run.fire("heating", after);
  return run;
}

describe("A hydrate, worked out by hand", () => {
  const crystals = (after: readonly Plain[] = [23.3, 23.197, 23.196]) => heated({ ...FINE, formula: "CuSO4·5H2O", residue: "CuSO4" }, 20, 25, after);

  it("gives the loss with theory beside it, and claims the one number of waters within the ±", () => {
    const run = crystals();
    // 1.804 of 5.000 g; theory 5 × 18.015 / 249.677 = 0.360766
    expect(share(run, "lossOnHeating")).toBeCloseTo(0.3608, 9);
    expect(share(run, "ofTheory")).toBeCloseTo(0.3608 / ((5 * WATER) / 249.677), 9);
    expect(share(run, "waters")).toBeCloseTo((0.3608 / 0.6392) * (ANHYDROUS / WATER), 5);
    // y = 0.6392: u / 5 sqrt(1 + y^2 + (1 - y)^2) = u × 0.248093, twice
    const off = 2 * U * 0.248093;
    expect(plusMinus(run, "lossOnHeating")).toBeCloseTo(off, 9);
    expect(plusMinus(run, "waters")).toBeCloseTo((off * (ANHYDROUS / WATER)) / 0.6392 ** 2, 7);
    expect(run.head()).toEqual([
      "► Next: weigh the empty vessels again, row 35",
      "36.080 % ± 0.020 % (95 %) lost on heating; CuSO4·5H2O to CuSO4 would lose 36.08 %. 1 sample.",
      "✓ Checks: 10 in order, 3 with nothing to look at yet.",
      "The ± covers the weighings alone (rounding only). Surface water, other substances and spitting count as loss; what had yet to leave does not.",
      // 2 × 0.0044 of all n: 0.9 %, rounded up.
      "n = 5.0007 ± 0.0044 (95 %) H2O per CuSO4: only 5 fits (1 % by chance), as the formula says.",
    ]);
    expect(beside(run)).toEqual(["would lose 36.08 % in all", "CuSO4·5H2O → CuSO4 + 5 H2O", "taken as free of surface water: round 1 is enough"]);
    expect([share(run, "moistureWet"), trust(run, "waters"), together(run, "waters")]).toEqual(["", "✓", "5.0007 ± 0.0044"]);
  });

  it.each<readonly [what: string, options: Partial<RunSheetOptions>, before: number, after: number, says: string]>([
    // 1.6 of 5 g: 0.32 / 0.68 × 159.602 / 18.015 = 4.1691
    [
      "no simple number",
      { formula: "CuSO4·5H2O", residue: "CuSO4" },
      25,
      23.4,
      "no usual hydrate within the ±: look again (all water? other gas?); by the formula it is 5",
    ],
    // 0.93 of 15 g: 0.062 / 0.938 × 136.134 / 18.015 = 0.4995
    ["a half", { formula: "CaSO4·0.5H2O", residue: "CaSO4" }, 35, 34.07, "only 1/2 fits (1 % by chance), as the formula says"],
    // 3CdSO4·8H2O: 8 × 18.015 / (3 × 208.47 + 144.12) = 0.187280; 0.9364 of 5 g rounds to 0.936
    ["thirds, with nothing that says so", { residue: "CdSO4" }, 25, 24.064, "no usual hydrate within the ±: look again (all water? other gas?)"],
    ["thirds, by the formula", { formula: "3CdSO4·8H2O", residue: "CdSO4" }, 25, 24.064, "the formula's 2.67 fits, no usual number otherwise"],
    // Limestone, its gas taken for water: 2.146 of 5 g, 0.4292 / 0.5708 × 56.077 / 18.015 = 2.3406.
    ["another gas as water", { residue: "CaO" }, 25, 22.854, "no usual hydrate within the ±: look again (all water? other gas?)"],
    // 2.147 of 5 g: 0.4294 / 0.5706 × 8.8594 = 6.6671, near 20/3.
    ["a third of many", { residue: "CuSO4" }, 25, 22.853, "no usual hydrate within the ±: look again (all water? other gas?)"],
    // 1.916 of 5 g: 0.3832 / 0.6168 × 8.8594 = 5.5041; halves above 3 1/2 are none that salts take up.
    ["a half of many", { residue: "CuSO4" }, 25, 23.084, "no usual hydrate within the ±: look again (all water? other gas?)"],
    // 0.003 of 5 g: 0.0006 / 0.9994 × 8.8594 = 0.0053, ± 0.004 and more
    ["none", { residue: "CuSO4" }, 25, 24.999, "no water is told from none"],
  ])("claims or does not claim: %s", (_, options, before, after, says) => {
    const run = heated({ ...FINE, ...options }, 20, before, [after, after]);
    expect(String(run.head()[4]).replace(/^n = [^:]*: /, "")).toBe(`${says}.`);
  });

  it("claims nothing where several numbers fit, or many n would by chance", () => {
    const coarse = (readability: number, left: number) => {
      const run = plainRun({ kind: "salt", readability, residue: "CuSO4" });
      run.type(run.sheet.settings.wanted, 0.1);
      run.vessel(20);
      run.weigh([25]);
      run.fire("heating", [20 + left, 20 + left]);
      return run.head()[4];
    };
    // ± 2 u × 1.24 / 5 g = 0.020 is ± 0.44 of a water: of all n 88 % lie so near to a whole one.
    expect(coarse(0.1, 3.2)).toBe(
      "n = 4.98 ± 0.44 (95 %) H2O per CuSO4: 5 is the only one that fits, but 88 % of all n would by chance: no claim yet, weigh more of it.",
    );
    expect(coarse(0.01, 3.196)).toBe("n = 5.001 ± 0.044 (95 %) H2O per CuSO4: only 5 fits (9 % by chance).");
    // 2.3 of 5 g, n = 2.02 ± 0.15 with 0.1 g: 2 alone, but 4 × 0.15 of all n lie so near to a whole or a half.
    expect(coarse(0.05, 4.07)).toMatch(
      /^n = 2\.02 ± 0\.1\d \(95 %\) H2O per CuSO4: 2 is the only one that fits, but \d\d % of all n would by chance: no claim/,
    );
    // 1.7 of 5 g, n = 4.56 ± 0.21: neither whole nor a usual half.
    expect(coarse(0.05, 3.3)).toBe("n = 4.56 ± 0.21 (95 %) H2O per CuSO4: no usual hydrate within the ±: look again (all water? other gas?).");
    // 1.2 of 5 g, n = 2.80 ± 0.33: 2 1/2 and 3.
    expect(coarse(0.1, 3.8)).toContain("several numbers fit: weigh more of it.");
  });

  it("waits with n while more may leave, and says so where more left than there is", () => {
    expect(crystals([23.3]).head().slice(1)).toEqual([
      "So far 34.0 % of the sample was lost; heating is not shown finished.",
      "✓ Checks: 9 in order, 4 with nothing to look at yet.",
      "The ± will cover the weighings; never what else is in it or left with the loss.",
      "By theory 36.08 % is lost: CuSO4·5H2O → CuSO4 + 5 H2O",
    ]);
    // Overheated: to CuO it would lose 68.1 %.
    const run = crystals([22.1, 22.1]);
    expect(run.head().slice(1, 3)).toEqual([
      "▲ 58.0 % lost on heating, more than the 36.08 % of CuSO4·5H2O to CuSO4. See the next line.",
      "▲ 1 of 13 checks: Sample 1: lost 58.00 %, theory 36.08 %. A slip, overheated, a second step, spat, damp, or not this salt?",
    ]);
    expect([trust(run, "lossOnHeating"), trust(run, "ofTheory"), trust(run, "waters")]).toEqual(["✓", "▲ check 10", "▲ check 10"]);
    expect(run.head()[4]).toBe("The comparison with theory waits for the answer above.");
  });

  it("dries surface water off first where it is asked to, and counts none of it", () => {
    const run = plainRun({ ...FINE, formula: "CuSO4·5H2O", residue: "CuSO4" });
    run.type(saltOf(run).water, "dried first");
    run.vessel(20);
    run.weigh([25.4]);
    expect(run.head()[0]).toBe("► Next: round 2 at about 9:30, row 17");
    run.weigh([25.4, 25.1, 25, 25, 25]);
    run.fire("heating", [23.196, 23.196]);
    expect([share(run, "moistureWet"), share(run, "lossOnHeating")]).toEqual([expect.closeTo(0.4 / 5.4, 9), expect.closeTo(0.3608, 9)]);
    expect(beside(run)[2]).toBe("rounds until steady; what left there is not counted");
    run.type(saltOf(run).water, null);
    expect(beside(run)[2]).toBe("say which: as weighed or dried first");
  });
});

describe("A carbonate or hydroxide, worked out by hand", () => {
  it("gives the share of theory, which is a purity or how far it changed", () => {
    // 2.11 of 5.00 g, theory 44.009 / 100.086 = 0.439712
    const run = heated(LIME, 20, 25, [22.9, 22.89]);
    expect(share(run, "ofTheory")).toBeCloseTo(0.422 / 0.439712, 5);
    // y = 0.578: 2 × 0.00408248 / 5 × sqrt(1 + y^2 + (1 - y)^2) = 0.00200810
    expect(plusMinus(run, "ofTheory")).toBeCloseTo(0.0020081 / 0.439712, 6);
    expect([share(run, "waters"), together(run, "ofTheory")]).toEqual(["", "95.97 % ± 0.46 %"]);
    expect(run.head()[4]).toBe(
      "Measured over theory: 95.97 % ± 0.46 % (95 %): its purity if all of it changed, or how far it changed if it was pure.",
    );
    expect(heated(LIME, "tared", 5, [2.81, 2.8]).head()[4]).toBe("Measured over theory: 100.07 % ± 0.43 % (95 %): not told from all of a pure one.");
  });

  it("tells water from other gases by its mass: a hydroxide has an n, a bicarbonate has none", () => {
    // Ca(OH)2 74.092: 1.215 of 5 g is 0.2430, theory 18.015 / 74.092
    expect(heated({ ...FINE, formula: "Ca(OH)2", residue: "CaO" }, 20, 25, [23.784, 23.784]).head()[4]).toMatch(
      /^n = 1\.000\d ± 0\.00\d\d \(95 %\) H2O per CaO: only 1 fits \(\d % by chance\), as the formula says\.$/,
    );
    for (const [formula, residue] of [
      ["NaHCO3", "Na2CO3"],
      ["MgCO3", "MgO"],
      ["CaMg(CO3)2", "CaCO3 + MgO"],
      ["(NH4)2SO4·Na2SO4", "Na2SO4"],
    ] as const)
      // prettier-ignore
      expect([formula, share(heated({ ...FINE, formula, residue }, 20, 25, [24.5, 24.5]), "waters")]).toEqual([formula, ""]);
  });

  it("keeps different materials apart, and gives repeats one answer", () => {
    const two = (samplesAre: "repeats" | "different") => {
      const run = heated({ ...LIME, replicates: 2, samplesAre }, 20, 25, [22.9, 22.9]);
      run.vessel(30.03, 2);
      run.weigh([35.03], 2);
      run.fire("heating", [32.88, 32.88], 2);
      return run.head();
    };
    expect([two("different")[1], two("different")[4]]).toEqual([
      "Lost on heating, of each: 1 42.0 %, 2 43.0 %; weighing ± 0.20 % (95 %) each.",
      "n or the share of theory of each material stands in the results.",
    ]);
    expect(two("repeats")[1]).toBe("? In doubt: 42.5 % ± 6.4 % (95 %) lost on heating; CaCO3 to CaO would lose 43.97 %. Mean of 2 samples.");
  });
});

describe("What is wrong with a salt's formulas or weights is said", () => {
  it.each<readonly [what: string, given: Partial<RunSheetOptions>, finding: string]>([
    [
      "a residue that cannot come from it",
      { formula: "CaCO3", residue: "MgO" },
      "? B12: swapped with B11? Or unread, with more than B11 has, or a metal left out. More: This cell, on L11.",
    ],
    [
      "a formula that is none",
      { formula: "CaCo3", residue: "CaO" },
      "? The formula in B11 cannot be read: look at capitals, brackets, digits, commas. More: This cell, on M11.",
    ],
    ["no residue", { formula: "CaCO3" }, "? B12 is blank: type what stays, and theory can be told."],
    [
      "a residue that is none",
      { residue: "lime" },
      "? The formula in B12 cannot be read: look at capitals, brackets, digits, commas. More: This cell, on M12.",
    ],
    ["nothing that leaves", { formula: "CaO", residue: "CaO" }, "? By B11 and B12 nothing would leave. Put the formulas right."],
  ])("%s", (_, given, finding) => {
    const run = heated({ kind: "salt", ...given }, 20, 25, [22.9, 22.89]);
    expect(run.check("theory")).toEqual(["? doubt", finding]);
    // The loss itself stands on the weighings alone.
    expect(run.head()[1]).toMatch(/^42\.20 % ± 0\.20 % \(95 %\)/);
    expect(run.head()[4]).toMatch(/^The comparison with theory waits: see the check of it, B\d+\.$/);
  });

  it("lime that lost 38.00 of 43.97 %: not all of it changed, or it is impure, and which cannot be told", () => {
    // 1.90 of 5.00 g, heated until nothing more left
    const run = heated(LIME, 20, 25, [23.11, 23.1]);
    expect(run.check("theory")).toEqual([
      "? doubt",
      "? Sample 1: lost 38.00 %, theory 43.97 %: not all changed, or impure; weights cannot tell. Heat on?",
    ]);
    // The loss stands on the weighings; only what is said beside theory is in doubt.
    expect(run.head()[1]).toMatch(/^38\.00 % ± 0\.20 % \(95 %\) lost on heating/);
    expect([trust(run, "lossOnHeating"), trust(run, "ofTheory")]).toEqual(["✓", "? check 10"]);
    expect(run.head()[4]).toMatch(/^Measured over theory: 86\.4\d % .*: its purity if all of it changed, or how far it changed if it was pure\.$/);
    // Not told before it is heated to the end, nor within the ±.
    expect(heated(LIME, 20, 25, [23.1]).check("theory")[0]).toBe("✓ in order");
    // 2.19 g: 43.80 %, ± 0.20 %
    expect(heated(LIME, 20, 25, [22.82, 22.81]).check("theory")).toEqual(["✓ in order", ""]);
    expect(heated(LIME, 20, 25, [22.83, 22.82]).check("theory")[0]).toBe("? doubt");
  });

  it("but not the blank clock beside a salt heated as weighed in, whose time nothing uses", () => {
    const run = heated(LIME, 20, 25, [22.82, 22.81]);
    run.type(cell(run.sheet.rows.drying.first, CLOCK), null);
    expect(run.check("rows")).toEqual(["✓ in order", ""]);
    expect(run.head()[1]).toMatch(/^43\.80 %/);
    run.type(saltOf(run).water, "dried first");
    expect(run.check("rows")[0]).toBe("? doubt");
  });

  it("without any formula the loss is told, and theory asked for", () => {
    const run = heated({ kind: "salt" }, 20, 25, [22.9, 22.89]);
    expect(run.check("theory")).toEqual(["· not yet", ""]);
    expect(run.head()[1]).toBe("42.20 % ± 0.20 % (95 %) of the sample lost on heating; 57.80 % stayed. 1 sample.");
    expect(run.head()[4]).toBe("Give the formula and what stays (rows 11 and 12), and theory is told here.");
  });

  it("a gain, an unfinished heating and a weight below the vessel", () => {
    expect(heated(LIME, 20, 25, [22.9, 22.95]).check("gain")[1]).toBe(
      "? C31 is heavier than the weight before: damp taken up, a draught, or a slip in either. Weigh again, cold.",
    );
    expect(heated(LIME, 20, 25, [24, 23.5, 23.2]).check("heatDone")[1]).toBe(
      "? Heating is not shown finished: fire again and weigh, till two weighings agree within the limit.",
    );
    const below = heated(LIME, 20, 25, [19.5, 19.5]);
    expect(below.check("order")[0]).toBe("▲ wrong");
    expect(share(below, "lossOnHeating")).toBe("withheld");
  });
});

test("the ± 95 % of loss, share of theory and n covers the truth in 95 of 100 runs", () => {
  const RUNS = 1000;
  const [STEP, SCATTER] = [0.001, 0.001];
  const [uniform, normal] = [seededUniform(111), seededNormal(112)];
  const read = (grams: number): number => Math.round((grams + SCATTER * normal() + (uniform() - 0.5) * STEP) / STEP) * STEP;
  const run = plainRun({ ...FINE, weighIns: 3, formula: "CuSO4·5H2O", residue: "CuSO4" });
  run.type(run.sheet.settings.repeatability, SCATTER);
  // Readings that scatter by a step differ by more than two steps now and then; six let nearly every run be steady.
  run.type(run.sheet.settings.limit, 6);
  const inside = { lossOnHeating: 0, ofTheory: 0, waters: 0 };
  for (let done = 0; done < RUNS; done++) {
    const [vessel, grams, n] = [15 + 10 * uniform(), 1 + 2 * uniform(), 4 + uniform()];
    const loss = (n * WATER) / (ANHYDROUS + n * WATER);
    run.vessel(read(vessel));
    run.weigh([read(vessel + grams)]);
    const left = vessel + grams * (1 - loss);
    run.fire("heating", [read(left), read(left)]);
    const truths = { lossOnHeating: loss, ofTheory: loss / ((5 * WATER) / 249.677), waters: n };
    for (const [name, truth] of Object.entries(truths) as [keyof typeof truths, number][]) {
      const [value, off] = [Number(share(run, name)), Number(plusMinus(run, name))];
      if (Math.abs(value - truth) <= off) inside[name] += 1;
    }
  }
  // 1000 runs scatter about 95 % by 0.7 %, three times that.
  for (const count of Object.values(inside)) expect(Math.abs(count / RUNS - 0.95)).toBeLessThan(0.021);
});
