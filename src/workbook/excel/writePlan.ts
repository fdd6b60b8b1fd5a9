import { rangeOf, type CellArea } from "../cellArea";
import { pixelsOf, POINTS_PER_PIXEL } from "../columnPixels";
import type { EntryRule, SheetPlan } from "../SheetPlan";
import { sheetStyles, type SheetStyle } from "../sheetStyles";
import { alikeAreas } from "./alikeAreas";
import { cellBlocks } from "./cellBlocks";
import { CELLS_A_REQUEST, inRequests } from "./inRequests";

/** Contents for an area, written when their turn comes. */
export interface WrittenLater {
  readonly area: CellArea;
  write(): void;
}

/**
 * Writes everything of a plan but its chart onto a new sheet: one request unless the sheet is very large. The number formats wait
 * for the next request.
 * @param first what goes onto another sheet in the same requests, before
 */
export async function writePlan(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  plan: SheetPlan,
  first: readonly WrittenLater[] = [],
): Promise<void> {
  plan.columnWidths.forEach((characters, column) => (worksheet.getCell(0, column).format.columnWidth = columnPoints(characters)));
  for (const { value, area } of alikeAreas(plan.cells, ({ style }) => style)) applyStyle(worksheet.getRange(rangeOf(area)), area, sheetStyles[value]);
  for (const rule of plan.entryRules) setEntryRule(worksheet.getRange(rule.range).dataValidation, rule);
  if (plan.frozenRows > 0) worksheet.freezePanes.freezeRows(plan.frozenRows);
  const own = cellBlocks(plan.cells).map(({ area, entries }) => ({ area, write: () => void (worksheet.getRange(rangeOf(area)).formulas = entries) }));
  const writes = [...first, ...own];
  const weigh = ({ area }: WrittenLater): number => area.rows * area.columns;
  await inRequests(context, writes, { limit: CELLS_A_REQUEST, weigh }, ({ write }) => write());
  if (writes.length === 0) await context.sync();
  // After the contents: Excel gives a General cell a format of its own when a date or a percentage is written into it.
  for (const { value, area } of alikeAreas(plan.cells, ({ format }) => format)) {
    worksheet.getRange(rangeOf(area)).numberFormat = Array.from({ length: area.rows }, () => new Array<string>(area.columns).fill(value));
  }
}

/** The width of a column in points, as Excel's format.columnWidth takes it: 8.43 characters are 48 points. */
export const columnPoints = (characters: number): number => pixelsOf(characters) * POINTS_PER_PIXEL;

/** Puts the rule on the range, with its prompt beside the cell and its refusal. Blank cells are always allowed. */
function setEntryRule(validation: Excel.DataValidation, { allow, promptTitle, prompt, refusal }: EntryRule): void {
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

function applyStyle(range: Excel.Range, area: CellArea, style: SheetStyle): void {
  const { font, fill } = range.format;
  font.color = style.fontColour;
  if (style.bold) font.bold = true;
  if (style.italic) font.italic = true;
  if (style.size !== undefined) font.size = style.size;
  if (style.fill !== undefined) fill.color = style.fill;
  if (style.align === "right") range.format.horizontalAlignment = Excel.HorizontalAlignment.right;
  if (style.wrap) range.format.wrapText = true;
  if (style.border !== undefined) surround(range, area, style.border);
}

/** A thin line around every cell of the range; a range of one row has no horizontal line inside it. */
function surround(range: Excel.Range, { rows, columns }: CellArea, colour: string): void {
  const lines: Excel.BorderIndex[] = [
    Excel.BorderIndex.edgeTop,
    Excel.BorderIndex.edgeBottom,
    Excel.BorderIndex.edgeLeft,
    Excel.BorderIndex.edgeRight,
  ];
  if (rows > 1) lines.push(Excel.BorderIndex.insideHorizontal);
  if (columns > 1) lines.push(Excel.BorderIndex.insideVertical);
  for (const line of lines) {
    const border = range.format.borders.getItem(line);
    border.style = Excel.BorderLineStyle.continuous;
    border.color = colour;
  }
}
