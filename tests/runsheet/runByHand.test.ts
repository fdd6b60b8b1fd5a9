// Runs worked out by hand, and the sheet's own formulas worked out on plain values, without a spreadsheet.
// The runs are invented: prunings from a community orchard, dried in its oven and charred in its kiln.
import { lossUncertainty } from "../../src/confidence/lossUncertainty";
import { cell } from "../../src/runsheet/expressions/Expression";
import { stripCell } from "../../src/runsheet/formulas/strip";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import { COMPARED, type ShareName } from "../../src/runsheet/sheet/layout";
import { compared } from "../../src/runsheet/formulas/burning";
import { clock, plainRun, type PlainRun } from "./plainRun";
import type { Plain } from "../../src/explanation/runSheet/Plain";

const PLUM = [65.2, 55.31, 52.1, 51.22, 51.21];

/** Plum prunings, one tin: vessel 25.00 g, moist 65.20 g, dry 51.21 g, char 32.90, 32.54, 32.53 g, ash 25.41, 25.40 g. */
function plum(options: Partial<RunSheetOptions> = {}): PlainRun {
  const run = plainRun(options);
  run.vessel(25);
  run.weigh(PLUM);
  if (run.sheet.charring) run.fire("charring", [32.9, 32.54, 32.53]);
  if (run.sheet.ashing) run.fire("ashing", [25.41, 25.4]);
  return run;
}

const share = (run: PlainRun, name: ShareName, sample = 1): Plain => run.value(run.sheet.share(name, sample));
const plusMinus = (run: PlainRun, name: ShareName, sample = 1): Plain => run.value(run.sheet.plusMinus(name, sample));
const together = (run: PlainRun, name: ShareName): Plain => run.value(cell(run.sheet.rows.results.shares[name] ?? 0, run.sheet.columns.verdict));
const trust = (run: PlainRun, name: ShareName): Plain => run.value(cell(run.sheet.rows.results.shares[name] ?? 0, CLOCK));
const says = (run: PlainRun, row: number): Plain => run.value(cell(row, run.sheet.columns.verdict));
const U = 0.01 * Math.sqrt(2 / 12);

describe("A run worked out by hand", () => {
  const run = plum();

  it.each<readonly [ShareName, number, number, string]>([
    // One weighing: u = sqrt(2 / 12) * 0.01 g = 0.00408248 g. A loss w of m g: ± 2 u / m * sqrt((1 - w)^2 + 1 + w^2).
    // (65.20 - 51.21) / (65.20 - 25.00) = 13.99 / 40.20
    ["moistureWet", 0.34801, (2 * 0.00408248 * 1.243464) / 40.2, "34.801 % ± 0.025 %"],
    // 13.99 / 26.21; ± times (1 + U)^2 = 1.533766^2
    ["moistureDry", 0.533766, ((2 * 0.00408248 * 1.243464) / 40.2) * 2.352438, "53.377 % ± 0.059 %"],
    // (51.21 - 32.53) / 26.21 = 18.68 / 26.21, and 7.53 / 26.21
    ["volatile", 0.712705, (2 * 0.00408248 * 1.261138) / 26.21, "71.271 % ± 0.039 %"],
    ["charYield", 0.287295, (2 * 0.00408248 * 1.261138) / 26.21, "28.729 % ± 0.039 %"],
    // (32.53 - 25.40) / (51.21 - 25.40) = 7.13 / 25.81
    ["charYieldAshFree", 0.27625, (2 * 0.00408248 * 1.264966) / 25.81, "27.625 % ± 0.040 %"],
    // 0.40 / 26.21
    ["ash", 0.015261, (2 * 0.00408248 * 1.403546) / 26.21, "1.526 % ± 0.044 %"],
  ])("gives %s with its ± at 95 %", (name, value, off, words) => {
    expect(share(run, name)).toBeCloseTo(value, 5);
    expect(plusMinus(run, name)).toBeCloseTo(off, 8);
    expect(together(run, name)).toBe(words);
    expect(trust(run, name)).toBe("✓");
  });

  it.each<readonly [kind: "drying" | "charring", prints: Readonly<Partial<Record<ShareName, string>>>, answer: string]>([
    // The arithmetic above, on a sheet that ends there: 13.99 / 40.20 and 13.99 / 26.21
    ["drying", { moistureWet: "34.801 % ± 0.025 %", moistureDry: "53.377 % ± 0.059 %" }, "34.801 % ± 0.025 % (95 %)"],
    // 18.68 / 26.21 and 7.53 / 26.21
    ["charring", { volatile: "71.271 % ± 0.039 %", charYield: "28.729 % ± 0.039 %", moistureWet: "34.801 % ± 0.025 %" }, "71.271 % ± 0.039 % (95 %)"],
  ])("of kind %s prints the same shares, and its answer begins with them", (kind, prints, answer) => {
    const own = plum({ kind });
    for (const [name, words] of Object.entries(prints)) expect([name, together(own, name as ShareName)]).toEqual([name, words]);
    expect(own.head()[1]).toContain(answer);
  });

  it("needs no kiln temperature: blank, no share, verdict or check changes", () => {
    // Of a temperature only the check of temperatures tells, which knows the vessel and the oven here.
    const told = (one: PlainRun): PlainRun => {
      one.type(one.sheet.settings.material, "fused quartz");
      one.type(one.sheet.settings.oven, 105);
      return one;
    };
    const noted = told(plum());
    for (const table of noted.sheet.fired)
      for (let { first, last } = table.rows.fire, row = first; row <= last; row++) noted.type(table.fire(row).set, 500);
    const [blank, set] = [told(plum()), noted].map((one) => one.calculated().map(({ value }) => value));
    expect(set).toEqual(blank);
  });

  it("has its ± from LOSSFRACTION.U, twice, where one vessel weighing serves both", () => {
    expect(plusMinus(run, "volatile")).toBeCloseTo(2 * lossUncertainty(25, 51.21, 32.53, U).commonTare, 12);
    const tared = plainRun();
    tared.vessel("tared");
    tared.weigh(PLUM.map((grams) => grams - 25));
    tared.fire("charring", [7.9, 7.54, 7.53]);
    expect(share(tared, "volatile")).toBeCloseTo(0.712705, 6);
    expect(plusMinus(tared, "volatile")).toBeCloseTo(2 * lossUncertainty(0, 26.21, 7.53, U).separateTaring, 12);
  });

  it("says in its head what is next, the answer, the checks and what the ± covers", () => {
    expect(run.head()).toEqual([
      "► Next: weigh the empty vessels again, row 48",
      "71.271 % ± 0.039 % (95 %) of the dry sample left as vapour; 28.729 % stayed. 1 sample.",
      "✓ Checks: 12 in order, 4 with nothing to look at yet.",
      "The ± covers the weighings alone (rounding only), not the scatter of repeats, how the heap was sampled, air, tar or loss yet to come.",
      "Open burning of the same: give the analysis below (rows 88 to 94) and it is told here.",
    ]);
  });

  it("says of each round and each firing what it showed", () => {
    const { drying, charring, ashing } = run.sheet.rows;
    const rounds = Array.from({ length: 9 }, (_, index) => says(run, drying.first + index));
    expect(rounds).toEqual([
      "all in; into the oven",
      "still losing 9.89 g",
      "still losing 3.21 g",
      "still losing 0.88 g",
      "no loss that counts",
      "",
      "",
      "",
      "✓ dry since round 5",
    ]);
    const firings = Array.from({ length: 4 }, (_, index) => says(run, (charring?.first ?? 0) + index));
    // 51.21 - 32.90 = 18.31
    expect(firings).toEqual(["lost 18.31 g: fire again", "lost 0.36 g: fire again", "no loss that counts", "✓ steady since firing 3"]);
    expect([0, 1, 2].map((index) => says(run, (ashing?.first ?? 0) + index))).toEqual([
      "lost 7.12 g: fire again",
      "no loss that counts",
      "✓ steady since firing 2",
    ]);
  });
});

