import { typedNotPutBack } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem } from "../../Workbook";
import { cellEntry } from "../writing/cellEntry";
import { excelProblem } from "../excelProblem";
import { isAlike, isFormula } from "../reading/heldCells";
import { inExcel } from "../inExcel";
import type { Displaced } from "./displaced";

/**
 * Gives cells back what was written over, each only as long as that stands there which took its place: whatever is newer stays.
 * @throws WorkbookProblem that names what may not stand any more
 */
export async function putBack(sheet: string, lost: readonly Displaced[]): Promise<void> {
  await inExcel((context) => writeBack(context, sheet, lost), { sheet }).catch((thrown: unknown) => {
    const { message } = excelProblem(thrown);
    throw new WorkbookProblem(typedNotPutBack(message, lost.map(({ cell, typed }) => [cell, String(typed)]))); // prettier-ignore
  });
}

async function writeBack(context: Excel.RequestContext, sheet: string, lost: readonly Displaced[]): Promise<void> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const now = lost.map((one) => ({ ...one, range: worksheet.getRange(one.cell).load("formulas") }));
  await context.sync();
  for (const { range, typed, written } of now) {
    const stands = range.formulas[0]?.[0] as string | number | boolean;
    if (isAlike(written, stands)) range.formulas = [[isFormula(typed) ? typed : cellEntry(typed)]];
  }
  await context.sync();
}
