import { notACellFormula } from "../../problems/workbookProblems";
import { areaNamed } from "../areaNamed";
import type { SheetPlan } from "../SheetPlan";
import { WorkbookProblem, type CellAddress, type CopyWithValues, type RangeReading, type UnfinishedSheet, type Workbook } from "../Workbook";
import { addPlannedSheet, sheetNames } from "./addPlannedSheet";
import { copyWithValues } from "./copyWithValues";
import { HOST } from "./excelProblem";
import { inExcel } from "./inExcel";
import { readCells, withoutSheet } from "./readCells";
import { watchSelection } from "./selectionEvents";
import { sheetsWithMarks } from "./sheetMark";
import { writeFormula } from "./writeFormula";

/** The workbook that is open in Excel, through Office.js. Needs ExcelApi 1.9; spills and undo steps need later sets. */
export class ExcelWorkbook implements Workbook {
  readonly name = HOST;
  readonly drawsCharts = true;

  sheetNames(): Promise<readonly string[]> {
    return inExcel(sheetNames);
  }

  selectedCell(): Promise<CellAddress> {
    return inExcel(async (context) => {
      const cell = context.workbook.getActiveCell().load(["address", "worksheet/name"]);
      await context.sync();
      return { sheet: cell.worksheet.name, cell: withoutSheet(cell.address) };
    });
  }

  async select({ sheet, cell }: CellAddress): Promise<void> {
    areaNamed(cell);
    await inExcel(
      async (context) => {
        const worksheet = context.workbook.worksheets.getItem(sheet);
        worksheet.activate();
        worksheet.getRange(cell).select();
        await context.sync();
      },
      { sheet },
    );
  }

  onSelection(listener: (address: CellAddress) => void): Promise<() => Promise<void>> {
    return watchSelection(listener);
  }

  async read(sheet: string, range: string): Promise<RangeReading> {
    const area = areaNamed(range);
    return inExcel((context) => readCells(context, sheet, area), { sheet });
  }

  readUsed(sheet: string): Promise<RangeReading> {
    return inExcel(
      async (context) => {
        const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true).load("address");
        await context.sync();
        return used.isNullObject ? { sheet, range: "", rows: [] } : readCells(context, sheet, areaNamed(withoutSheet(used.address)));
      },
      { sheet },
    );
  }

  async writeFormula(address: CellAddress, formula: string): Promise<void> {
    areaNamed(address.cell);
    if (!formula.startsWith("=")) throw new WorkbookProblem(notACellFormula(formula));
    await writeFormula(address, formula);
  }

  addSheet(plan: SheetPlan): Promise<string> {
    return addPlannedSheet(plan);
  }

  copyWithValues(sheet: string, wanted: CopyWithValues): Promise<void> {
    return copyWithValues(sheet, wanted);
  }

  async unfinishedSheets(): Promise<readonly UnfinishedSheet[]> {
    const sheets = await inExcel(sheetsWithMarks);
    return sheets.filter(({ token }) => token !== "").map(({ id, name }) => ({ id, name }));
  }

  removeUnfinished({ id }: UnfinishedSheet): Promise<boolean> {
    return inExcel(async (context) => {
      const sheets = await sheetsWithMarks(context);
      if (!sheets.some((sheet) => sheet.id === id && sheet.token !== "")) return false;
      context.workbook.worksheets.getItem(id).delete();
      await context.sync();
      return true;
    });
  }
}