describe("A tin that scales", () => {
  it("is corrected for: 0.05 g of scale moves a char yield from 28.73 to 28.54 %", () => {
    const run = plum({ kind: "charring" });
    expect(share(run, "charYield")).toBeCloseTo(0.287295, 6);
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, 25.05);
    // (32.53 - 25.05) / 26.21 = 7.48 / 26.21
    expect(share(run, "charYield")).toBeCloseTo(0.285387, 6);
    expect(share(run, "volatile")).toBeCloseTo(0.714613, 6);
    expect(share(run, "moistureWet")).toBeCloseTo(0.34801, 5);
    // Dry and char no longer share their vessel weighing: u sqrt(2 (1 + 0.285387^2)) = 0.00408248 * 1.470677 = 0.00600401. Whether it is scale
    // or char left inside is not known: 0.05 / sqrt 3 = 0.0288675. Root of both squared 0.0294853, * 2 / 26.21
    expect(plusMinus(run, "charYield")).toBeCloseTo((2 * 0.0294853) / 26.21, 7);
    expect(says(run, run.sheet.rows.end.vessel ?? 0)).toBe("scale allowed for");
    expect(run.head()[0]).toBe("Run complete: all weighings are in");
    expect(run.head()[1]).toBe("71.46 % ± 0.22 % (95 %) of the dry sample left as vapour; 28.54 % stayed. 1 sample.");
  });

  it("counts for the ash in full, and half for the char before it, which stood in a tin somewhere between", () => {
    const run = plum();
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, 25.05);
    // char (32.53 - 25.025) / 26.21, ash (25.40 - 25.05) / 26.21; without ash (7.505 - 0.35) / (26.21 - 0.35)
    expect(share(run, "charYield")).toBeCloseTo(7.505 / 26.21, 9);
    expect(share(run, "ash")).toBeCloseTo(0.35 / 26.21, 9);
    expect(share(run, "charYieldAshFree")).toBeCloseTo(7.155 / 25.86, 9);
    // y = 0.286341: u^2 2 (1 + y^2) + 0.05^2 / 12 = 3.60652e-5 + 2.08333e-4, root 0.01563314, * 2 / 26.21
    expect(plusMinus(run, "charYield")).toBeCloseTo((2 * 0.01563314) / 26.21, 7);
    // y = 0.013354: 0.00408248 sqrt(2 (1 + y^2)) = 0.00577402; all of 0.05 g taken off, 0.05^2 / 3 = 8.33333e-4: root 0.02943929, * 2 / 26.21
    expect(plusMinus(run, "ash")).toBeCloseTo((2 * 0.02943929) / 26.21, 7);
  });

  it.each<[kind: "charring" | "ashing", again: number]>([
    ["charring", 25.06],
    ["charring", 25.13],
    ["charring", 25.52],
    ["ashing", 25.13],
    ["ashing", 25.3],
  ])("has a ± that reaches from none of the gain to all of it (%s, %s g), so that scale and char left inside are both in it", (kind, again) => {
    const run = plum({ kind });
    const without = share(run, "volatile") as number;
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, again);
    const [value, off] = [share(run, "volatile") as number, plusMinus(run, "volatile") as number];
    const whole = without + (again - 25) / 26.21;
    expect(value - off).toBeLessThan(without);
    expect(value + off).toBeGreaterThan(whole);
  });

  it("by more than scale plausibly is says so beside the box as in the check, and marks the answer", () => {
    for (const [again, words] of [
      [25.13, "scale allowed for"],
      [25.14, "? more than scale"],
      [25.6, "? more than scale"],
      [30, "? more than scale"],
    ] as const) {
      const run = plum({ kind: "charring" });
      run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, again);
      expect([again, says(run, run.sheet.rows.end.vessel ?? 0)]).toEqual([again, words]);
      expect([again, run.check("vesselAgain")[0]]).toEqual([again, words.startsWith("?") ? "? doubt" : "✓ in order"]);
      if (again === 25.14)
        expect(run.head()[1]).toBe("? In doubt: 71.80 % ± 0.62 % (95 %) of the dry sample left as vapour; 28.20 % stayed. 1 sample.");
    }
  });

  it("on a tared balance shows its scale as it is", () => {
    const run = plainRun({ kind: "charring" });
    run.vessel("tared");
    run.weigh([40.2, 26.22, 26.21]);
    run.fire("charring", [7.54, 7.53]);
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, 0.05);
    expect(share(run, "charYield")).toBeCloseTo(7.48 / 26.21, 9);
  });

  it("that is unchanged within what two weighings explain says so", () => {
    const run = plum({ kind: "charring" });
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, 25.01);
    expect(says(run, run.sheet.rows.end.vessel ?? 0)).toBe("vessel unchanged");
    run.type(run.sheet.end?.vessel(1) ?? run.sheet.setup.date, 24.9);
    expect(says(run, run.sheet.rows.end.vessel ?? 0)).toBe("? lighter than before");
  });
});

