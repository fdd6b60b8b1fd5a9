import { notACellFormula, textTooLong, wordWithComma } from "../problems/workbook/workbookProblems";
import { areaNamed } from "./areaNamed";
import type { EntryRule, PlannedCell, SheetPlan } from "./SheetPlan";
import { WorkbookProblem } from "./Workbook";

/** Characters. Data validation: [MS-XLSB] DValStrings; text of a cell: Excel specifications and limits. */
const LONGEST = {
  "title of an entry prompt": 32,
  "entry prompt": 255,
  "refusal of an entry": 225,
  "list of words": 255,
  "condition of an entry": 255,
  "text of a cell": 32_767,
} as const;

/**
 * Holds a plan to what a sheet can take, before anything is written.
 * @throws WorkbookProblem naming the first thing that does not fit
 */
export function checkSheetPlan(plan: SheetPlan): void {
  plan.cells.forEach(checkCell);
  plan.entryRules.forEach(checkRule);
  for (const { series, over } of plan.charts ?? []) {
    areaNamed(over);
    for (const { x, y } of series) [x, y].forEach(areaNamed);
  }
  if (plan.print) areaNamed(plan.print.area);
  for (const { range, condition } of plan.emphasis ?? []) {
    areaNamed(range);
    checkCondition(condition);
  }
  areaNamed(plan.startAt);
}

function checkCondition(condition: string): void {
  if (!condition.startsWith("=")) throw new WorkbookProblem(notACellFormula(condition));
  fits("condition of an entry", condition);
}

function checkCell({ cell, content, formula }: PlannedCell): void {
  areaNamed(cell);
  if (typeof content === "string") fits("text of a cell", content);
  if (formula !== undefined && !formula.startsWith("=")) throw new WorkbookProblem(notACellFormula(formula));
}

function checkRule({ range, allow, promptTitle, prompt, refusal }: EntryRule): void {
  areaNamed(range);
  fits("title of an entry prompt", promptTitle);
  fits("entry prompt", prompt);
  fits("refusal of an entry", refusal);
  if (allow.kind === "condition") checkCondition(allow.condition);
  if (allow.kind !== "words") return;
  const withComma = allow.words.find((word) => word.includes(","));
  if (withComma !== undefined) throw new WorkbookProblem(wordWithComma(withComma));
  fits("list of words", allow.words.join(","));
}

function fits(what: keyof typeof LONGEST, text: string): void {
  if (text.length > LONGEST[what]) throw new WorkbookProblem(textTooLong(what, text.length, LONGEST[what]));
}
