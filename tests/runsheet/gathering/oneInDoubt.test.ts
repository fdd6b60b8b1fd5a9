// One pupil's slip on a sheet of several materials: it puts in doubt what it concerns, and no other pupil's result. The class is invented.
import { elsewhere } from "../../../src/runsheet/expressions/Expression";
import { formulaText, placeOf } from "../../../src/runsheet/expressions/formulaText";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { trustOfSample } from "../../../src/runsheet/gathering/trustOfSample";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { SAMPLE_KINDS, type RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { charring, filled, prunings, rowsShown, weighed } from "./gatherable";

jest.setTimeout(120_000);

const CLASS: RunSheetOptions = { ...charring, replicates: 3, samplesAre: "different" };
const { drying, charring: table, end, rows, setup, settings } = runSheet(checkOptions(CLASS));

let open: HeadlessWorkbook;
let gathered: string;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  const sheet = filled("Class", CLASS, (run) => [
    ...weighed(run, [prunings(0.71), prunings(0.72), prunings(0.73)]),
    ...["Ann", "Bo", "Cy"].map((name, index) => [run.setup.name(index + 1), name] as const),
  ]);
  await open.workbook.addSheet(sheet);
  gathered = (await gatherRuns(open.workbook)).sheet;
});
afterAll(() => open.close());

const firedBox = (firing: number, sample: number) => {
  if (table === undefined) throw new Error("no charring");
  return table.box(table.rows.first + firing - 1, sample);
};

/** The trust of Ann, Bo and Cy with something typed, which is taken back. */
async function trusts(...typed: readonly (readonly [at: ReturnType<typeof firedBox>, content: number | string])[]): Promise<string[]> {
  const before = new Map<string, string | number | boolean | null>();
  const now = (await open.workbook.readUsed("Class")).rows.flat();
  for (const [at, content] of typed) {
    const place = placeOf(at);
    before.set(place, now.find(({ cell }) => cell === place)?.value ?? null);
    await open.type("Class", place, content);
  }
  const row = await rowsShown(open, gathered);
  const first = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].find((one) => row(one)[2] === "Ann") ?? 0;
  const shown = [0, 1, 2].map((index) => row(first + index)[1] ?? "");
  for (const [place, held] of before) await open.type("Class", place, typeof held === "boolean" ? String(held) : (held ?? ""));
  return shown;
}

test.each(SAMPLE_KINDS)("what is asked of one sample of a %s sheet fits a cell, however long the sheet's name", (kind) => {
  const run = runSheet(
    checkOptions({ ...CLASS, kind, replicates: 6, weighIns: 60, panZeros: true, temperatures: true, charFirings: 4, ashFirings: 4 }),
  );
  const name = "It's a name of 31 characters 12";
  const own = formulaText(trustOfSample(run, name, elsewhere(name, run.setup.date), 6));
  expect(own.length).toBeLessThanOrEqual(8192);
  // Not so short that the trust of the whole line stands in its place.
  expect(own.length).toBeGreaterThan(3000);
});

test("all three are trusted, and weights of Cy that contradict are about Cy alone", async () => {
  expect(await trusts()).toEqual(["✓", "✓", "✓"]);
  // Char above the dry sample.
  const [ann, bo, cy] = await trusts([firedBox(1, 3), 50], [firedBox(2, 3), 50]);
  expect([ann, bo]).toEqual(["✓", "✓"]);
  expect(cy).toMatch(/^▲ check \d+$/);
});

test("a gain, a vessel that changed, and a vessel that barely holds a sample are about one alone", async () => {
  const gain = await trusts([drying.box(rows.drying.first + 2, 2), 45.5]);
  expect([gain[0], gain[2]]).toEqual(["✓", "✓"]);
  expect(gain[1]).not.toBe("✓");
  const again = await trusts([end?.vessel(1) ?? setup.date, 26]);
  expect(again.slice(1)).toEqual(["✓", "✓"]);
  expect(again[0]).not.toBe("✓");
});

test("what cannot be asked of one sample, and repeats, are in doubt together", async () => {
  // A limit that lets pass more than is wanted concerns every sample.
  const wide = await trusts([settings.limit, 60]);
  expect(new Set(wide).size).toBe(1);
  expect(wide[0]).toMatch(/^\? check \d+$/);
  const repeats = await trusts([setup.samplesAre, "repeats"], [end?.vessel(1) ?? setup.date, 26]);
  expect(repeats.every((trust) => trust !== "✓")).toBe(true);
});