/** Three tins of plum prunings, as drawn: water 31.1, 31.3, 30.6 %. */
const TINS = [
  { vessel: 41.86, drying: [72.14, 65.92, 63.31, 62.76, 62.72, 62.71], char: [48.02, 47.86, 47.85] },
  { vessel: 42.13, drying: [71.88, 65.8, 63.17, 62.61, 62.58, 62.58], char: [48.12, 47.95, 47.94] },
  { vessel: 41.57, drying: [72.41, 66.31, 63.6, 63.02, 62.98, 62.98], char: [47.84, 47.69, 47.68] },
];

function tins(options: Partial<RunSheetOptions> = {}, count = 3, rounds = 6, firings = 3): PlainRun {
  const run = plainRun({ kind: "charring", weighIns: 6, replicates: 3, ...options });
  run.type(run.sheet.setup.material, "plum prunings");
  TINS.slice(0, count).forEach(({ vessel, drying, char }, index) => {
    run.vessel(vessel, index + 1);
    run.weigh(drying.slice(0, rounds), index + 1);
    run.fire("charring", char.slice(0, firings), index + 1);
  });
  return run;
}

describe("Three replicates", () => {
  it("have a mean with Student's factor: ± 4.303 s / sqrt 3, the scatter being larger than the weighing", () => {
    const run = tins();
    // dry 20.85, 20.45, 21.41; char 5.99, 5.81, 6.11: left 0.712710, 0.715892, 0.714619
    const shares = [1 - 5.99 / 20.85, 1 - 5.81 / 20.45, 1 - 6.11 / 21.41];
    shares.forEach((value, index) => expect(share(run, "volatile", index + 1)).toBeCloseTo(value, 9));
    // mean 0.714407, s = 0.0016018: 4.302653 * 0.0016018 / 1.7320508 = 0.0039791
    expect(together(run, "volatile")).toBe("71.44 % ± 0.40 %");
    expect(run.head()[1]).toBe("71.44 % ± 0.40 % (95 %) of the dry plum prunings left as vapour; 28.56 % stayed. Mean of 3 samples.");
    // 0.003182 apart, weighing ± 2 * 0.00408248 / 20.45 * sqrt(1 + 0.284108^2 + 0.715892^2) = 0.00050479: 6.3 times
    const covers =
      "The ± covers weighing and scatter of 3 samples (range 6 times a weighing ±), not how the heap was sampled, air, tar or loss yet to come.";
    expect(run.head()[3]).toBe(covers);
    // Nine columns are 836 pixels wide, a character of 10 points 5.9 on average: a range of four figures still fits.
    expect(covers.replace("range 6", "range 9999").length * 5.9).toBeLessThan(836);
    const { foot } = run.sheet.rows.results;
    expect(run.value(cell(foot, 0))).toBe(
      "± per sample: the weighings alone (2 u). ± together: the larger of that and the scatter between samples (factor 4.30 for 3).",
    );
  });

  it("that agree better than they can be weighed keep the weighing ± / sqrt 3", () => {
    const run = plainRun({ kind: "drying", replicates: 3 });
    for (const sample of [1, 2, 3]) {
      run.vessel(25, sample);
      run.weigh(PLUM, sample);
    }
    // 2 * 0.00408248 * 1.243464 / 40.2 / sqrt 3 = 0.00014581
    expect(run.value(run.sheet.working.together("moistureWet"))).toBeCloseTo(0.00014581, 8);
    expect(together(run, "moistureWet")).toBe("34.801 % ± 0.015 %");
  });

  it("of two have the factor 12.7", () => {
    const run = tins({ replicates: 2 }, 2);
    // 0.712710 and 0.715892: s = 0.00225042, 12.706205 * 0.00225042 / sqrt 2 = 0.0202193. Yet to dry of sample 1: 0.05 g lost since round 4 and 3.16 g
    // as long before, b = 0.05 + 2.8 * 0.00408248 = 0.061431: 0.061431 / (3.16 / 0.061431 - 1) = 0.001218 g, told as u / 2 = 0.00204124 g, which moves
    // the share by (1 - 0.712710) * 0.00204124 / 20.85 = 0.0000281. Of the other 0.03 g and 3.19 g: 0.000556 g, less than u / 4
    expect(run.value(run.sheet.working.together("volatile"))).toBeCloseTo(0.0202193 + 0.0000281, 6);
  });

  it("that disagree have no common answer; of three one as far from two as this is by chance, and none is named", () => {
    const run = tins();
    run.fire("charring", [49, 48.41, 48.4], 3);
    // sample 3: char 6.83 of 21.41: left 0.680990
    expect(run.head()[1]).toBe("? Samples disagree: 71.3 %, 71.6 %, 68.1 % of the dry weight left as vapour. No common answer.");
    expect(run.head()[2]).toMatch(/^\? 1 of 16 checks: Range 3\.5 %, 6\d\.\d times a weighing ±: no one answer\. Find out why, or take more\.$/);
    expect([together(run, "volatile"), together(run, "charYield"), together(run, "moistureWet")]).toEqual([
      "? no common value",
      "? no common value",
      "30.99 % ± 0.91 %",
    ]);
    expect([trust(run, "volatile"), trust(run, "moistureWet")]).toEqual(["? check 11", "✓"]);
  });

  it("of different materials are kept apart and named", () => {
    const run = tins({ samplesAre: "different" });
    ["plum", "hazel"].forEach((name, index) => run.type(run.sheet.setup.name(index + 1), name));
    expect(run.head()[1]).toBe("Left as vapour, of each when dry: plum 71.3 %, hazel 71.6 %, 3 71.5 %; weighing ± 0.05 % (95 %) each.");
    expect(run.head()[3]).toBe(
      "The ± covers the weighings of each sample (rounding only), not how each heap was sampled, air, tar or loss yet to come.",
    );
    expect(together(run, "volatile")).toBe("kept apart");
  });

  it("give no answer before all are weighed to the end, and count those under way, not those planned", () => {
    const run = tins({}, 2);
    run.vessel(41.57, 3);
    run.weigh([72.41], 3);
    expect(run.head()[1]).toBe("? In doubt: Charred before it was shown dry: no answer on the dry sample.");
    expect(tins({}, 2).head()[1]).toBe(
      "? In doubt: 71.4 % ± 2.0 % (95 %) of the dry plum prunings left as vapour; 28.6 % stayed. Mean of 2 samples.",
    );
  });
});

