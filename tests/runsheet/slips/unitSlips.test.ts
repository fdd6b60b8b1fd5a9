// Kilograms or milligrams typed where grams are wanted, in every weighing box of every kind of run, one at a time and throughout; and weights that
// are light in truth. The runs are invented: prunings, resin, and blue crystals of a salts class.
import type { Cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import type { RunKind, RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { plainRun, type PlainRun } from "../plainRun";

const to = (grams: number): number => Math.round(grams * 100) / 100;
const VESSELS = [41.86, 38.12];
const SIZES = [1, 1.02];
const MASSES = { charring: [7.2, 6.01, 6], ashing: [0.63, 0.62], stages: [20.5, 15.9, 9.2, 6.1], heating: [15.5, 15.35, 15.34] } as const;

interface Weighed {
  readonly run: PlainRun;
  readonly boxes: readonly Cell[];
}

/** A run weighed to its end with nothing wrong, and all its boxes of weighings. */
function weighed(kind: RunKind, replicates: number, isTared: boolean): Weighed {
  const options: Partial<RunSheetOptions> = kind === "salt" ? { formula: "CuSO4·5H2O", residue: "CuSO4" } : {};
  const run = plainRun({ kind, replicates, weighIns: 7, ...options });
  const { sheet } = run;
  const boxes: Cell[] = [];
  for (const sample of sheet.samples) {
    const [vessel, size] = [isTared ? 0 : (VESSELS[sample - 1] ?? 0), SIZES[sample - 1] ?? 1];
    run.vessel(isTared ? "tared" : vessel, sample);
    if (!isTared) boxes.push(sheet.columns.box(sheet.rows.drying.vessel, sample));
    const dried = kind === "salt" ? [24] : [30.28, 24.06, 21.45, 20.9, 20.86, 20.85];
    run.weigh(dried.map((grams) => to(vessel + grams * size)), sample); // prettier-ignore
    boxes.push(...dried.map((_, index) => sheet.drying.box(sheet.rows.drying.first + index, sample)));
    for (const phase of ["charring", "ashing", "stages", "heating"] as const) {
      const table = sheet[phase];
      if (table === undefined) continue;
      run.fire(phase, MASSES[phase].map((grams) => to(vessel + grams * size + (isTared ? 0 : 0.01))), sample); // prettier-ignore
      boxes.push(...MASSES[phase].map((_, index) => table.box(table.rows.first + index, sample)));
    }
    const { caught } = sheet;
    if (caught !== undefined) {
      run.caught([[55.2, 55.41], [80.11, 81.01], [120.5, to(120.5 + 8.4 * size)]], sample); // prettier-ignore
      run.type(caught.box("gas", sample), to(5.2 * size));
      boxes.push(...[0, 1, 2].flatMap((part) => [caught.before(part, sample), caught.after(part, sample)]));
    }
    if (sheet.end !== undefined) {
      run.type(sheet.end.vessel(sample), to(vessel + 0.01));
      if (!isTared) boxes.push(sheet.end.vessel(sample));
    }
  }
  // Its figure would be asked for at these temperatures.
  if (sheet.stages) run.type(sheet.settings.material, "none of these");
  for (const [index, set] of [200, 350, 500, 650].entries())
    if (sheet.stages) run.type(sheet.stages.fire(sheet.stages.rows.fire.first + index).set, set);
  return { run, boxes };
}

const READABILITY = 0.01;
const checksOf = (run: PlainRun): string => String(run.head()[2]);
const isHeld = (run: PlainRun): boolean => /^[▲?]|no answer/i.test(String(run.head()[1]));

describe.each(["drying", "charring", "ashing", "liquids", "staged", "salt"] as const)("a run of the kind %s", (kind) => {
  test.each([
    [1, false],
    [1, true],
    [2, false],
  ] as const)("asks for grams where one weight of %i samples is in kilograms or milligrams (tared: %s), and names it", (samples, isTared) => {
    const { run, boxes } = weighed(kind, samples, isTared);
    expect(checksOf(run)).toMatch(/^✓/);
    const unnamed: string[] = [];
    let asked = 0;
    for (const at of boxes)
      for (const factor of [1 / 1000, 1000]) {
        const grams = Number(run.value(at));
        const typed = Number((grams * factor).toPrecision(12));
        // The box refuses less than a display step.
        if (typed < READABILITY) continue;
        run.type(at, typed);
        asked++;
        const says = checksOf(run);
        // What a salt comes to by theory withholds its answer before anything is asked in doubt, and asks for a slip.
        const isBesideTheory = kind === "salt" && says.includes("A slip");
        if (!isHeld(run) || !(isBesideTheory || (says.includes(placeOf(at)) && says.includes("Type grams"))))
          unnamed.push(`${placeOf(at)} ${typed}: ${says}`);
        run.type(at, grams);
      }
    expect(unnamed).toEqual([]);
    expect(asked).toBeGreaterThan(boxes.length);
    expect(checksOf(run)).toMatch(/^✓/);
  });
});

test("a weight far too light says with which it cannot be grams, before any other cause is guessed at", () => {
  const { run } = weighed("ashing", 1, false);
  const table = run.sheet.charring;
  if (table === undefined) throw new Error("no charring");
  run.type(table.box(table.rows.first + 1, 1), 0.04788);
  expect(checksOf(run)).toContain("checks: Sample 1: C26 and C11 cannot both be grams. Kilograms or milligrams in one, or swapped? Type grams.");
  expect(run.head()[0]).toBe("► First: put right what the third line names");
});

test("a run that is in kilograms throughout shows it by figures that the balance has not", () => {
  const run = plainRun({ kind: "drying", replicates: 1, weighIns: 5 });
  run.vessel(0.04186);
  run.weigh([0.07214, 0.06592, 0.06331]);
  const step = run.sheet.rows.settings.boxes.readability;
  expect(run.check("vessel")).toEqual([
    "? doubt",
    `? C14 is finer than the balance's step, B${step}: kilograms typed? Type grams, or mend the step.`,
  ]);
});

test("one sample of several in kilograms is found by its figures", () => {
  const run = plainRun({ kind: "drying", replicates: 2, weighIns: 5 });
  for (const sample of [1, 2]) {
    const per = sample === 1 ? 1 : 1000;
    run.vessel(41.86 / per, sample);
    run.weigh([72.14, 65.92, 63.31].map((grams) => grams / per), sample); // prettier-ignore
  }
  expect(run.check("vessel")[1]).toContain("D14 is finer than the balance's step");
});

test("a run that is in milligrams throughout is more than its balance weighs", () => {
  const run = plainRun({ kind: "drying", replicates: 1, weighIns: 5 });
  run.vessel(41_860);
  run.weigh([72_140, 65_920, 63_310]);
  const step = run.sheet.rows.settings.boxes.readability;
  expect(run.check("vessel")[1]).toBe(`? C12 is too much for a balance of the step in B${step}: milligrams typed? Type grams, or mend the step.`);
});

test("a vessel in kilograms is asked about beside the moist sample, where nothing else tells", () => {
  const run = plainRun({ kind: "drying", replicates: 1, weighIns: 5, readability: 0.00001 });
  run.vessel(0.04186);
  run.weigh([72.14]);
  expect(run.check("vessel")[1]).toBe("? Sample 1: C11 is under a thousandth of C12: kilograms typed, or milligrams there? Type grams.");
});

/** Weights that are so in truth: nothing may be said of kilograms. */
const TRUE: readonly (readonly [what: string, options: Partial<RunSheetOptions>, fill: (run: PlainRun) => void])[] = [
  ["100 g dried to 0.9 g on a tared balance", { kind: "drying" }, (run) => (run.vessel("tared"), run.weigh([100, 42.3, 6.1, 0.91, 0.9, 0.9]))],
  ["100 g evaporated to 0.05 g on a tared balance", { kind: "drying" }, (run) => (run.vessel("tared"), run.weigh([100, 0.05, 0.05]))],
  ["100 g of sap in 0.3 g of foil", { kind: "drying" }, (run) => (run.vessel(0.3), run.weigh([100.3, 40.2, 1.24, 1.2, 1.2]))],
  [
    "a sample of 0.02 g in a crucible of 20 g",
    { kind: "drying", readability: 0.00001 },
    (run) => (run.vessel(20.11234), run.weigh([20.13456, 20.13311, 20.1331])),
  ],
  [
    "ash of a filter paper, a thousandth of it, on a tared balance",
    { kind: "ashing", readability: 0.0001 },
    (run) => (run.vessel("tared"), run.weigh([1.0412, 0.9834, 0.9833]), run.fire("charring", [0.1512, 0.1511]), run.fire("ashing", [0.0009, 0.0008])),
  ],
  ["a drum of 30 kg on a drum scale", { kind: "drying", readability: 10 }, (run) => (run.vessel(8_000), run.weigh([38_000, 31_000, 30_000]))],
  ["small weights of a fine balance", { kind: "drying", readability: 0.0001 }, (run) => (run.vessel("tared"), run.weigh([0.0512, 0.0401, 0.04]))],
  ["a table with a text in a box", { kind: "drying" }, (run) => (run.vessel(41.86), run.weigh([72.14, 65.92]), run.type(run.sheet.drying.box(run.sheet.rows.drying.first + 1, 1), "spilt"))], // prettier-ignore
  [
    "a metal that takes up oxygen",
    { kind: "staged", readability: 0.001 },
    (run) => (run.vessel("tared"), run.weigh([1.2, 1.2]), run.fire("stages", [1.9, 2.0])),
  ],
];

test.each(TRUE)("no kilograms are suspected in %s", (_what, options, fill) => {
  const run = plainRun({ replicates: 1, weighIns: 8, ...options });
  fill(run);
  for (const { check, row } of run.sheet.rows.checks.lines)
    expect(`${check} ${row} ${String(run.check(check)[1])}`).not.toMatch(/kilogram|Type grams\.$/i);
});
