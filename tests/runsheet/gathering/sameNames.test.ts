// Two pupils of one name, and the opening workbook's made-up run beside one's own. The runs are invented.
import { readRuns } from "../../../src/runsheet/gathering/readRuns";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import { demoRun } from "../../../src/workbench/demo/orchardRun";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { charring, filled, prunings, rowsShown, weighed } from "./gatherable";

jest.setTimeout(240_000);

let open: HeadlessWorkbook;
beforeEach(async () => (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

const pupil = (sheet: string, name: string, share: number) =>
  filled(sheet, charring, (run) => [...weighed(run, [prunings(share)]), [run.setup.name(1), name]]);

test("two pupils of one name keep a row each, are numbered and told; the demo's run is left out beside them", async () => {
  for (const plan of [demoRun, pupil("Run 1", "Asha", 0.71), pupil("Run 2", "asha", 0.72), pupil("Run 3", "Ben", 0.73)])
    await open.workbook.addSheet(plan);
  const gathered = await gatherRuns(open.workbook);
  expect(gathered).toMatchObject({
    samples: 3,
    sameNames: [{ name: "Asha", samples: 2 }],
    leftOut: [{ sheet: "Orchard run", why: "demo data: its notes say that every weighing is made up; clear them to have it counted" }],
  });
  const row = await rowsShown(open, gathered.sheet);
  expect([7, 8, 9].map((number) => row(number)[2])).toEqual(["1 of 2: Asha", "2 of 2: asha", "Ben"]);
});

test("the demo's run alone is gathered, named as such", async () => {
  const name = await open.workbook.addSheet(demoRun);
  const { rows, leftOut } = readRuns([await open.workbook.readUsed(name)]);
  expect([rows.length, rows.every(({ isDemo }) => isDemo), leftOut]).toEqual([3, true, []]);
  expect(JSON.stringify(rows[0]?.name)).toContain("demo: ");
});