describe("Repeats are judged by one criterion in every row that has a value together", () => {
  /** Three tins of 26.21 g dry, alike but for what is given. */
  const three = (kind: "ashing" | "charring", moist: readonly number[], ash: readonly number[]): PlainRun => {
    const run = plainRun({ kind, replicates: 3 });
    for (const [index, grams] of moist.entries()) {
      run.vessel(25, index + 1);
      run.weigh([grams, 52.1, 51.22, 51.21], index + 1);
      run.fire("charring", [32.9, 32.54, 32.53], index + 1);
      const last = ash[index];
      if (run.sheet.ashing && last !== undefined) run.fire("ashing", [last + 0.01, last], index + 1);
    }
    return run;
  };

  it("an ash of 5.86 % beside 1.53 and 1.55 %", () => {
    // 0.401, 0.406 and 1.536 g of 26.21 g, as read: 1.53, 1.56 and 5.88 %
    const run = three("ashing", [65.2, 65.2, 65.2], [25.4, 25.41, 26.54]);
    expect(run.check("agree")).toEqual([
      "? doubt",
      expect.stringMatching(/^\? Ash, of dry: the samples lie too far apart for one value \(± 6\.2 % together\)\./),
    ]);
    expect([together(run, "ash"), trust(run, "ash")]).toEqual(["? no common value", "? check 12"]);
    expect([together(run, "volatile"), trust(run, "volatile")]).toEqual(["71.271 % ± 0.023 %", "✓"]);
    expect(run.head()[1]).toMatch(/^\? In doubt: 71\.271 %/);
    expect(run.head()[2]).toMatch(/^\? 1 of 17 checks: Ash, of dry/);
  });

  it("water of 26.45 % beside 34.8 and 34.9 %", () => {
    // 26.21 g dry: moist 40.20, 40.25, 35.64 g
    const run = three("charring", [65.2, 65.25, 60.64], []);
    expect(run.check("agree")[1]).toMatch(/^\? Water, of moist sample: the samples lie too far apart/);
    expect([together(run, "moistureWet"), together(run, "moistureDry")]).toEqual(["? no common value", "? no common value"]);
    expect([trust(run, "moistureWet"), trust(run, "moistureDry"), trust(run, "charYield")]).toEqual(["? check 11", "? check 11", "✓"]);
  });

  it("both bases of the same water, on a sheet that ends with drying", () => {
    const run = plainRun({ kind: "drying", replicates: 2 });
    run.vessel(25.13);
    run.vessel(25.47, 2);
    run.weigh([65.13, 53.13, 53.13]);
    run.weigh([65.47, 54.27, 54.27], 2);
    // 12 and 11.2 of 40 g: 30.00 and 28.00 %
    expect([together(run, "moistureWet"), together(run, "moistureDry")]).toEqual(["? no common value", "? no common value"]);
    expect([trust(run, "moistureWet"), trust(run, "moistureDry")]).toEqual(["? check 7", "? check 7"]);
    expect(run.head()[1]).toBe("? Samples disagree: 30.0 %, 28.0 % of the moist weight was water. No common answer.");
  });

  it("and till somebody says whether they are repeats, the answer asks that, and nothing disagrees", () => {
    const run = plainRun({ kind: "drying", replicates: 2 });
    run.vessel(25);
    run.vessel(25, 2);
    run.weigh([65, 53, 53]);
    run.weigh([65, 53.8, 53.8], 2);
    run.type(run.sheet.setup.samplesAre, null);
    expect(run.head()[1]).toBe("? Repeats or different? Say it in B9. Till then no common answer. Water, of each when moist: 1 30.0 %, 2 28.0 %.");
    expect([together(run, "moistureWet"), together(run, "moistureDry")]).toEqual(["kept apart", "kept apart"]);
    expect(run.check("agree")).toEqual(["? doubt", "? Say in B9 whether the samples are repeats or different."]);
  });

  it("and of stages, a share each", () => {
    const run = plainRun({ kind: "staged", replicates: 2, stages: 2 });
    for (const sample of [1, 2]) {
      run.vessel(20, sample);
      run.weigh([30, 30], sample);
    }
    run.fire("stages", [28, 26]);
    run.fire("stages", [27.8, 26], 2);
    // 20 and 22 %, then 20 and 18 %: 40 % in all of both
    expect(run.check("agree")[1]).toMatch(/^\? 1: stage: the samples lie too far apart/);
    expect([together(run, "stage1"), together(run, "stage2"), together(run, "lostInAll")]).toEqual([
      "? no common value",
      "? no common value",
      expect.stringMatching(/^40\.00/),
    ]);
  });

  it("and a mean of fewer samples than are under way says so", () => {
    const run = plainRun({ kind: "charring", replicates: 3 });
    for (const sample of [1, 2, 3]) {
      run.vessel(40, sample);
      run.weigh([70, sample === 3 ? 60.01 : 60, 60], sample);
      if (sample !== 2) run.fire("charring", [46, 46], sample);
    }
    // 14 of 20 g each
    expect(run.head()[1]).toBe(
      "At least 70.0 % of the dry sample has left as vapour so far; charring is not shown finished. Of 2 of 3 samples only.",
    );
  });

  it("and a share that was emptied counts as typed over, which withholds the answer", () => {
    for (const [firings, name] of [
      [2, "volatile"],
      [0, "moistureWet"],
    ] as const) {
      const run = tins({}, 3, 6, firings);
      run.type(run.sheet.share(name, 2), null);
      expect(run.head()[1]).toBe("▲ Answer withheld: a cell that it is calculated from was typed over. Put right what the next line names.");
    }
  });
});

