import { nameJustTaken } from "../../problems/workbookProblems";
import { areaToFill } from "../areaNamed";
import { cellAt, rangeOf, type CellArea } from "../cellArea";
import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName, unfinishedCopyName } from "../freeSheetName";
import { WorkbookProblem, type CellContent, type CopyWithValues } from "../Workbook";
import { beginSheet, sheetNames } from "./addPlannedSheet";
import { cellEntry } from "./cellEntry";
import { isErrorCode } from "./errorCodes";
import { inExcel } from "./inExcel";
import { CELLS_A_REQUEST, inRequests } from "./inRequests";
import { mark, unmark } from "./sheetMark";
import { wholeOrNothing, type Attempt } from "./wholeOrNothing";
import { writePlan } from "./writePlan";

interface FilledArea {
  readonly area: CellArea;
  readonly values: readonly (readonly CellContent[])[];
}

/**
 * Copies a sheet with values in place of cell formulas, and makes the sheet beside it. No part of this can be one step of
 * Excel's undo: copying and naming a sheet cannot be undone (Office Add-ins documentation, "Undo capabilities").
 */
export async function copyWithValues(sheet: string, wanted: CopyWithValues): Promise<void> {
  checkSheetPlan(wanted.beside);
  const filled = wanted.areas.map((area) => ({ area: areaToFill(area), values: area.values }));
  await wholeOrNothing(async (attempt) => {
    const taken = await inExcel(sheetNames);
    for (const name of [wanted.name, wanted.beside.name]) if (freeSheetName(name, taken) !== name) throw new WorkbookProblem(nameJustTaken);
    const copyName = unfinishedCopyName(sheet, taken);
    attempt.names = [copyName, wanted.beside.name];
    await inExcel((context) => makeCopy(context, sheet, { ...wanted, copyName, filled }, attempt), { sheet });
  });
}

type CopyUnderWay = CopyWithValues & { readonly copyName: string; readonly filled: readonly FilledArea[] };

async function makeCopy(context: Excel.RequestContext, sheet: string, wanted: CopyUnderWay, attempt: Attempt): Promise<void> {
  const copy = context.workbook.worksheets.getItem(sheet).copy(Excel.WorksheetPositionType.end);
  mark(copy, attempt.token);
  copy.name = wanted.copyName;
  copy.load("id");
  await context.sync();
  attempt.made.push(copy.id);
  await freeze(context, copy, wanted.filled);
  const beside = beginSheet(context, wanted.beside.name, wanted.beside, attempt);
  await writePlan(context, beside, wanted.beside);
  attempt.made.push(beside.id);
  attempt.names = [wanted.copyName, wanted.name, wanted.beside.name];
  // Only now may the copy say that it holds values. The marks go last: a sheet without one is whole.
  copy.name = wanted.name;
  unmark(copy);
  unmark(beside);
  await context.sync();
}

/**
 * Puts values where formulas stood; formats stay. The first cell of a spill goes first: with its formula gone, the cells
 * it filled are free to take their values.
 */
async function freeze(context: Excel.RequestContext, worksheet: Excel.Worksheet, filled: readonly FilledArea[]): Promise<void> {
  await inRequests(context, filled, { limit: CELLS_A_REQUEST, weigh: ({ area }) => area.rows * area.columns }, ({ area, values }) => {
    const entries = values.map((row) => row.map(frozenEntry));
    if (area.rows * area.columns > 1) worksheet.getRange(cellAt(area.row, area.column)).values = [entries[0]?.slice(0, 1) ?? []];
    worksheet.getRange(rangeOf(area)).values = entries;
  });
}

/**
 * Text that is empty stays text: as a blank cell it would count as 0 in formulas that stay. An error stays that error.
 * The empty string clears a cell, since null would leave it as it is.
 */
function frozenEntry(value: CellContent): string | number | boolean {
  if (value === null) return "";
  return isErrorCode(value) ? value : cellEntry(value);
}
