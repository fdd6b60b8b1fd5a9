// A column that repeats another one is copied more likely than weighed. The runs are invented.
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { openRunSheet } from "../openRunSheet";
import { clock, plainRun, USUAL, type PlainRun } from "../plainRun";

jest.setTimeout(60_000);

const PHASES = { drying: [], charring: ["charring"], ashing: ["charring", "ashing"], liquids: ["charring"], staged: ["stages"], salt: ["heating"] } as const; // prettier-ignore
const KINDS = Object.keys(PHASES) as (keyof typeof PHASES)[];
const copied = (column: string): string =>
  `? Column ${column} repeats another sample's in every box: copied? Type what this one weighed, or clear it.`;

/** Samples of which each weighs so much more than the first, g. */
function run(kind: keyof typeof PHASES, more: readonly number[], options: Partial<RunSheetOptions> = {}): PlainRun {
  const run = plainRun({ kind, replicates: more.length, samplesAre: "repeats", stages: 2, ...options });
  more.forEach((grams, index) => {
    const sample = index + 1;
    run.vessel(40.12, sample);
    run.weigh([70.34 + grams, 60.02 + grams, 60.01 + grams], sample);
    for (const phase of PHASES[kind]) run.fire(phase, [46.33 + grams, 46.32 + grams], sample);
  });
  return run;
}

describe.each(KINDS)("%s", (kind) => {
  test.each([
    [[0, 0], "D"],
    [[0, 0.05, 0], "E"],
    [[0.11, 0, 0.05, 0.02, 0.07, 0.05], "H"],
  ] as const)("%j", (more, column) => {
    const made = run(kind, more);
    expect(made.check("agree")).toEqual(["? doubt", copied(column)]);
    expect(copied(column).length).toBeLessThanOrEqual(108);
  });

  test.each([[[0]], [[0, 0.05]], [[0, 0.05, 0.02, 0.07, 0.11, 0.03]]])("not of %j", (more) => {
    const made = run(kind, more);
    const found = more.length === 1 ? made.check("rows") : made.check("agree");
    expect(found[1]).not.toContain("repeats another");
    expect(made.check("rows")).toEqual(["✓ in order", ""]);
  });

  test("of different materials too", () => expect(run(kind, [0, 0], { samplesAre: "different" }).check("agree")[1]).toBe(copied("D")));
});

test("not of samples that differ in one box, or are not dry yet", () => {
  const made = run("charring", [0, 0]);
  const { charring, drying } = made.sheet;
  if (charring === undefined) throw new Error("no firing");
  made.type(charring.box(charring.rows.first, 2), 46.34);
  expect(made.check("agree")[1]).not.toContain("repeats another");
  made.type(charring.box(charring.rows.first, 2), 46.33);
  made.type(drying.box(drying.rows.first + 2, 1), 59);
  expect(made.check("agree")[1]).not.toContain("repeats another");
});

test("in the local workbook's engine", async () => {
  const open = await openRunSheet({ ...USUAL, kind: "drying", replicates: 3 });
  for (const sample of [1, 2, 3]) {
    await open.vessel(40.12, sample);
    for (const [index, grams] of [70.34, 60.02, 60.01].entries())
      await open.round(index + 1, clock(9 + index), sample === 2 ? grams + 0.05 : grams, sample);
  }
  const found = await open.check("agree");
  await open.round(1, null, 70.4, 3);
  const mended = await open.check("agree");
  open.close();
  expect(found).toEqual(["? doubt", copied("E")]);
  expect(mended[1]).not.toContain("repeats another");
});
