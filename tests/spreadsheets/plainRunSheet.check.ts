// Blank run sheets that the command line makes in plain cells, filled with numbers and calculated by two independent spreadsheets: each number
// is that of the live sheet with the same weighings, but for those that need what only the add-in calculates.
import { Workbook, type Cell } from "exceljs";
import { plainRunSheet } from "../../src/command/sheet/plainRunSheet";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { cell } from "../../src/runsheet/expressions/Expression";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { plainFile } from "../../src/xlsx/handedOn/plainFile";
import { openRunSheet } from "../runsheet/openRunSheet";
import { clock } from "../runsheet/plainRun";
import { filledRuns } from "./filledRuns";
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
  for (const line of ["D1", "A2", "A3", "A4", "A5"]) expect([line, typeof back?.getCell(line).result]).toEqual([line, "string"]);
});

test.each(PROGRAMS)("%s names what was typed over, and withholds the answer only where it is calculated from that", async (program) => {
  const sheet = runSheet(checkOptions(OPTIONS));
  const blank = (await plainRunSheet(buildRunSheet(OPTIONS), "2027-01-15")).content.buffer;
  const [share, ofOthers] = [placeOf(sheet.share("volatile", 1)).replaceAll("$", ""), placeOf(sheet.drying.lost(14, 1))];
  const finding = `C${sheet.rows.checks.lines.at(-1)?.row ?? 0}`;
  const shown = async (...typed: readonly string[]): Promise<[finding: unknown, answer: unknown]> => {
    const file = new Workbook();
    await file.xlsx.load(blank);
    const run = file.worksheets[0];
    for (const [at, content] of [["C11", 212.4], ["C12", 262.85], ...typed.map((one) => [one, 0.5] as const)] as const) {
      const cell = run?.getCell(at);
      if (cell !== undefined) cell.value = content;
    }
    run?.eachRow((row) => row.eachCell(withoutAnswer));
    const back = (await recalculatedBy(program, file)).worksheets[0];
    return [back?.getCell(finding).result, back?.getCell("A2").result];
  };
  expect(String((await shown())[0] ?? "")).not.toMatch(/typed over/);
  const [named, kept] = await shown(ofOthers);
  expect([named, kept]).toEqual([expect.stringMatching(/^\? .*typed over/), expect.not.stringContaining("withheld")]);
  expect(named).toContain(program === "Gnumeric" ? "within" : `${ofOthers} was typed over`);
  const [withheld, answer] = await shown(share, ofOthers);
  expect([withheld, answer]).toEqual([expect.stringMatching(/^▲ .*typed over/), expect.stringContaining("▲ Answer withheld: a cell")]);
  if (program === "LibreOffice") for (const at of [share, ofOthers]) expect(withheld).toContain(at);
});

// What kind of error a refused weighing or setting gives differs from spreadsheet to spreadsheet; a colleague with plain cells lacks nothing.
const { settings, drying } = runSheet(checkOptions(OPTIONS));
const SLIPS = [
  [drying.box(17, 1), 256_190],
  [drying.box(13, 1), 0.25],
  [settings.criterion, "absolute"],
] as const;

test.each(PROGRAMS.flatMap((program) => SLIPS.map(([at, content]) => [program, content, placeOf(at), at] as const)))(
  "%s tells what is wrong with a refused %p in %s as the live sheet does, and not that Retort is missing",
  async (program, content, _, at) => {
    const rounds = DRYING.flatMap((grams, index) => [
      [cell(12 + index, 1), (9 + 0.5 * index) / 24] as const,
      [drying.box(12 + index, 1), grams] as const,
    ]);
    const live = await openRunSheet(OPTIONS);
    const file = new Workbook();
    await file.xlsx.load((await plainRunSheet(buildRunSheet(OPTIONS), "2027-01-15")).content.buffer);
    for (const [box, typed] of [[cell(11, 2), 212.4] as const, ...rounds, [at, content] as const]) {
      await live.type(box, typed);
      put(file, live.name, placeOf(box), typed);
    }
    const heads = ["D1", "A2", "A3"];
    const shown = (await live.workbook.readUsed(live.name)).rows.flat();
    live.close();
    file.eachSheet((sheet) => sheet.eachRow((row) => row.eachCell(withoutAnswer)));
    const back = (await recalculatedBy(program, file)).getWorksheet(live.name);
    const told = heads.map((line) => back?.getCell(line).result);
    expect(told).toEqual(heads.map((line) => shown.find((one) => one.cell === line)?.shown));
    expect(told[2]).toMatch(/^[▲?] .*\bcheck/);
  },
);

const WITH_COMPOSITION = "charring run of three samples with its composition, one on a tared balance";

test.each(PROGRAMS)("what open burning sends away is the same in plain cells when %s calculates it anew", async (program) => {
  const live = await filledRuns[WITH_COMPOSITION]?.();
  if (live === undefined) throw new Error(`no run ${WITH_COMPOSITION}`);
  const reading = await live.workbook.readUsed(live.name);
  const saved = new Uint8Array((await saveXlsx(live.engine)).buffer as ArrayBuffer);
  live.close();
  const openFire = reading.rows.flat().filter(({ formula, value }) => formula.includes("RETORT.BURN.COMPARE") && typeof value === "number");
  expect(openFire.length).toBeGreaterThan(10);

  const file = new Workbook();
  await file.xlsx.load((await plainFile(saved, { sheets: [reading], date: "2027-01-15" })).content.buffer);
  file.eachSheet((sheet) => sheet.eachRow((row) => row.eachCell(withoutAnswer)));
  // The file library reads clock times as dates, which come out a figure off.
  for (const { cell, formula, value } of reading.rows.flat())
    if (formula === "" && typeof value === "number" && !file.getWorksheet(live.name)?.getCell(cell).formula) put(file, live.name, cell, value);
  const back = (await recalculatedBy(program, file)).getWorksheet(live.name);
  const differing = openFire.flatMap(({ cell, value }) => {
    const other: unknown = back?.getCell(cell).result;
    const isSame = typeof other === "number" && Math.abs(other - Number(value)) <= WITHIN * Math.max(1, Math.abs(Number(value)));
    return isSame ? [] : [{ cell, value, other }];
  });
  expect(differing).toEqual([]);
});

function put(file: Workbook, sheet: string, cell: string, value: string | number): void {
  const found = file.getWorksheet(sheet)?.getCell(cell);
  if (found !== undefined) found.value = value;
}

/** Takes the stored answer away, so that the cell is calculated anew; what is over arrays stays so. */
function withoutAnswer(cell: Cell): void {
  if (!cell.formula) return;
  const isOverArrays = (cell.value as { shareType?: string }).shareType === "array";
  cell.value = isOverArrays ? { formula: cell.formula, shareType: "array", ref: cell.address } : { formula: cell.formula };
}
