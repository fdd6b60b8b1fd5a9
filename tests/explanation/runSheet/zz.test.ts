import { openRunSheet } from "../../runsheet/openRunSheet";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { RUN_SHEET_AREA, runCells } from "../../../src/explanation/runSheet/RunCells";
import { explainRunCell } from "../../../src/explanation/runSheet/explainRunCell";
import { writeFileSync } from "node:fs";
jest.setTimeout(120000);
test("dump", async () => {
  const run = await openRunSheet({
    kind: "ashing",
    weighIns: 4,
    intervalMinutes: 30,
    readability: 0.01,
    vessel: "tin",
    replicates: 2,
    charFirings: 2,
    ashFirings: 1,
    panZeros: true,
    temperatures: true,
  });
  for (const s of [1, 2]) {
    await run.vessel(25.02 + s, s);
    for (const [i, g] of [60.15, 55.2, 53.01, 53.01].entries()) await run.round(i + 1, 0.375 + (i * 30) / 1440, g + s * 1.01, s);
    await run.fire("charring", 1, 34.25 + s, { held: 60, lit: 0.5, quiet: 0.55, opened: 0.65, set: 500 }, s);
    await run.fire("charring", 2, 34.25 + s, { held: 60 }, s);
    await run.fire("ashing", 1, 25.52 + s, { held: 60 }, s);
  }
  await run.type(cell(run.sheet.rows.end.vessel ?? 0, 2), 26.03);
  await run.type(run.sheet.composition!.carbon, 48.6);
  await run.type(run.sheet.composition!.hydrogen, 6.1);
  await run.type(run.sheet.composition!.oxygen, 42);
  await run.workbook.readUsed(run.name);
  const t0 = Date.now();
  const { ranges } = await run.workbook.readInputs({ sheet: run.name, cell: "A1" }, [{ sheet: run.name, range: RUN_SHEET_AREA, spill: false }]);
  const t1 = Date.now();
  const cells = runCells(run.name, ranges[0]!);
  const t2 = Date.now();
  const used = (await run.workbook.readUsed(run.name)).rows.flat().filter((c) => c.formula !== "");
  const out = used.map((r) => JSON.stringify({ cell: r.cell, shown: r.shown, ...explainRunCell(cells!, r) }, null, 1));
  writeFileSync("/tmp/scratch-explain/out.txt", `${t1 - t0} ${t2 - t1} ${Date.now() - t2}\n${out.join("\n")}`);
  run.close();
});
