import { cellNotBlank, changedSince, notACellFormula } from "../../problems/workbook/workbookProblems";
import { areaNamed } from "../areaNamed";
import type { CellsBeside } from "../CellsBeside";
import type { FirstScreen } from "../OutOfView";
import type { Grown, SheetGrowth } from "../SheetGrowth";
import type { SheetPlan } from "../SheetPlan";
import {
  WorkbookProblem,
  type Calculation,
  type CellAddress,
  type CellContent,
  type CellLook,
  type CopyMade,
  type CopyWithValues,
  type InputsReading,
  type RangeReading,
  type Reentered,
  type Reentry,
  type Removal,
  type SettledReading,
  type UnfinishedSheet,
  type WantedCells,
  type Workbook,
} from "../Workbook";
import { addPlannedSheet } from "./addPlannedSheet";
import { copyWithValues } from "./copying/copyWithValues";
import { HOST } from "./excelProblem";
import { growSheet } from "./growing/growSheet";
import { inExcel } from "./inExcel";
import { askForCalculation, askForLook } from "./reading/lookAtCell";
import { readCells, withoutSheet } from "./reading/readCells";
import { readInputs } from "./reading/readInputs";
import { watchSelection } from "./reading/selectionEvents";
import { sheetsThere } from "./unfinished/sheetMark";
import { cellsBeside } from "./reading/cellsBeside";
import { firstScreen } from "./reading/firstScreen";
import { readSettled } from "./reading/readSettled";
import { removeUnfinished, unfinishedSheets } from "./unfinished/unfinishedSheets";
import { reenterFormulas } from "./writing/reenterFormulas";
import { replaceValue } from "./writing/replaceValue";
import { writeFormula } from "./writing/writeFormula";

/** The workbook that is open in Excel, through Office.js. Needs ExcelApi 1.9; spills and undo steps need later sets. */
export class ExcelWorkbook implements Workbook {
  readonly name = HOST;
  readonly drawsCharts = true;

  sheetNames(): Promise<readonly string[]> {
    return inExcel(async (context) => (await sheetsThere(context)).map(({ name }) => name));
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

  onSelection(listener: (look: CellLook) => void, isWanted?: () => boolean): Promise<() => Promise<void>> {
    return watchSelection(listener, isWanted);
  }

  calculation(): Promise<Calculation> {
    return inExcel(async (context) => {
      const found = askForCalculation(context);
      await context.sync();
      return found();
    });
  }

  async look(address?: CellAddress): Promise<CellLook> {
    if (address !== undefined) areaNamed(address.cell);
    return inExcel(
      async (context) => {
        const found = askForLook(context, address);
        await context.sync();
        return found();
      },
      address === undefined ? {} : { sheet: address.sheet },
    );
  }

  async readInputs(address: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading> {
    const elsewhere = wanted.find(({ sheet }) => sheet !== address.sheet);
    return inExcel((context) => readInputs(context, address, wanted), { sheet: elsewhere?.sheet ?? address.sheet });
  }

  holdsText(sheet: string, text: string): Promise<boolean> {
    return inExcel(
      async (context) => {
        const found = context.workbook.worksheets.getItem(sheet).findAllOrNullObject(text, { completeMatch: true, matchCase: true });
        await context.sync();
        return !found.isNullObject;
      },
      { sheet },
    );
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

  firstScreen(sheet: string): Promise<FirstScreen> {
    return inExcel((context) => firstScreen(context, sheet), { sheet });
  }

  cellsBeside(sheet: string): Promise<CellsBeside> {
    return inExcel((context) => cellsBeside(context, sheet), { sheet });
  }

  readSettled(sheet: string, asShown: boolean): Promise<SettledReading> {
    return inExcel((context) => readSettled(context, sheet, asShown), { sheet });
  }

  async writeFormula(address: CellAddress, formula: string): Promise<void> {
    areaNamed(address.cell);
    if (!formula.startsWith("=")) throw new WorkbookProblem(notACellFormula(formula));
    await writeFormula(address, formula);
  }

  async replaceValue(address: CellAddress, held: CellContent, content: CellContent): Promise<void> {
    areaNamed(address.cell);
    await replaceValue(address, held, content, held === null ? cellNotBlank : changedSince);
  }

  addSheet(plan: SheetPlan): Promise<string> {
    return addPlannedSheet(plan);
  }

  copyWithValues(sheet: string, wanted: CopyWithValues): Promise<CopyMade> {
    return copyWithValues(sheet, wanted);
  }

  reenter(sheet: string, cells: readonly Reentry[]): Promise<Reentered> {
    return reenterFormulas(sheet, cells);
  }

  growSheet(sheet: string, growth: SheetGrowth): Promise<Grown> {
    return growSheet(sheet, growth);
  }

  unfinishedSheets(): Promise<readonly UnfinishedSheet[]> {
    return inExcel(unfinishedSheets);
  }

  removeUnfinished(sheet: UnfinishedSheet, asked: boolean): Promise<Removal> {
    return removeUnfinished(sheet, asked);
  }
}
