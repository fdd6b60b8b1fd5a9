import type { EntryRule } from "../SheetPlan";

/** Puts the rule on the range, with its prompt beside the cell and its refusal. Blank cells are always allowed. */
export function setEntryRule(validation: Excel.DataValidation, { allow, promptTitle, prompt, refusal }: EntryRule): void {
  if (allow.kind === "number") validation.rule = { decimal: bounds(allow.atLeast, allow.atMost) };
  if (allow.kind === "words") validation.rule = { list: { inCellDropDown: true, source: allow.words.join(",") } };
  validation.prompt = { showPrompt: true, title: promptTitle, message: prompt };
  if (allow.kind === "anything") return;
  validation.errorAlert = { showAlert: true, style: Excel.DataValidationAlertStyle.stop, title: promptTitle, message: refusal };
}

/** An open bound is left out: JSON has no infinity. */
function bounds(atLeast: number, atMost: number): Excel.BasicDataValidation {
  if (atMost === Infinity) return { formula1: atLeast, operator: Excel.DataValidationOperator.greaterThanOrEqualTo };
  if (atLeast === -Infinity) return { formula1: atMost, operator: Excel.DataValidationOperator.lessThanOrEqualTo };
  return { formula1: atLeast, formula2: atMost, operator: Excel.DataValidationOperator.between };
}
