import { generateRandomId, type IDataValidationRule, type IWorksheetData } from "@univerjs/core";
import { RemoveSheetMutation } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { SheetPlan } from "../../SheetPlan";
import { namesIn, replaceNames, type GridName } from "./definedNames";
import { asNoStep, forgetSteps } from "../engine/asOneStep";
import type { GridEngine } from "../GridEngine";
import { addRule, dataValidation } from "./entryRules";
import { fitRowHeights } from "./fitRowHeights";
import { worksheetData } from "./worksheetData";

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
export function insertGridSheet(engine: GridEngine, { name, data, rules }: GridSheet): FWorksheet {
  const sheet = engine.book.insertSheet(name, { index: engine.book.getNumSheets(), sheet: data });
  for (const rule of rules) addRule(engine, sheet, rule);
  return sheet;
}

/**
 * Puts the sheets and names in place of all that are open and calculates them. Where that fails, what was open stays. It is no step that could be
 * taken back: what came in would go out again sheet by sheet, and what was open does not come back.
 */
export async function replaceSheets(engine: GridEngine, sheets: readonly GridSheet[], names: readonly GridName[] = []): Promise<void> {
  const added = asNoStep(engine, () => replace(engine, sheets, names));
  forgetSteps(engine);
  // A formula may name a sheet that came after its own.
  engine.api.getFormula().executeCalculation();
  await engine.settled();
  asNoStep(engine, () => added.forEach((sheet) => fitRowHeights(engine, sheet)));
}

function replace(engine: GridEngine, sheets: readonly GridSheet[], names: readonly GridName[]): FWorksheet[] {
  const before = engine.book.getSheets().map((sheet) => ({ sheet, name: sheet.getSheetName() }));
  const namesBefore = namesIn(engine);
  const added: FWorksheet[] = [];
  try {
    // A workbook is never without a sheet, so the old ones stay, under names that nobody gives, until the new ones are in.
    before.forEach(({ sheet }) => sheet.setName(generateRandomId()));
    for (const sheet of sheets) added.push(insertGridSheet(engine, sheet));
    replaceNames(engine, names);
  } catch (problem) {
    added.forEach((sheet) => engine.book.deleteSheet(sheet));
    before.forEach(({ sheet, name }) => sheet.setName(name));
    replaceNames(engine, namesBefore);
    throw problem;
  }
  if (added[0] !== undefined) engine.book.setActiveSheet(added[0]);
  before.forEach(({ sheet }) => removeUnnoticed(engine, sheet));
  return added;
}

/**
 * Takes away a sheet that no formula names, by the change alone: the command goes through every formula of the workbook for each sheet, 1.6 s
 * for 20,000 of them.
 */
const removeUnnoticed = ({ api, book }: GridEngine, sheet: FWorksheet): void =>
  void api.syncExecuteCommand(RemoveSheetMutation.id, { unitId: book.getId(), subUnitId: sheet.getSheetId(), subUnitName: sheet.getSheetName() });