describe("The head of a sheet as the run goes on", () => {
  it("begins with nothing", () => {
    const run = plainRun({ replicates: 3 });
    expect(run.head().slice(0, 3)).toEqual([
      "► Next: weigh the empty vessels, row 11",
      "No answer yet: nothing has been weighed.",
      "✓ Checks: 1 in order, 16 with nothing to look at yet.",
    ]);
  });

  it("asks for the vessels not yet weighed, then for round 1, and names a half-weighed round", () => {
    const run = plainRun({ replicates: 2 });
    run.vessel(25);
    expect(run.head()[0]).toBe("► Next: weigh the empty vessels, row 11");
    run.vessel(25, 2);
    expect(run.head()[0]).toBe("► Next: round 1, row 12");
    run.weigh([65.2]);
    expect([run.head()[0], run.head()[1]]).toEqual(["► Next: finish round 1, row 12", "Drying. One round weighed: no answer yet."]);
    expect(says(run, 12)).toBe("not all weighed yet");
    run.weigh([60.1], 2);
    expect(run.head()[0]).toBe("► Next: round 2 at about 9:30, row 13");
    expect([says(run, 12), says(run, 13)]).toEqual(["all in; into the oven", "◄ next"]);
  });

  it("says that a weight is missing, not that one round was weighed, where a sample has none in round 1", () => {
    const run = plainRun({ replicates: 2 });
    run.vessel(25);
    run.vessel(25, 2);
    run.weigh([65.2, 60.1, 58.3]);
    run.weigh([null, 61.1, 59.2], 2);
    expect(run.head()[1]).toBe("Drying. A sample has no weight in one of the rounds: no answer yet.");
  });

  it("tells the loss so far while drying, and about when the next round is due", () => {
    const run = tins({}, 3, 4, 0);
    // lost 30.28 - 20.90, 29.75 - 20.48, 30.84 - 21.45 of 90.87 g: 28.04 / 90.87
    expect(run.head().slice(0, 2)).toEqual([
      "► Next: round 5 at about 11:00, row 16",
      "Drying. Lost so far 30.9 % of the moist weight, and not shown dry: no answer yet.",
    ]);
  });

  it("goes back to a row that was left out, and tells the loss so far from what is there", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    run.weigh([65.2, null, 51.22]);
    // 13.98 of 40.20 g
    expect(run.head().slice(0, 2)).toEqual([
      "► First: fill row 13, left out above a filled one, or clear what stands below",
      "Drying. Lost so far 34.8 % of the moist weight, and not shown dry: no answer yet.",
    ]);
    expect(run.value(run.sheet.working.next)).toBe(13);
    const two = plainRun({ kind: "drying", replicates: 2 });
    two.vessel(25);
    two.vessel(25, 2);
    two.weigh([65.2, 55.3, 52.1]);
    two.weigh([65.2, null, 52.1], 2);
    expect([two.head()[0], two.value(two.sheet.working.next)]).toEqual([
      "► First: fill row 13, left out above a filled one, or clear what stands below",
      13,
    ]);
  });

  it("crosses midnight with the next round", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    run.weigh([65.2]);
    run.type(cell(run.sheet.rows.drying.first, CLOCK), clock(23, 45));
    expect(run.head()[0]).toBe("► Next: round 2 at about 0:15, row 13");
  });

  it("goes on to the firings, and to the end", () => {
    expect(tins({}, 3, 6, 0).head().slice(0, 2)).toEqual([
      "► Next: firing 1, row 20; then weigh cold, row 24",
      "Dry. 31.0 % of the moist weight was water. Not charred yet.",
    ]);
    expect(tins({}, 3, 6, 2).head().slice(0, 2)).toEqual([
      "► Next: firing 3, row 22; then weigh cold, row 26",
      // Each of them: the least is 1 - 6.00 / 20.85 of the first tin.
      "At least 71.2 % of the dry plum prunings has left as vapour so far; charring is not shown finished.",
    ]);
    expect(tins().head()[0]).toBe("► Next: weigh the empty vessels again, row 29");
    expect(plum().head()[0]).toBe("► Next: weigh the empty vessels again, row 48");
  });

  it("says what to do where a table is full", () => {
    const run = plainRun({ kind: "drying", weighIns: 3 });
    run.vessel(25);
    run.weigh([65.2, 55.31, 52.1]);
    expect(run.head()[0]).toBe("► Full, not dry: add a round (task pane), or insert a copy of row 14 below it");
    expect(says(run, run.sheet.rows.drying.total)).toBe("? full: add a round (pane)");
    const fired = plum();
    fired.fire("charring", [34, 33, 32.53]);
    fired.fire("ashing", [null, null]);
    expect(fired.head()[0]).toBe("► Not finished: add a firing (task pane, Run sheet tab)");
  });

  it("tells how many more rounds the curve foretells", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    // Half of what is left goes in each round: 8 g of 33 to come at first.
    run.weigh([73, 69, 67, 66]);
    // 66 - 65 = 1 g left: 0.5, 0.25, 0.125, 0.0625, 0.03125, 0.015625 lost next; the limit is 0.02 g
    expect(says(run, run.sheet.rows.drying.total)).toBe("not dry: about 6 more");
  });

  it("withholds the answer while two weights contradict, and keeps them out of every mean", () => {
    const run = tins();
    run.fire("charring", [63, 63, 63], 2);
    expect(run.head().slice(1, 3)).toEqual([
      "▲ Answer withheld: two weights contradict each other. Put right what the next line names.",
      "▲ 3 of 16 checks: Sample 2: char, D26, is above the dry sample, D17. Swapped? Weigh again, cold.",
    ]);
    expect([share(run, "volatile", 2), together(run, "volatile"), trust(run, "volatile")]).toEqual([
      "withheld",
      "none: a weight contradicts",
      "▲ check 6",
    ]);
  });

  it("marks the answer while a check fails, and trusts each line as far as it may", () => {
    const run = tins();
    const { charring } = run.sheet;
    const row = charring?.fire(charring.rows.fire.first);
    if (row) {
      run.type(row.quiet, clock(14));
      run.type(row.opened, clock(14, 20));
    }
    expect(run.head()[1]).toBe("? In doubt: 71.44 % ± 0.40 % (95 %) of the dry plum prunings left as vapour; 28.56 % stayed. Mean of 3 samples.");
    expect(run.head()[2]).toBe(
      "? 1 of 16 checks: G20: opened 20 min after the vent fell quiet, sooner than 60 min. Char may have burnt: yield reads low.",
    );
    expect([trust(run, "moistureWet"), trust(run, "volatile")]).toEqual(["✓", "? check 8"]);
  });
});

