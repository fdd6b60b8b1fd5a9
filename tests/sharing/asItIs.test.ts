import { asItIs } from "../../src/sharing/asItIs";
import { shareAsPlainCells } from "../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { everyFormulaCell } from "../../src/sharing/formulaCells";
import { plainSheets } from "../../src/sharing/plain/plainSheets";
import { openRunSheet } from "../runsheet/openRunSheet";
import { reading } from "./MemoryWorkbook";
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

test("cells that call through a defined name are calls, and the name is told", () => {
  const names = [
    { name: "wet_share", formula: "=RETORT.MOISTURE.WET(Tin!$A$1,Tin!$A$2,Tin!$A$3)" },
    { name: "twice", formula: "=2*wet_share" },
    { name: "tin", formula: "=Tin!$A$1" },
  ];
  const cells = [
    ...[25, 35, 31.5].map((value, row) => reading(`A${row + 1}`, { value })),
    reading("B1", { formula: "=twice+1", value: 1.7 }),
    reading("B2", { formula: "=tin*2", value: 50 }),
    reading("B3", { formula: '="wet_share"', value: "wet_share" }),
  ];
  const tin = { sheet: "Tin", range: "A1:B3", rows: [cells] };
  expect(asItIs(tin, names)).toMatchObject({ calling: ["B1"], plain: 1, names: ["wet_share", "twice"], toMend: [] });
  expect(asItIs(tin)).toMatchObject({ calling: [], plain: 0, names: [] });
});

test.each([
  ["as it is", "says what follows and what does not, where the functions are missing"],
  ["as values", "has no formula that could say it"],
  ["as plain cells", "never says that the functions are missing"],
])("the third line of a run sheet shared %s %s", async (way) => {
  const line = "▲ Retort is not here: losses follow new weights, verdicts and shares do not. Install Retort, or ask for the sheet in plain cells.";
  const run = await openRunSheet({ kind: "drying", weighIns: 4, intervalMinutes: 30, vessel: "tin", readability: 0.01, replicates: 1 });
  await run.vessel(212.4);
  for (const [round, grams] of [262.85, 258.92].entries()) await run.round(round + 1, clock(9, 30 * round), grams);
  const third = async (sheet: string) => (await run.workbook.read(sheet, "A3")).rows[0]?.[0];
  if (way === "as it is") {
    const reading = await run.workbook.readUsed(run.name);
    expect(asItIs(reading).saysSo).toBe(true);
    expect((await third(run.name))?.formula).toContain(line);
    const earlier = JSON.parse(JSON.stringify(reading).replaceAll("losses follow new weights, verdicts and shares do not", "new entries are not judged")) as typeof reading; // prettier-ignore
    expect(asItIs(earlier).saysSo).toBe(true);
  } else if (way === "as values") {
    const { copy } = await shareAsValues(run.workbook, run.name, "2027-01-15");
    expect(await third(copy)).toMatchObject({ formula: "", value: expect.not.stringContaining("Retort is not here") as string });
  } else {
    const { copy } = await shareAsPlainCells(run.workbook, run.name, "2027-01-15");
    const { formula = "", value } = (await third(copy)) ?? {};
    expect([formula === "", String(value).includes("Retort is not here")]).toEqual([false, false]);
  }
  run.close();
});
