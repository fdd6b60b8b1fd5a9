import { generateRandomId, type ICellData, type IObjectMatrixPrimitiveType } from "@univerjs/core";
import { SetRangeValuesMutation, SetSelectionsOperation, SetStyleCommand } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaNamed } from "../areaNamed";
import { areasPutIn, rowAfter, type SheetGrowth } from "../SheetGrowth";
import type { PlannedCell, SheetPlan } from "../SheetPlan";
import { cellData } from "./cellData";
import { addRule, dataValidation } from "./entryRules";
import type { GridEngine } from "./GridEngine";
import { gridStyle, rowPixelsOf } from "./worksheetData";

const REMOVE_RULE = "sheet.command.remove-data-validation-rule";
const SET_VALUES = "sheet.command.set-range-values";

/** Grows a sheet of the grid. Nothing comes in between and nothing breaks off half-way, so `begun` is not written. */
export async function growGridSheet(engine: GridEngine, sheet: FWorksheet, growth: SheetGrowth): Promise<void> {
  const { plan, steps, written, dressed, ended } = growth;
  const selected = sheet.getSelection()?.getCurrentCell();
  for (const { above, count } of steps) sheet.insertRowsBefore(above - 1, count);
  if (selected && steps.length > 0) selectAgain(engine, sheet, rowAfter(selected.actualRow + 1, steps) - 1, selected.actualColumn);
  // A row put in takes the looks of the one above it.
  for (const { row, rows, columns } of areasPutIn(steps, plan.columnWidths.length)) sheet.getRange(row, 0, rows, columns).clearFormat();
  setRules(engine, sheet, plan);
  for (const { from, to, height } of plan.rowHeights ?? []) sheet.setRowHeightsForced(from - 1, to - from + 1, rowPixelsOf(height));
  sheet.setCustomMetadata({ ...sheet.getCustomMetadata(), print: plan.print, emphasis: plan.emphasis });
  const target = { unitId: engine.book.getId(), subUnitId: sheet.getSheetId() };
  // Said to be looks alone: by the engine's own command for contents, cells without a formula in them would lose theirs.
  const looks = matrixOf(dressed, (one) => ({ s: gridStyle(one) }));
  engine.api.syncExecuteCommand(SetRangeValuesMutation.id, { ...target, cellValue: looks, trigger: SetStyleCommand.id });
  engine.api.syncExecuteCommand(SET_VALUES, { ...target, value: matrixOf([...written, ...(ended ? [ended] : [])], contentOf) });
  await engine.settled();
}

/** Putting rows in selects them and scrolls to them: whoever is weighing gets their cell back into view. */
function selectAgain(engine: GridEngine, sheet: FWorksheet, row: number, column: number): void {
  const range = sheet.getRange(row, column).getRange();
  const primary = { ...range, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false };
  const target = { unitId: engine.book.getId(), subUnitId: sheet.getSheetId() };
  engine.api.syncExecuteCommand(SetSelectionsOperation.id, { ...target, selections: [{ range, primary, style: null }], reveal: true });
}

function matrixOf(cells: readonly PlannedCell[], data: (planned: PlannedCell) => ICellData): IObjectMatrixPrimitiveType<ICellData> {
  const matrix: IObjectMatrixPrimitiveType<ICellData> = {};
  for (const planned of cells) {
    const { row, column } = areaNamed(planned.cell);
    (matrix[row] ??= {})[column] = data(planned);
  }
  return matrix;
}

const contentOf = ({ content, formula }: PlannedCell): ICellData =>
  formula === undefined ? cellData(content ?? null) : { f: formula, v: null, t: null, si: null, p: null };

/** Puts the plan's entry rules in place of those with the same words; the user's own stay. */
function setRules(engine: GridEngine, sheet: FWorksheet, { entryRules }: SheetPlan): void {
  const words = new Set(entryRules.map(({ promptTitle, prompt, refusal }) => JSON.stringify([prompt === "" ? "" : promptTitle, prompt, refusal])));
  const target = { unitId: engine.book.getId(), subUnitId: sheet.getSheetId() };
  for (const { rule } of sheet.getDataValidations()) {
    const said = JSON.stringify([rule.promptTitle ?? "", rule.prompt ?? "", rule.error ?? ""]);
    if (words.has(said)) engine.api.syncExecuteCommand(REMOVE_RULE, { ...target, ruleId: rule.uid });
  }
  for (const rule of entryRules) addRule(engine, sheet, dataValidation(rule, generateRandomId()));
}