describe("Firings", () => {
  it.each([
    [1, [32.53], "not shown finished"],
    [2, [32.54, 32.53], "✓ steady since firing 2"],
    [4, [33.5, 32.9, 32.54, 32.53], "✓ steady since firing 4"],
    [4, [32.55, 32.54, 32.53, 32.53], "✓ steady since firing 2"],
    // 0.05 g more after the steady pair: it was not finished
    [4, [32.6, 32.59, 32.54, 32.53], "✓ steady since firing 4"],
  ])("of %s planned, weighing %j: %s", (charFirings, grams, verdict) => {
    const run = plainRun({ kind: "charring", charFirings });
    run.vessel(25);
    run.weigh(PLUM);
    run.fire("charring", grams);
    expect(says(run, run.sheet.charring?.rows.total ?? 0)).toBe(verdict);
  });

  it("that take nothing away are steady since the first, as a burnt stone is", () => {
    const run = plainRun({ kind: "charring" });
    run.vessel(25);
    run.weigh([65.2, 65.2]);
    run.fire("charring", [65.2]);
    expect(says(run, run.sheet.charring?.rows.total ?? 0)).toBe("✓ steady since firing 1");
    expect(share(run, "volatile")).toBeCloseTo(0, 12);
  });

  it("are judged by the criterion that drying is judged by", () => {
    const run = plum({ kind: "charring" });
    run.type(run.sheet.settings.criterion, "of last");
    run.type(run.sheet.settings.limit, 0.002);
    // 0.02 g display steps are 0.27 % of 7.5 g: too coarse for 0.2 %
    expect(run.check("charDone")[0]).toBe("? doubt");
    run.type(run.sheet.settings.limit, 0.03);
    // 0.36 of 7.54 g is 4.8 %, 0.01 of 7.53 is 0.13 %
    expect(says(run, run.sheet.charring?.rows.total ?? 0)).toBe("✓ steady since firing 3");
  });
});

describe("The clock", () => {
  const elapsed = (clocks: readonly Plain[], date: Plain = null, options: Partial<RunSheetOptions> = {}) => {
    const run = plainRun({ kind: "drying", ...options });
    if (date !== null) run.type(run.sheet.setup.date, date);
    const { first } = run.sheet.rows.drying;
    clocks.forEach((time, index) => run.type(cell(first + index, CLOCK), time));
    return clocks.map((_, index) => run.value(cell(first + index, run.sheet.columns.elapsed)));
  };

  const CLOCKS: readonly (readonly [title: string, clocks: readonly Plain[], minutes: readonly Plain[], date?: Plain])[] = [
    [
      "past midnight, as often as needed",
      [clock(23, 10), clock(23, 40), clock(0, 10), clock(0, 40), clock(18, 40), clock(6, 40)],
      [0, 30, 60, 90, 1170, 1890],
    ],
    // .9 is 21:36, .925 is 22:12
    ["by dates with times, also with days between", [46_000.9, 46_000.925, 46_003.025], [0, 36, 3060]],
    ["from midnight as from any other time", [0, clock(0, 30)], [0, 30]],
    ["to a hundredth of a minute", [clock(9), clock(9) + 0.125 / 1440], [0, 0.13]],
    ["not at all while the first clock is missing", [null, clock(9, 30)], ["", ""]],
    // 3 days and 30 minutes, not 30 minutes
    ["whole days from a bare round 1 on the run's date", [clock(9), 46_003 + clock(9, 30)], [0, 4350], 46_000],
    ["on from a date with a time to bare times, past midnight", [46_000 + clock(23), clock(23, 30), clock(0, 10)], [0, 30, 70]],
    ["on to a later date after bare times", [46_000 + clock(9), clock(9, 30), 46_001 + clock(9)], [0, 30, 1440]],
    // Without any date for round 1 the days between are not known: the time stands still, and the check asks for the date.
    ["no days that it cannot know", [clock(9), 46_003 + clock(9, 30)], [0, 0]],
    // The planned 30 minutes stand in, so that the times rise
    ["a round without a time as planned", [clock(9), null, clock(10)], [0, 30, 60]],
  ];

  it.each(CLOCKS.map((row) => [row[0], row] as const))("counts %s", (_, [, clocks, minutes, date = null]) => {
    expect(elapsed(clocks, date)).toEqual(minutes);
  });

  it("may be minutes since round 1", () => {
    expect(elapsed([0, 30, 62.5], null, { timing: "minutes" })).toEqual([0, 30, 62.5]);
    const run = plainRun({ kind: "drying", timing: "minutes" });
    run.vessel(25);
    PLUM.forEach((grams, index) => {
      run.type(cell(run.sheet.rows.drying.first + index, CLOCK), 30 * index);
      run.type(run.sheet.drying.box(run.sheet.rows.drying.first + index, 1), grams);
    });
    expect(says(run, run.sheet.rows.drying.total)).toBe("✓ dry since round 5");
    run.weigh([null, null, null, null, null]);
  });
});

