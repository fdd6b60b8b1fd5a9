import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName } from "../freeSheetName";
import type { SheetPlan } from "../SheetPlan";
import { beginChart, finishChart } from "./drawChart";
import { inExcel } from "./inExcel";
import { mark, unmark } from "./sheetMark";
import { wholeOrNothing, type Attempt } from "./wholeOrNothing";
import { writePlan } from "./writePlan";

/**
 * Makes the planned sheet at the end of the workbook: one request for the names, one for the sheet, one to finish.
 * @returns the sheet's name
 */
export async function addPlannedSheet(plan: SheetPlan): Promise<string> {
  checkSheetPlan(plan);
  const { names } = await wholeOrNothing(async (attempt) => {
    const name = freeSheetName(plan.name, await inExcel(sheetNames));
    attempt.names = [name];
    await inExcel((context) => makeSheet(context, name, plan, attempt), { oneUndoStep: attempt.oneUndoStep });
  });
  return names[0] ?? plan.name;
}

export async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  return sheets.items.map(({ name }) => name);
}

async function makeSheet(context: Excel.RequestContext, name: string, plan: SheetPlan, attempt: Attempt): Promise<void> {
  const worksheet = beginSheet(context, name, plan, attempt);
  const chart = plan.chart && beginChart(worksheet, plan.chart);
  await writePlan(context, worksheet, plan);
  attempt.made.push(worksheet.id);
  if (plan.chart && chart) finishChart(worksheet, chart, plan.chart);
  worksheet.activate();
  worksheet.getRange(plan.startAt).select();
  // Last of all: a sheet without the mark is whole.
  unmark(worksheet);
  await context.sync();
}

/** Asks for a new sheet with the attempt's mark on it. */
export function beginSheet(context: Excel.RequestContext, name: string, plan: SheetPlan, { token, plans }: Attempt): Excel.Worksheet {
  const worksheet = context.workbook.worksheets.add(name);
  mark(worksheet, token);
  plans.set(name, plan);
  return worksheet.load("id");
}
