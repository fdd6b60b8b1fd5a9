import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type IDataValidationRule,
} from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { areaNamed } from "../../areaNamed";
import { cellArea } from "../../cellArea";
import type { EntryRule } from "../../SheetPlan";
import type { CellAddress } from "../../Workbook";
import type { GridEngine } from "../GridEngine";

/** An entry rule in the engine's own terms. The engine keeps the prompt but does not show it; the page does. */
export function dataValidation(rule: EntryRule, uid: string): IDataValidationRule {
  const area = areaNamed(rule.range);
  return {
    uid,
    ranges: [{ startRow: area.row, startColumn: area.column, endRow: area.row + area.rows - 1, endColumn: area.column + area.columns - 1 }],
    ...allowed(rule.allow),
    allowBlank: true,
    showInputMessage: rule.prompt !== "",
    promptTitle: rule.prompt === "" ? "" : rule.promptTitle,
    prompt: rule.prompt,
    showErrorMessage: rule.allow.kind !== "anything",
    errorStyle: DataValidationErrorStyle.STOP,
    error: rule.refusal,
  };
}

function allowed(
  allow: EntryRule["allow"],
): Pick<IDataValidationRule, "type" | "operator" | "formula1" | "formula2" | "showDropDown" | "renderMode"> {
  if (allow.kind === "words")
    return { type: DataValidationType.LIST, formula1: allow.words.join(","), showDropDown: true, renderMode: DataValidationRenderMode.ARROW };
  if (allow.kind === "anything") return { type: DataValidationType.ANY };
  if (allow.kind === "condition") return { type: DataValidationType.CUSTOM, formula1: allow.condition };
  return {
    type: DataValidationType.DECIMAL,
    operator: DataValidationOperator.BETWEEN,
    formula1: String(allow.atLeast),
    formula2: String(allow.atMost),
  };
}

const ADD_RULE = "sheet.command.addDataValidation";

/** Puts a rule on its cells; it takes the place of any other there. */
export const addRule = ({ api, book }: GridEngine, sheet: FWorksheet, rule: IDataValidationRule): void =>
  void api.syncExecuteCommand(ADD_RULE, { unitId: book.getId(), subUnitId: sheet.getSheetId(), rule });

const REMOVE_RULE = "sheet.command.remove-data-validation-rule";

/** Takes a rule away from all its cells. */
export const removeRule = ({ api, book }: GridEngine, sheet: FWorksheet, ruleId: string): void =>
  void api.syncExecuteCommand(REMOVE_RULE, { unitId: book.getId(), subUnitId: sheet.getSheetId(), ruleId });

/** What is said beside a cell before something is typed into it; blank where nothing is. The engine itself does not show it. */
export function entryPrompt(engine: GridEngine, { sheet, cell }: CellAddress): { title: string; text: string } {
  const area = cellArea(cell);
  const range = area && engine.book.getSheetByName(sheet)?.getRange(area.row, area.column);
  const rule = range?.getDataValidation()?.rule;
  return { title: rule?.promptTitle ?? "", text: rule?.prompt ?? "" };
}