describe("A round that cannot be judged", () => {
  const steady = (change: (run: PlainRun) => void, options: Partial<RunSheetOptions> = {}): Plain | string => {
    const run = plainRun({ kind: "drying", ...options });
    run.vessel(25);
    run.weigh(PLUM);
    change(run);
    return run.problem(run.sheet.drying.steady(1)) || run.value(run.sheet.drying.steady(1));
  };
  const at = (run: PlainRun, round: number) => run.sheet.drying.box(run.sheet.rows.drying.first + round - 1, 1);

  it.each<readonly [string, (run: PlainRun) => void, string]>([
    ["a weight typed as text", (run) => run.type(at(run, 5), "51,21"), "a weight is not a number"],
    ["no vessel", (run) => run.vessel(null), "vessel not weighed"],
    ["a weight missing above", (run) => run.type(at(run, 3), null), "a row is missing"],
    ["a clock missing above", (run) => run.type(cell(14, CLOCK), null), "a clock time is missing"],
    ["two rounds at one time", (run) => run.type(cell(14, CLOCK), clock(9, 30)), "times not in order"],
    ["no limit", (run) => run.type(run.sheet.settings.limit, null), "settings missing"],
    ["no interval", (run) => run.type(run.sheet.settings.interval, null), "settings missing"],
    ["no criterion", (run) => run.type(run.sheet.settings.criterion, null), "settings missing"],
    ["a gain", (run) => run.weigh([...PLUM, 51.3]), "gain"],
    ["a weighing below the vessel", (run) => run.weigh([...PLUM, 5.12]), "#VALUE! weights: row 6 holds 5.12 g, not more than vessel, 25 g."],
  ])("with %s", (_, change, words) => {
    expect(steady(change)).toEqual(expect.stringContaining(words));
  });

  it("gives no moisture then", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    run.weigh([...PLUM, 51.3]);
    expect([share(run, "moistureWet"), says(run, 17)]).toEqual(["", "? gained 0.09 g"]);
  });

  it("compares only rounds at least the planned interval apart", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(25);
    [65.2, 65.19, 65.19].forEach((grams, index) => {
      run.type(cell(12 + index, CLOCK), clock(9, 10 * index));
      run.type(at(run, index + 1), grams);
    });
    expect([says(run, 14), run.value(run.sheet.drying.steady(1))]).toEqual(["too soon to tell", "too soon to tell"]);
    run.type(cell(15, CLOCK), clock(9, 30));
    run.type(at(run, 4), 65.18);
    expect(run.value(run.sheet.drying.steady(1))).toBe(4);
  });
});

describe("Pan zeros", () => {
  it("correct the weighings of a row by their middle where both are read, and carry through to the shares", () => {
    const run = plum({ panZeros: true });
    const { drying, charring, ashing } = run.sheet.rows;
    const zeros = (row: number, before: number, after: number): void => {
      run.type(stripCell(row, "before"), before);
      run.type(stripCell(row, "after"), after);
    };
    run.type(stripCell(drying.strip?.first ?? 0, "before"), 0.5);
    expect(share(run, "moistureWet")).toBeCloseTo(0.34801, 5);
    zeros(drying.strip?.first ?? 0, 0, 0.03);
    zeros(drying.strip?.vessel ?? 0, -0.01, -0.03);
    // moist 65.20 - 0.015 - 25.02 = 40.165 g; dry 51.21 - 25.02 = 26.19 g
    expect(run.value(run.sheet.vessel(1))).toBeCloseTo(25.02, 9);
    expect(share(run, "moistureWet")).toBeCloseTo((40.165 - 26.19) / 40.165, 9);
    zeros((charring?.strip?.first ?? 0) + 2, 0.02, 0.04);
    zeros((ashing?.strip?.first ?? 0) + 1, -0.02, 0);
    // char 32.50 - 25.02 = 7.48 g, ash 25.41 - 25.02 = 0.39 g
    expect(share(run, "charYield")).toBeCloseTo(7.48 / 26.19, 9);
    expect(share(run, "ash")).toBeCloseTo(0.39 / 26.19, 9);
    const { end } = run.sheet;
    if (end) run.type(end.vessel(1), 25.08);
    zeros(run.sheet.rows.end.strip?.vessel ?? 0, 0.01, 0.01);
    // vessel again 25.07 g: 0.05 g more than 25.02
    expect(end && run.value(end.gain(1))).toBeCloseTo(0.05, 9);
  });
});

