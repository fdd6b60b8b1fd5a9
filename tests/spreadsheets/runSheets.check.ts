// Filled run sheets through a saved file: the formulas around our functions, calculated by an independent spreadsheet.
import { Workbook, type Cell, type Worksheet } from "exceljs";
import { inBuiltInFunctions } from "../../src/sharing/inBuiltInFunctions";
import { findCalls } from "../../src/sharing/findCalls";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { storedFormula, typedFormula } from "../../src/xlsx/formulas/storedFormula";
import type { CellReading } from "../../src/workbook/Workbook";
import { filledRuns } from "./filledRuns";
import { throughLibreOffice } from "./recalculated";

jest.setTimeout(180_000);

const WITHIN = 1e-11;

/**
 * Takes the values away that LibreOffice is to calculate, and writes calls out in built-in functions where that is possible.
 * What cannot be written out keeps the value it came with; the spill of an array formula, which would be lost, becomes values.
 */
function leaveToCalculate(cell: Cell): void {
  if (!cell.formula) return;
  const typed = typedFormula(cell.formula);
  const { shareType } = cell.model as { shareType?: string };
  const plain = findCalls(typed).length === 0 ? typed : inBuiltInFunctions(typed);
  if (plain !== undefined) cell.value = { formula: storedFormula(plain) };
  else if (shareType === "array") cell.value = cell.result as string;
}

const agrees = (other: unknown, ours: CellReading["value"]): boolean => {
  if (typeof other === "object" && other !== null && "error" in other) return other.error === ours;
  if (typeof ours !== "number") return (other ?? "") === (ours ?? "");
  return typeof other === "number" && Math.abs(other - ours) <= WITHIN * Math.max(Math.abs(ours), 1);
};

const valueOf = (cell: Cell): unknown => (cell.formula ? cell.result : cell.value instanceof Date ? "date" : cell.value);

describe.each(Object.keys(filledRuns))("a %s", (run) => {
  let given: Worksheet;
  let back: Worksheet;
  let shown: readonly CellReading[];
  beforeAll(async () => {
    const sheet = await filledRuns[run]?.();
    if (sheet === undefined) throw new Error(`no run ${run}`);
    shown = (await sheet.workbook.readUsed(sheet.name)).rows.flat();
    const file = new Workbook();
    await file.xlsx.load((await saveXlsx(sheet.engine)).buffer);
    sheet.close();
    given = file.getWorksheet(sheet.name) as Worksheet;
    given.eachRow((row) => row.eachCell(leaveToCalculate));
    back = (await throughLibreOffice(file)).getWorksheet(sheet.name) as Worksheet;
  });

  test("is calculated by LibreOffice as the sheet shows it", () => {
    const calculated = shown.filter(({ formula }) => formula !== "");
    expect(calculated.filter(({ value }) => typeof value === "number").length).toBeGreaterThan(10);
    const differences = calculated.flatMap(({ cell, formula, value }) => {
      const other = valueOf(back.getCell(cell));
      return agrees(other, value) ? [] : [{ cell, formula, value, other }];
    });
    expect(differences).toEqual([]);
  });
});
