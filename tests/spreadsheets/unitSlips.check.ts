// What a sheet says of kilograms, milligrams and clock times typed in the wrong place, by both programs, which calculate the checks anew.
import { Workbook, type Cell } from "exceljs";
import { findCalls } from "../../src/sharing/findCalls";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { storedFormula, typedFormula } from "../../src/xlsx/formulas/storedFormula";
import { clock } from "../runsheet/plainRun";
import { openRunSheet, type OpenRunSheet } from "../runsheet/openRunSheet";
import { cell } from "../../src/runsheet/expressions/Expression";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(240_000);

const common = { weighIns: 5, intervalMinutes: 30, vessel: "lidded tin", readability: 0.01, replicates: 2 } as const;
type Fill = (sheet: OpenRunSheet) => Promise<void>;

const rounds: (per: number, vessel: number | string) => Fill = (per, vessel) => async (sheet) => {
  for (const sample of [1, 2]) {
    await sheet.vessel(sample === 2 && typeof vessel === "number" ? vessel * per : vessel, sample);
    for (const [index, grams] of [30.28, 24.06, 20.85].entries()) {
      const weight = Math.round((grams + (typeof vessel === "number" ? vessel : 0)) * 100) / 100;
      await sheet.round(index + 1, sample === 1 ? clock(9, 30 * index) : null, sample === 2 ? Number((weight * per).toPrecision(9)) : weight, sample);
    }
  }
};
const slip = (row: number, grams: number): Fill => (sheet) => sheet.type(sheet.sheet.drying.box(sheet.sheet.rows.drying.first + row, 2), grams); // prettier-ignore

const CASES: readonly (readonly [what: string, timing: "clock" | "minutes", fills: readonly Fill[], check: "vessel" | "times", says: string])[] = [
  ["a round in kilograms", "clock", [rounds(1, 41.86), slip(1, 0.06592)], "vessel", "D13 and D11 cannot both be grams"],
  ["a round in milligrams", "clock", [rounds(1, 41.86), slip(1, 65_920)], "vessel", "D12 and D13 cannot both be grams"],
  ["a round in kilograms on a tared balance", "clock", [rounds(1, "tared"), slip(1, 0.024)], "vessel", "D13 and D14 cannot both be grams"],
  ["a text beside it", "clock", [rounds(1, "tared"), (sheet) => sheet.type(sheet.sheet.drying.box(sheet.sheet.rows.drying.first + 3, 2), "spilt"), slip(1, 65_920)], "vessel", "D12 and D13 cannot both be grams"], // prettier-ignore
  ["one sample in kilograms", "clock", [rounds(1 / 1000, 41.86)], "vessel", "D14 is finer than the balance's step"],
  ["one sample in milligrams", "clock", [rounds(1000, 41.86)], "vessel", "D12 is too much for a balance of the step in"],
  ["no slip", "clock", [rounds(1, 41.86)], "vessel", ""],
  ["clock times among minutes", "minutes", [rounds(1, 41.86)], "times", "B14 is a clock time, and this sheet counts minutes."],
  ["one clock time among minutes", "minutes", [rounds(1, 41.86), ...[0, 30].map((minute, index): Fill => (sheet) => sheet.type(cell(sheet.sheet.rows.drying.first + index, 1), minute))], "times", "B14 is a clock time"], // prettier-ignore
];

/** Takes the values away that the programs are to calculate; a formula with a call of ours keeps its value, and one over arrays stays so. */
function leaveToCalculate(at: Cell): void {
  if (!at.formula) return;
  const typed = typedFormula(at.formula);
  const isOverArrays = (at.value as { shareType?: string }).shareType === "array";
  const left = { formula: storedFormula(typed), ...(isOverArrays ? { shareType: "array" as const, ref: at.address } : {}) };
  at.value = findCalls(typed).length === 0 ? left : (at.result as string);
}

describe.each(CASES)("%s", (_what, timing, fills, check, says) => {
  let saved: ArrayBuffer | Uint8Array;
  let row = 0;
  let shown = "";
  let name = "";
  beforeAll(async () => {
    const sheet = await openRunSheet({ ...common, kind: "charring", timing });
    for (const fill of fills) await fill(sheet);
    row = sheet.sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
    name = sheet.name;
    shown = String((await sheet.workbook.read(sheet.name, `C${row}`)).rows[0]?.[0]?.value ?? "");
    saved = (await saveXlsx(sheet.engine)).buffer as ArrayBuffer;
    sheet.close();
  });

  test("is found by the sheet", () => {
    expect(says === "" ? shown === "" : shown.includes(says)).toBe(true);
  });

  test.each(PROGRAMS)("%s says the same", async (program) => {
    const file = new Workbook();
    await file.xlsx.load(saved as ArrayBuffer);
    file.getWorksheet(name)?.eachRow((one) => one.eachCell(leaveToCalculate));
    const back = await recalculatedBy(program, file);
    expect(String(back.getWorksheet(name)?.getCell(`C${row}`).result ?? "")).toBe(shown);
  });
});