describe("The flag of a warm weighing", () => {
  // A tenth of a display step of 0.01 g is 1 mg, at 0.19 mg a degree 5.263 °C.
  it.each([
    [20, 25.26, 0.01, "yes"],
    [20, 25.27, 0.01, "? too warm: reads light"],
    [20, 14.74, 0.01, "yes"],
    [20, 14.73, 0.01, "? colder than the room"],
    [20, 50, 0.1, "yes"],
    // 0.00019 g of a degree is a tenth of 0.0019 g
    [20, 21, 0.0019, "? too warm: reads light"],
    [20, 21, 0.00191, "yes"],
  ])("in a room of %s °C, sample at %s °C, balance to %s g: %s", (room, sample, readability, flag) => {
    const run = plum({ temperatures: true, readability });
    const row = run.sheet.rows.drying.strip?.first ?? 0;
    expect(says(run, row)).toBe("");
    run.type(stripCell(row, "room"), room);
    expect(says(run, row)).toBe("");
    run.type(stripCell(row, "warmth"), sample);
    expect(says(run, row)).toBe(flag);
    // Only flagged: no mass changes.
    expect([1, 2].map((round) => run.value(run.sheet.drying.lost(run.sheet.rows.drying.first + round, 1)))).toEqual([
      expect.closeTo(9.89, 9),
      expect.closeTo(3.21, 9),
    ]);
  });
});

describe("The comparison with open burning", () => {
  const shown = (run: PlainRun): Record<string, Plain> =>
    Object.fromEntries(
      COMPARED.map((quantity) => {
        const value = run.value(compared(run.sheet, quantity, 1));
        return [quantity, typeof value === "number" ? Number(value.toFixed(2)) : value];
      }),
    );
  const given = (values: Readonly<Record<string, Plain>>, options: Partial<RunSheetOptions> = {}): PlainRun => {
    const run = plum(options);
    const { composition } = run.sheet;
    for (const [name, content] of Object.entries(values)) if (composition) run.type(composition[name as "carbon"], content);
    return run;
  };

  it("puts each quantity where its label says, by a formula", () => {
    // 25.81 g burn. Cellulose takes up 6 * 31.998 / 162.141 = 1.18408 g oxygen per g; CO2 6 * 44.009 / 162.141 and H2O 5 * 18.015 / 162.141.
    const run = given({ formula: "C6H10O5" });
    expect(shown(run)).toEqual({ oxygenTaken: 30.56, air: 132.07, gases: 56.37, ashLeft: 0.4, notCovered: 0, vapourLeft: 18.68, charLeft: 7.53 });
    // 30.56 and 56.37 of 26.21 g
    expect(run.head()[4]).toBe(
      "Of 100 g dry, closed: 71.3 g left as vapour. Burnt openly: 117 g oxygen in, 215 g gases out, by the formula as it stands.",
    );
  });

  it("tells open burning with its ± by an analysis", () => {
    const run = given({ carbon: 48.8, hydrogen: 6.1, oxygen: 44.1, exactness: 0.5 }, { kind: "charring" });
    // 2.66406 * 0.488 + 7.93601 * 0.061 - 0.441 = 1.34316 g per g dry, of 26.21 g; 1 - 0.488 - 0.061 - 0.441 = 0.010 not analysed
    expect(shown(run)).toMatchObject({ oxygenTaken: 35.2, notCovered: 0.26 });
    // gases 3.66406 * 48.8 + 8.93601 * 6.1 = 233.3; ± 0.5 * 8.431 = 4.2 and 0.5 * 9.658 = 4.8
    expect(run.head()[4]).toBe("Of 100 g dry, closed: 71.3 g left as vapour. Burnt openly: 134 ± 4 g oxygen in, 233 ± 5 g gases out (95 %).");
  });

  it.each<readonly [Readonly<Record<string, Plain>>, string]>([
    [{ carbon: 48.8 }, ""],
    [{ carbon: 48.8, hydrogen: 6.1 }, ""],
    // 48.8 + 6.1 + 35.1 = 90 %, the least
    [{ carbon: 48.8, hydrogen: 6.1, oxygen: 35.1 }, "37.56"],
    [{ carbon: 48.8, hydrogen: 6.1, oxygen: 34.94 }, ""],
    [{ formula: "C6H10O5", carbon: 48.8 }, ""],
  ])("by %j shows %j", (values, oxygen) => {
    const value = shown(given(values, { kind: "charring" })).oxygenTaken;
    expect(typeof value === "number" ? value.toFixed(2) : value).toBe(oxygen);
  });

  it("says one sentence where a formula and an analysis are both given", () => {
    const run = given({ formula: "C6H10O5", carbon: 48.8, hydrogen: 6.1 });
    expect(run.value(run.sheet.composition?.note ?? run.sheet.setup.date)).toBe(
      "? A formula and an analysis are both given: clear B94, or B88 to B92.",
    );
    // What the closed run left follows from the weights alone: 26.21 - 7.53 = 18.68 g.
    const closed: Readonly<Record<string, number>> = { vapourLeft: 18.68, charLeft: 7.53 };
    expect(Object.values(shown(run))).toEqual(COMPARED.map((quantity) => closed[quantity] ?? ""));
    expect(run.calculated().filter(({ at }) => run.problem(at) !== "")).toEqual([]);
    expect(run.head()[4]).toBe("The comparison with open burning waits: see the check of the analysis, B74.");
    // It marks the comparison, not the answer.
    expect(run.head()[1]).toMatch(/^71\.271 %/);
  });

  it("waits while the answer is marked, and says so far while charring is not finished", () => {
    const run = given({ formula: "C6H10O5" });
    run.fire("ashing", [null, null]);
    run.fire("charring", [32.9, null, null]);
    expect(run.head()[4]).toMatch(/^Of 100 g dry, closed: at least 69\.9 g left as vapour so far\. Burnt openly: /);
    run.type(run.sheet.drying.box(14, 1), null);
    expect(run.head()[4]).toBe("The comparison with open burning waits for the answer above.");
  });
});
