// Filled run sheets through a saved file: the formulas around our functions, calculated by an independent spreadsheet.
import { Workbook, type Cell, type Worksheet } from "exceljs";
import { CellProblem } from "../../src/cells/CellProblem";
import { balanceBlocks } from "../../src/runsheet/blocks/balance/planBalanceSheet";
import { everyBlock } from "../../src/runsheet/buildRunSheet";
import { readRunSheet } from "../../src/runsheet/reading/readRunSheet";
import { inBuiltInFunctions } from "../sharing/inBuiltInFunctions";
import { findCalls } from "../../src/sharing/findCalls";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { storedFormula, typedFormula } from "../../src/xlsx/formulas/storedFormula";
import { areaNamed } from "../../src/workbook/areaNamed";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import { plainCells, type PlainCells } from "../runsheet/plainCells";
import { filledRuns } from "./filledRuns";
import { throughLibreOffice } from "./recalculated";

jest.setTimeout(180_000);

const WITHIN = 1e-11;

/**
 * Takes the values away that LibreOffice is to calculate, and writes calls out in built-in functions where that is possible.
 * What cannot be written out keeps the value it came with; the spill of an array formula, which would be lost, becomes values, and so does
 * an error, since LibreOffice calculates anew what came with one and would find our functions missing.
 */
function leaveToCalculate(cell: Cell): void {
  if (!cell.formula) return;
  const typed = typedFormula(cell.formula);
  const { shareType } = cell.model as { shareType?: string };
  const plain = findCalls(typed).length === 0 ? typed : inBuiltInFunctions(typed);
  if (plain !== undefined) cell.value = { formula: storedFormula(plain) };
  else if (shareType === "array" || isError(cell.result)) cell.value = cell.result as string;
}

const isError = (value: unknown): value is { readonly error: string } => typeof value === "object" && value !== null && "error" in value;

const agrees = (other: unknown, ours: CellReading["value"]): boolean => {
  if (isError(other)) return other.error === ours;
  if (typeof ours !== "number") return (other ?? "") === (ours ?? "");
  return typeof other === "number" && Math.abs(other - ours) <= WITHIN * Math.max(Math.abs(ours), 1);
};

const valueOf = (cell: Cell): unknown => (cell.formula ? cell.result : cell.value instanceof Date ? "date" : cell.value);

describe.each(Object.keys(filledRuns))("a %s", (run) => {
  let given: Worksheet;
  let back: Worksheet;
  let shown: readonly CellReading[];
  let without: Worksheet;
  let plain: PlainCells;
  beforeAll(async () => {
    const sheet = await filledRuns[run]?.();
    if (sheet === undefined) throw new Error(`no run ${run}`);
    shown = (await sheet.workbook.readUsed(sheet.name)).rows.flat();
    const reading = await sheet.workbook.readUsed(sheet.name);
    const saved = (await saveXlsx(sheet.engine)).buffer;
    const file = new Workbook();
    await file.xlsx.load(saved);
    sheet.close();
    plain = withoutOurs(reading);
    const stripped = new Workbook();
    await stripped.xlsx.load(saved);
    stripped.getWorksheet(sheet.name)?.eachRow((row) => row.eachCell(withoutValue));
    without = (await throughLibreOffice(stripped)).getWorksheet(sheet.name) as Worksheet;
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

  test("is calculated by LibreOffice, which has none of our functions, as its formulas read without them", () => {
    const calculated = shown.filter(({ formula }) => formula !== "");
    const differences = calculated.flatMap(({ cell, formula }) => {
      const { row, column } = areaNamed(cell);
      const own = plain.value({ kind: "cell", row: row + 1, column, fixed: "nothing" });
      const other = valueOf(without.getCell(cell));
      // Of an unknown name inside INDEX LibreOffice makes an error of its own.
      if (own instanceof CellProblem) return isError(other) ? [] : [{ cell, formula, own: own.code, other }];
      return agrees(other, own) ? [] : [{ cell, formula, own, other }];
    });
    expect(differences).toEqual([]);
  });
});

/** What is over arrays stays so. */
function withoutValue(cell: Cell): void {
  if (!cell.formula) return;
  const isOverArrays = (cell.value as { shareType?: string }).shareType === "array";
  cell.value = isOverArrays ? { formula: cell.formula, shareType: "array", ref: cell.address } : { formula: cell.formula };
}

/** The sheet's formulas on what was typed into it, worked out here as where our functions are not known. */
function withoutOurs(reading: RangeReading): PlainCells {
  const read = readRunSheet(reading);
  if (read.is !== "whole" && read.is !== "balance") throw new Error(`no run sheet: ${read.is}`);
  const { cells } = read.is === "whole" ? everyBlock(read.sheet) : balanceBlocks(read.sheet);
  const found = plainCells(cells, true);
  for (const { cell, formula, value } of reading.rows.flat()) {
    const { row, column } = areaNamed(cell);
    if (formula === "" && value !== null) found.type({ kind: "cell", row: row + 1, column, fixed: "nothing" }, value);
  }
  return found;
}
