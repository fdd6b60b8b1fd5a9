import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName } from "../freeSheetName";
import type { SheetPlan } from "../SheetPlan";
import { inExcel } from "./inExcel";
import { drawChart } from "./drawChart";
import { writePlan } from "./writePlan";

/**
 * Makes the planned sheet at the end of the workbook. What cannot be finished is taken away again.
 * @returns the sheet's name
 */
export async function addPlannedSheet(plan: SheetPlan): Promise<string> {
  checkSheetPlan(plan);
  const name = freeSheetName(plan.name, await inExcel(sheetNames));
  const startOver = (): Promise<void> => inExcel((context) => withdraw(context, name));
  try {
    await inExcel((context) => writeSheet(context, name, plan), { oneUndoStep: { startOver } });
  } catch (problem) {
    await startOver().catch(() => undefined); // the first problem is the one to tell
    throw problem;
  }
  return name;
}

export async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  return sheets.items.map(({ name }) => name);
}

async function writeSheet(context: Excel.RequestContext, name: string, plan: SheetPlan): Promise<void> {
  const worksheet = context.workbook.worksheets.add(name);
  await writePlan(context, worksheet, plan);
  if (plan.chart) await drawChart(context, worksheet, plan.chart);
  worksheet.activate();
  worksheet.getRange(plan.startAt).select();
  await context.sync();
}

async function withdraw(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (!sheet.isNullObject) sheet.delete();
  await context.sync();
}
