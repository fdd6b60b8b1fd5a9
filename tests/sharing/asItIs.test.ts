import { asItIs } from "../../src/sharing/asItIs";
import { everyFormulaCell } from "../../src/sharing/formulaCells";
import { plainSheets } from "../../src/sharing/plain/plainSheets";
import { openRunSheet } from "../runsheet/openRunSheet";
import { clock } from "../runsheet/plainRun";

jest.setTimeout(60_000);

test("of a run sheet it counts as many cells that go on calculating as sharing as plain cells then writes", async () => {
  const run = await openRunSheet({ kind: "charring", weighIns: 7, intervalMinutes: 30, vessel: "tin", readability: 0.01, replicates: 1 });
  await run.vessel(212.4);
  for (const [round, grams] of [262.85, 258.92, 256.88, 256.2, 256.19, 256.19].entries()) await run.round(round + 1, clock(9, 30 * round), grams);
  await run.fire("charring", 1, 226.3);
  const reading = await run.workbook.readUsed(run.name);
  run.close();
  const { calling, plain } = asItIs(reading);
  const shared = plainSheets({ sheets: [reading] }, { date: "2027-01-15" });
  const fixed = shared.cells.filter(({ kind }) => kind === "fixed").map(({ cell }) => cell);
  const calls = everyFormulaCell(reading).filter(({ calls: found }) => found.length > 0);
  expect(calling).toEqual(calls.map(({ cell }) => cell));
  expect(plain).toBe(calls.filter(({ cell }) => !fixed.includes(cell)).length);
  expect(plain).toBeGreaterThan(5);
  expect(plain).toBe(shared.cells.filter(({ kind }) => kind === "plain").length);
});
