// A salt, staged heating and a balance check of one invented salts class, gathered together.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { gatherRuns } from "../../../src/runsheet/gathering/gatherRuns";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { filledKinds } from "../filledKinds";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { openHeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { filled, kiln, prunings, rowsShown, weighed } from "./gatherable";

jest.setTimeout(120_000);

const blank: Omit<RunSheetOptions, "kind"> = { weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 1 };

it("gathers a salt with its loss, says why it has no vapour share, and leaves a balance check out", async () => {
  const open = await filledKinds["run of a salt, two samples"]?.();
  if (open === undefined) throw new Error("no such run");
  const { workbook, engine, name } = open;
  await workbook.addSheet(buildRunSheet({ ...blank, kind: "staged" }));
  await workbook.addSheet(buildRunSheet({ ...blank, kind: "balance" }));
  const gathered = await gatherRuns(workbook);
  expect(gathered).toEqual({
    sheet: "Gathered runs",
    samples: 3,
    runs: 2,
    leftOut: [{ sheet: "Balance check", why: "a balance check: it weighs no samples" }],
    withoutVapour: [
      {
        sheet: name,
        why: "what leaves a salt or mineral is told by its equation, not by closed charring: its loss stands in its mark, its water in no median",
      },
      {
        sheet: "Staged run",
        why: "what left in stages may be water of crystals as well as vapour: its loss in all stands in its mark, its water in no median",
      },
    ],
  });
  const row = await rowsShown({ workbook, settled: () => engine.settled() }, gathered.sheet);
  // 2.400 g of crystals to 1.536 g, and 2.351 g to 1.504 g: 36.00 % and 36.03 % lost.
  expect([row(7), row(8), row(9)].map((cells) => [cells[1], cells[4], cells[8]])).toEqual([
    ["✓", "", "lost 36.00 %, not vapour"],
    ["✓", "", "lost 36.03 %, not vapour"],
    ["", "", "· not finished: no loss yet"],
  ]);
  expect([12, 13, 14, 15, 16].map((at) => row(at).slice(0, 2))).toEqual([
    ["LEFT OUT", ""],
    ["Balance check", "a balance check: it weighs no samples"],
    ["NO VAPOUR SHARE", ""],
    ["Salt or mineral", gathered.withoutVapour?.[0]?.why],
    ["Staged heating", gathered.withoutVapour?.[1]?.why],
  ]);
  open.close();
});

it("takes the water of prunings alone into the median of the water, though a salt was dried first beside them", async () => {
  const { workbook, engine, close, type } = await openHeadlessWorkbook();
  const name = await workbook.addSheet(
    filled("Salt", { ...blank, kind: "salt", replicates: 3 }, (sheet) => [
      ...weighed(sheet, [prunings(0, 0), prunings(0, 0), prunings(0, 0)]),
      ...(sheet.salt === undefined ? [] : ([[sheet.salt.water, "dried first"]] as const)),
    ]),
  );
  // 40 g moist to 20 g dry: 50 %; each salt too, unless a round is changed.
  for (const at of ["C", "D", "E"])
    await type(name, `${at}${runSheet(checkOptions({ ...blank, kind: "salt", replicates: 3 })).drying.rows.first}`, 47.03);
  for (const share of [0.71, 0.72, 0.73]) await workbook.addSheet(kiln(`Kiln ${share}`, share));
  const { sheet } = await gatherRuns(workbook);
  const row = await rowsShown({ workbook, settled: () => engine.settled() }, sheet);
  // 47.03 g less the vessel of 25.03 g: 22 g to 20 g: 9.09 %
  expect([7, 10].map((at) => row(at)[3])).toEqual(["9.09%", "50.00%"]);
  expect([row(13)[0], row(13)[3]]).toEqual(["Median", "50.00%"]);
  close();
});

it("says of a workbook with a balance check alone why there is nothing to gather", async () => {
  const { workbook, close } = (await filledKinds["balance check"]?.()) ?? { workbook: undefined, close: () => undefined };
  if (workbook === undefined) throw new Error("no balance check");
  await expect(gatherRuns(workbook)).rejects.toThrow('No run sheet can be gathered: "Balance check", a balance check: it weighs no samples.');
  close();
});
