import {
  BooleanNumber,
  generateRandomId,
  type ICellData,
  type IDataValidationRule,
  type IObjectMatrixPrimitiveType,
  type IRange,
} from "@univerjs/core";
import { SetRangeValuesMutation, SetStyleCommand } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaNamed } from "../../areaNamed";
import { cellAt } from "../../cellArea";
import { areasPutIn, cellAfter, rowAfter, type SheetGrowth } from "../../SheetGrowth";
import { asOneStep } from "../engine/asOneStep";
import type { PlannedCell, SheetPlan } from "../../SheetPlan";
import { cellData } from "./cellData";
import { addRule, dataValidation, removeRule } from "./entryRules";
import type { GridEngine } from "../GridEngine";
import { selectInView } from "./selectInView";
import { gridStyle, rowPixelsOf } from "./worksheetData";

const SET_VALUES = "sheet.command.set-range-values";

/** Grows a sheet of the grid. Nothing comes in between and nothing breaks off half-way, so `begun` is not written. It is taken back as one step. */
export async function growGridSheet(engine: GridEngine, sheet: FWorksheet, growth: SheetGrowth): Promise<void> {
  asOneStep(engine.book.getId(), () => change(engine, sheet, growth));
  await engine.settled();
}

function change(engine: GridEngine, sheet: FWorksheet, growth: SheetGrowth): void {
  const { plan, steps, written, dressed, ended } = growth;
  const selected = sheet.getSelection()?.getCurrentCell();
  putRowsIn(engine, sheet, growth);
  // Putting rows in selects them and scrolls to them: whoever is weighing gets their cell back into view.
  if (selected && steps.length > 0) selectInView(engine, sheet, rowAfter(selected.actualRow + 1, steps) - 1, selected.actualColumn);
  // A row put in takes the looks of the one above it.
  for (const { row, rows, columns } of areasPutIn(steps, plan.columnWidths.length)) sheet.getRange(row, 0, rows, columns).clearFormat();
  setRules(engine, sheet, plan);
  setHeights(sheet, plan);
  sheet.setCustomMetadata({ ...sheet.getCustomMetadata(), print: plan.print, emphasis: plan.emphasis, charts: plan.charts });
  const target = { unitId: engine.book.getId(), subUnitId: sheet.getSheetId() };
  // Said to be looks alone: by the engine's own command for contents, cells without a formula in them would lose theirs.
  const looks = matrixOf(dressed, (one) => ({ s: gridStyle(one) }));
  engine.api.syncExecuteCommand(SetRangeValuesMutation.id, { ...target, cellValue: looks, trigger: SetStyleCommand.id });
  engine.api.syncExecuteCommand(SET_VALUES, { ...target, value: matrixOf([...written, ...(ended ? [ended] : [])], contentOf) });
}

/** Formulas that are written anew afterwards are not taken apart to move their references at every step. */
function putRowsIn(engine: GridEngine, sheet: FWorksheet, { steps, written }: SheetGrowth): void {
  const anew = new Set(written.flatMap(({ cell, formula }) => (formula === undefined ? [] : [cell])));
  steps.forEach(({ above, count }, index) => {
    const left = steps.slice(index);
    engine.references.without(
      sheet.getSheetId(),
      (row, column) => anew.has(cellAfter(cellAt(row, column), left)),
      () => sheet.insertRowsBefore(above - 1, count),
    );
  });
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

/** Each height set is a command with a drawing of its own, so only rows of another height than planned get one. */
function setHeights(sheet: FWorksheet, { rowHeights = [] }: SheetPlan): void {
  const rows = sheet.getSheet().getRowManager();
  for (const { from, to, height } of rowHeights) {
    const pixels = rowPixelsOf(height);
    const isOther = (row: number): boolean => rows.getRow(row)?.h !== pixels || rows.getRow(row)?.ia !== BooleanNumber.FALSE;
    for (let row = from - 1; row < to; row++) {
      if (!isOther(row)) continue;
      let end = row + 1;
      while (end < to && isOther(end)) end++;
      sheet.setRowHeightsForced(row, end - row, pixels);
      row = end;
    }
  }
}

/** Puts the plan's entry rules in place of those with the same words, but for those that stand as planned; the user's own stay. */
function setRules(engine: GridEngine, sheet: FWorksheet, { entryRules }: SheetPlan): void {
  const wanted = new Map(entryRules.map((rule) => [sameOf(dataValidation(rule, "")), rule]));
  const words = new Set(entryRules.map(({ promptTitle, prompt, refusal }) => JSON.stringify([prompt === "" ? "" : promptTitle, prompt, refusal])));
  for (const { rule } of sheet.getDataValidations()) {
    const said = JSON.stringify([rule.promptTitle ?? "", rule.prompt ?? "", rule.error ?? ""]);
    if (words.has(said) && !wanted.delete(sameOf(rule))) removeRule(engine, sheet, rule.uid);
  }
  for (const rule of wanted.values()) addRule(engine, sheet, dataValidation(rule, generateRandomId()));
}

/** What makes a rule the one that is planned: all but its id. */
function sameOf({
  type,
  operator,
  formula1,
  formula2,
  ranges,
  promptTitle = "",
  prompt = "",
  error = "",
  showErrorMessage,
}: IDataValidationRule): string {
  const areas = ranges.map(({ startRow, startColumn, endRow, endColumn }: IRange) => [startRow, startColumn, endRow, endColumn]);
  return JSON.stringify([type, operator ?? "", formula1 ?? "", formula2 ?? null, areas, promptTitle, prompt, error, showErrorMessage]);
}
