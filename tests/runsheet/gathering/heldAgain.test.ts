// Runs of an invented char kiln whose weighings stand twice in one workbook, and some that only look alike.
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { heldAgain } from "../../../src/runsheet/gathering/heldAgain";
import { growRunSheet } from "../../../src/runsheet/growing/growRunSheet";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { charring, filled, kiln, prunings, weighed } from "./gatherable";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

const twice = (of: string, other: string) => ({
  sheet: of,
  why: `all its weighings stand on "${other}" too, as after adding a sample: counted there`,
});

it("counts the samples of a sheet once when a sample was added, on the sheet that holds more", async () => {
  // A fourth column of boxes tears the tables, so the sheet with it is a new one.
  const three = { ...charring, replicates: 3 };
  await open.workbook.addSheet(filled("Kiln 1", three, (sheet) => weighed(sheet, [prunings(0.71), prunings(0.72), prunings(0.73)])));
  await open.settled();
  await growRunSheet(open.workbook, "Kiln 1", "replicates");
  await open.settled();
  // Nothing of the fourth sample is weighed yet, so both hold the same.
  expect((await gatherRuns(open.workbook)).leftOut).toEqual([twice("Kiln 1 (2)", "Kiln 1")]);
  const four = runSheet(checkOptions({ ...three, replicates: 4 }));
  await open.type("Kiln 1 (2)", placeOf(four.columns.box(four.rows.drying.vessel, 4)), 25);
  await open.settled();
  const { leftOut, samples, runs } = await gatherRuns(open.workbook);
  expect([leftOut, samples, runs]).toEqual([[twice("Kiln 1", "Kiln 1 (2)")], 4, 1]);
});

it("keeps runs apart that differ in a weight, a time, their day or their kind, and sheets with next to nothing on them", async () => {
  await open.workbook.addSheet(kiln("Kiln", 0.71));
  const box = runSheet(checkOptions(charring));
  const other = async (name: string, at: Parameters<typeof placeOf>[0], content: string | number): Promise<void> => {
    await open.workbook.addSheet(kiln(name, 0.71));
    await open.type(name, placeOf(at), content);
  };
  await other("Weight", box.drying.box(box.drying.rows.first, 1), 65.01);
  await other("Time", { ...box.drying.box(box.drying.rows.first + 1, 1), column: 1 }, "9:31");
  await open.workbook.addSheet(filled("Dried", { ...charring, kind: "drying" }, (sheet) => weighed(sheet, [{ vessel: 25, moist: 65, dry: 45 }])));
  await open.workbook.addSheet(filled("Begun 1", charring, (sheet) => [[sheet.columns.box(sheet.rows.drying.vessel, 1), 25]]));
  await open.workbook.addSheet(filled("Begun 2", charring, (sheet) => [[sheet.columns.box(sheet.rows.drying.vessel, 1), 25]]));
  await open.settled();
  const read = async (...names: string[]) => heldAgain(await Promise.all(names.map((name) => open.workbook.readUsed(name))));
  expect(await read("Kiln", "Weight", "Time", "Dried", "Begun 1", "Begun 2")).toEqual(new Map());
  await other("Day", box.setup.date, 46_341);
  await open.type("Kiln", placeOf(box.setup.date), 46_340);
  await open.settled();
  expect(await read("Kiln", "Day")).toEqual(new Map());
  await open.type("Day", placeOf(box.setup.date), 46_340);
  await open.settled();
  expect(await read("Kiln", "Day")).toEqual(new Map([["Day", "Kiln"]]));
});
