import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  generateRandomId,
  type IDataValidationRule,
  type IRange,
} from "@univerjs/core";
import type { DataValidation } from "exceljs";
import { storedFormula, typedFormula } from "../../xlsx/formulas/storedFormula";

/** An entry rule as the file library has it. Kinds of rule that our own sheets do not use become a prompt without a rule. */
export function fileRule(rule: IDataValidationRule): DataValidation {
  const said = {
    allowBlank: true,
    showInputMessage: (rule.prompt ?? "") !== "",
    promptTitle: rule.promptTitle ?? "",
    prompt: rule.prompt ?? "",
    showErrorMessage: rule.showErrorMessage === true,
    errorStyle: "stop",
    error: rule.error ?? "",
  };
  if (rule.type === DataValidationType.LIST) return { ...said, type: "list", formulae: [`"${rule.formula1 ?? ""}"`] };
  if (rule.type === DataValidationType.CUSTOM) return { ...said, type: "custom", formulae: [storedFormula(rule.formula1 ?? "")] };
  if (rule.type !== DataValidationType.DECIMAL || rule.operator !== DataValidationOperator.BETWEEN) {
    return { ...said, type: "any" as "custom", formulae: [] };
  }
  return { ...said, type: "decimal", operator: "between", formulae: [Number(rule.formula1), Number(rule.formula2)] };
}

/** The reverse of fileRule. */
export function ruleOf(inFile: DataValidation, ranges: IRange[]): IDataValidationRule {
  return {
    uid: generateRandomId(),
    ranges,
    ...allowedBy(inFile),
    allowBlank: true,
    showInputMessage: true,
    promptTitle: inFile.promptTitle ?? "",
    prompt: inFile.prompt ?? "",
    showErrorMessage: inFile.showErrorMessage === true,
    errorStyle: DataValidationErrorStyle.STOP,
    error: inFile.error ?? "",
  };
}

function allowedBy({ type, operator, formulae }: DataValidation): Partial<IDataValidationRule> & { type: DataValidationType } {
  const [first, second] = (formulae ?? []) as (string | number)[];
  const isListOfWords = typeof first === "string" && /^".*"$/.test(first);
  if (type === "list" && isListOfWords)
    return { type: DataValidationType.LIST, formula1: first.slice(1, -1), showDropDown: true, renderMode: DataValidationRenderMode.ARROW };
  if (type === "decimal" && operator === "between") {
    return { type: DataValidationType.DECIMAL, operator: DataValidationOperator.BETWEEN, formula1: String(first), formula2: String(second) };
  }
  if (type === "custom" && typeof first === "string") return { type: DataValidationType.CUSTOM, formula1: typedFormula(first) };
  return { type: DataValidationType.ANY };
}
