import { generateRandomId, type IDataValidationRule, type IWorksheetData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { SheetPlan } from "../SheetPlan";
import type { Bench } from "./Bench";
import { dataValidation } from "./dataValidation";
import { fitRowHeights } from "./fitRowHeights";
import { worksheetData } from "./worksheetData";

const ADD_RULE = "sheet.command.addDataValidation";

/** A sheet in the engine's own terms, not yet part of a workbook. */
export interface GridSheet {
  readonly name: string;
  readonly data: Partial<IWorksheetData>;
  readonly rules: readonly IDataValidationRule[];
}

export const gridSheet = (plan: SheetPlan, name: string): GridSheet => ({
  name,
  data: worksheetData(plan, generateRandomId(), name),
  rules: plan.entryRules.map((rule) => dataValidation(rule, generateRandomId())),
});

/** Adds the sheet after the last one. */
export function insertGridSheet(bench: Bench, { name, data, rules }: GridSheet): FWorksheet {
  const sheet = bench.book.insertSheet(name, { index: bench.book.getNumSheets(), sheet: data });
  for (const rule of rules) bench.api.syncExecuteCommand(ADD_RULE, { unitId: bench.book.getId(), subUnitId: sheet.getSheetId(), rule });
  return sheet;
}

/** Puts the sheets in place of all that are open and calculates them. */
export async function replaceSheets(bench: Bench, sheets: readonly GridSheet[]): Promise<void> {
  const before = bench.book.getSheets();
  // A workbook is never without a sheet, so the old ones stay, under names that nobody gives, until the new ones are in.
  before.forEach((sheet) => sheet.setName(generateRandomId()));
  const added = sheets.map((sheet) => insertGridSheet(bench, sheet));
  if (added[0] !== undefined) bench.book.setActiveSheet(added[0]);
  before.forEach((sheet) => bench.book.deleteSheet(sheet));
  // A formula may name a sheet that came after its own.
  bench.api.getFormula().executeCalculation();
  await bench.settled();
  added.forEach((sheet) => fitRowHeights(bench, sheet));
}
