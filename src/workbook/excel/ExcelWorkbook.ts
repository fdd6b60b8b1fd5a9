import { cellNotBlank, formulaNotAccepted, notACellFormula } from "../../problems/workbookProblems";
import { areaNamed } from "../areaNamed";
import { freeSheetName } from "../freeSheetName";
import type { SheetPlan } from "../SheetPlan";
import { WorkbookProblem, type CellAddress, type FrozenArea, type RangeReading, type Workbook } from "../Workbook";
import { addPlannedSheet, sheetNames } from "./addPlannedSheet";
import { HOST } from "./excelProblem";
import { freezeAreas } from "./freezeAreas";
import { inExcel } from "./inExcel";
import { readCells, withoutSheet } from "./readCells";
import { watchSelection } from "./selectionEvents";

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

  async writeFormula({ sheet, cell }: CellAddress, formula: string): Promise<void> {
    areaNamed(cell);
    if (!formula.startsWith("=")) throw new WorkbookProblem(notACellFormula(formula));
    await inExcel(
      async (context) => {
        const range = context.workbook.worksheets.getItem(sheet).getRange(cell).load("valueTypes");
        await context.sync();
        if (range.valueTypes[0]?.[0] !== Excel.RangeValueType.empty) throw new WorkbookProblem(cellNotBlank(cell));
        range.formulas = [[formula]];
        await context.sync().catch((thrown: unknown) => {
          throw isRefusal(thrown) ? new WorkbookProblem(formulaNotAccepted(formula)) : thrown;
        });
      },
      { sheet },
    );
  }

  addSheet(plan: SheetPlan): Promise<string> {
    return addPlannedSheet(plan);
  }

  copySheet(sheet: string, wantedName: string): Promise<string> {
    return inExcel(
      async (context) => {
        const name = freeSheetName(wantedName, await sheetNames(context));
        const copy = context.workbook.worksheets.getItem(sheet).copy(Excel.WorksheetPositionType.end);
        copy.name = name;
        await context.sync();
        return name;
      },
      { sheet },
    );
  }

  freeze(sheet: string, areas: readonly FrozenArea[]): Promise<void> {
    return inExcel((context) => freezeAreas(context, sheet, areas), { sheet, oneUndoStep: FREEZING });
  }
}

/** Frozen twice is frozen: nothing has to be cleared away before a second attempt. */
const FREEZING = { startOver: () => Promise.resolve() };

const isRefusal = (thrown: unknown): boolean => thrown instanceof OfficeExtension.Error && thrown.code === "InvalidArgument";
