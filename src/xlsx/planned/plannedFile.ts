import type { CellErrorValue, CellValue, DataValidation, Worksheet } from "exceljs";
import { areaNamed } from "../../workbook/areaNamed";
import { checkSheetPlan } from "../../workbook/checkSheetPlan";
import type { EntryRule, PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import { fileLibrary } from "../fileLibrary";
import { storedFormula } from "../formulas/storedFormula";
import { namesForSeveral, worksOnRanges } from "../formulas/worksOnRanges";
import type { FileValue } from "../package/cells/CellChange";
import { conditional, footerOf, headerOf, pageSetup } from "./filePage";
import { plannedStyle } from "./plannedStyle";
import { printNames } from "./printNames";
import { textForLibrary } from "./textForLibrary";

export interface ForPlans {
  /** What a planned formula gives, where that is known; without it the cell is blank until a spreadsheet calculates it. */
  readonly answer?: (sheet: string, cell: string) => FileValue;
  /** The names that the sheets' formulas may use. */
  readonly names?: readonly { readonly name: string; readonly refersTo: string }[];
  /** True where every formula is to be calculated when the file is opened. */
  readonly calculateOnOpening?: boolean;
}

/**
 * Planned sheets as a workbook file: cells, looks, widths, heights, entry rules, looks under conditions, the printed page. Charts are drawn by
 * addCharts when the sheets stand where they stay.
 * @throws WorkbookProblem naming the first thing of a plan that does not fit
 */
export async function plannedFile(
  plans: readonly SheetPlan[],
  { answer, names = [], calculateOnOpening }: ForPlans = {},
): Promise<Uint8Array<ArrayBuffer>> {
  plans.forEach(checkSheetPlan);
  const { Workbook } = await fileLibrary();
  const file = new Workbook();
  if (calculateOnOpening === true) file.calcProperties.fullCalcOnLoad = true;
  const several = namesForSeveral(names);
  for (const plan of plans) {
    const { frozenRows, print } = plan;
    const showGridLines = plan.gridlines !== false;
    const sheet = file.addWorksheet(plan.name, {
      views: [
        frozenRows > 0
          ? { state: "frozen", ySplit: frozenRows, showGridLines, activeCell: plan.startAt }
          : { showGridLines, activeCell: plan.startAt },
      ],
      ...(print === undefined ? {} : { pageSetup: pageSetup(print) }),
    });
    if (print !== undefined) Object.assign(sheet.headerFooter, { oddHeader: headerOf(print), oddFooter: footerOf(print) });
    plan.columnWidths.forEach((width, column) => (sheet.getColumn(column + 1).width = width));
    for (const { from, to, height } of plan.rowHeights ?? []) for (let row = from; row <= to; row++) sheet.getRow(row).height = height;
    for (const planned of plan.cells) {
      const { row, column } = areaNamed(planned.cell);
      const cell = sheet.getCell(row + 1, column + 1);
      cell.style = plannedStyle(planned);
      cell.value = valueOf(planned, answer?.(plan.name, planned.cell) ?? null, (formula) => worksOnRanges(formula, several));
    }
    // After the cells: a break belongs to a row that stands.
    for (const row of print?.breaksBefore ?? []) sheet.getRow(row - 1).addPageBreak();
    for (const emphasis of plan.emphasis ?? []) sheet.addConditionalFormatting(conditional(emphasis));
    writeRules(sheet, plan.entryRules);
  }
  Object.defineProperty(file.definedNames, "model", { value: printNames(file) });
  return new Uint8Array(await file.xlsx.writeBuffer());
}

function valueOf({ cell, content, formula }: PlannedCell, answer: FileValue, isOverArrays: (formula: string) => boolean): CellValue {
  if (formula === undefined) return typeof content === "string" ? textForLibrary(content) : (content ?? null);
  const result = typeof answer === "string" ? textForLibrary(answer) : (answer as number | boolean | CellErrorValue | null);
  const held = { formula: storedFormula(formula), ...(result === null ? {} : { result }) };
  return isOverArrays(formula) ? { ...held, shareType: "array", ref: cell.replaceAll("$", "") } : held;
}

function writeRules(sheet: Worksheet, rules: readonly EntryRule[]): void {
  for (const { range, allow, promptTitle, prompt, refusal } of rules) {
    const asked = { allowBlank: true, showInputMessage: prompt !== "", promptTitle: prompt === "" ? "" : promptTitle, prompt };
    const said = { ...asked, showErrorMessage: allow.kind !== "anything", errorStyle: "stop", error: refusal };
    sheet.dataValidations.add(range, { ...said, ...allowed(allow) });
  }
}

function allowed(allow: EntryRule["allow"]): Pick<DataValidation, "type" | "operator" | "formulae"> {
  if (allow.kind === "words") return { type: "list", formulae: [`"${allow.words.join(",")}"`] };
  if (allow.kind === "condition") return { type: "custom", formulae: [storedFormula(allow.condition)] };
  // "any" is the library's word for a prompt without a rule, which its types leave out.
  if (allow.kind === "anything") return { type: "any" as "custom", formulae: [] };
  return { type: "decimal", operator: "between", formulae: [allow.atLeast, allow.atMost] };
}
