import { changedMeanwhile, sheetFiltered, workbookProtected } from "../../../problems/workbook/workbookProblems";
import { checkSheetPlan } from "../../checkSheetPlan";
import { typedCells } from "../../holdsTheSame";
import type { Grown, SheetGrowth } from "../../SheetGrowth";
import { WorkbookProblem, type RangeReading } from "../../Workbook";
import { excelProblem } from "../excelProblem";
import { askForHeld, isAlike, type HeldCells } from "../reading/heldCells";
import { inExcel } from "../inExcel";
import { askAndGrow } from "./askAndGrow";
import { displaced } from "./displaced";
import { askForCharts, askForSeries, type ChartThere } from "./followChart";
import { askForEmphasis } from "./followEmphasis";
import { putBack } from "./putBack";

/**
 * Grows a sheet: a request that asks what stands there and what hangs on it, one for the chart's lines with a last look at the cells,
 * and one that does everything. What somebody typed in between, over a cell to be written, is put back in one more.
 */
export async function growSheet(sheet: string, growth: SheetGrowth): Promise<Grown> {
  checkSheetPlan(growth.plan);
  const { before, failed } = await inExcel((context) => grow(context, sheet, growth), { sheet });
  const lost = displaced(growth, before);
  if (lost.length > 0) await putBack(sheet, lost);
  if (failed !== undefined) throw excelProblem(failed, sheet);
  return { kept: lost.map(({ cell }) => cell) };
}

interface Answered {
  readonly before: HeldCells;
  /** Why the request broke off; undefined where all of it was done. */
  readonly failed: unknown;
}

async function grow(context: Excel.RequestContext, sheet: string, growth: SheetGrowth): Promise<Answered> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const hanging = await lookAt(context, worksheet, sheet, growth);
  const before = askAndGrow(worksheet, growth, hanging);
  try {
    await context.sync();
  } catch (failed) {
    return { before: asFarAsTold(before), failed };
  }
  return { before: before(), failed: undefined };
}

/** Also a request that broke off half-way tells what it found before, unless its whole answer was lost. */
function asFarAsTold(before: () => HeldCells): HeldCells {
  try {
    return before();
  } catch {
    return new Map();
  }
}

/** What hangs on the sheet beside its cells. */
export interface Hanging {
  readonly emphasis: readonly Excel.ConditionalFormat[];
  readonly charts: readonly ChartThere[];
}

async function lookAt(context: Excel.RequestContext, worksheet: Excel.Worksheet, sheet: string, { plan, read }: SheetGrowth): Promise<Hanging> {
  worksheet.protection.load("protected");
  worksheet.autoFilter.load("isDataFiltered");
  const emphasis = askForEmphasis(worksheet, plan);
  const charts = askForCharts(worksheet, plan);
  await context.sync();
  if (worksheet.protection.protected) throw new WorkbookProblem(workbookProtected);
  if (worksheet.autoFilter.isDataFiltered) throw new WorkbookProblem(sheetFiltered(sheet));
  const series = askForSeries(charts());
  const held = askForHeld(worksheet);
  await context.sync();
  if (!holdsWhatWasRead(held(), read)) throw new WorkbookProblem(changedMeanwhile(sheet));
  return { emphasis: emphasis(), charts: series() };
}

/** Cells that a spill fills are no one's typing and are left out; Excel reads an empty text and a blank cell out alike. */
function holdsWhatWasRead(held: HeldCells, read: RangeReading): boolean {
  const typed = new Map([...typedCells(read)].filter(([, entry]) => entry !== ""));
  const filled = new Set(read.rows.flat().flatMap(({ cell, value }) => (value !== null && !typed.has(cell) ? [cell] : [])));
  const there = [...held].filter(([cell]) => !filled.has(cell));
  return there.length === typed.size && there.every(([cell, entry]) => isAlike(typed.get(cell), entry));
}
