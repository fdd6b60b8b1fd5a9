// Blank run sheets that the command line makes in plain cells, filled with numbers and calculated by two independent spreadsheets: each number
// is that of the live sheet with the same weighings, but for those that need what only the add-in calculates.
import { Workbook } from "exceljs";
import { plainRunSheet } from "../../src/command/sheet/plainRunSheet";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { openRunSheet } from "../runsheet/openRunSheet";
import { clock } from "../runsheet/plainRun";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

const WITHIN = 1e-11;
const OPTIONS: RunSheetOptions = { kind: "charring", weighIns: 7, intervalMinutes: 30, vessel: "tin", readability: 0.01, replicates: 1 };
const DRYING = [262.85, 258.92, 256.88, 256.2, 256.19, 256.19];

test.each(PROGRAMS)("a filled charring run in plain cells is calculated by %s as the live sheet shows it", async (program) => {
  const live = await openRunSheet(OPTIONS);
  await live.vessel(212.4, 1);
  for (const [index, grams] of DRYING.entries()) await live.round(index + 1, clock(9, 30 * index), grams, 1);
  const shown = (await live.workbook.readUsed(live.name)).rows.flat();
  live.close();

  const file = new Workbook();
  await file.xlsx.load((await plainRunSheet(buildRunSheet(OPTIONS), "2027-01-15")).content.buffer);
  const sheet = file.getWorksheet(live.name);
  if (sheet === undefined) throw new Error(`no sheet ${live.name}`);
  for (const { cell, formula, value } of shown)
    if (formula === "" && value !== null && !sheet.getCell(cell).formula) sheet.getCell(cell).value = value;
  const back = (await recalculatedBy(program, file)).getWorksheet(live.name);

  const numbers = shown.filter(({ formula, value }) => formula !== "" && typeof value === "number");
  expect(numbers.length).toBeGreaterThan(10);
  const differing = numbers.flatMap(({ cell, formula, value }) => {
    const other = back?.getCell(cell).result ?? back?.getCell(cell).value;
    const isSame = typeof other === "number" && Math.abs(other - Number(value)) <= WITHIN * Math.max(1, Math.abs(Number(value)));
    return isSame || formula.includes("RETORT.DRYING.END") ? [] : [{ cell, formula, value, other }];
  });
  expect(differing).toEqual([]);
});
