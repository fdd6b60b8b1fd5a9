import { rangeOf, type CellArea } from "../../cellArea";
import { pixelsOf, POINTS_PER_PIXEL } from "../../columnPixels";
import type { EntryRule, PlannedCell, SheetPlan } from "../../SheetPlan";
import { HEAVY_LINE, SIDES, sheetStyles, type SheetStyle } from "../../sheetStyles";
import { alikeAreas } from "./alikeAreas";
import { cellBlocks } from "./cellBlocks";
import { CELLS_A_REQUEST, inRequests } from "../inRequests";
import { emphasise, setPage } from "./pageAndEmphasis";

// A request may hold 5 MB on the web. What one write takes beside its contents was measured on the client library; letters of some scripts take
// three bytes each.
const BYTES_A_REQUEST = 3_500_000;
const BYTES_A_WRITE = 700;
const BYTES_A_CHARACTER = 3;

/** Contents for an area, written when their turn comes. */
export interface WrittenLater {
  readonly area: CellArea;
  /** How long the contents are as they are sent. */
  readonly characters?: number;
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
  dress(worksheet, plan.cells);
  setRowHeights(worksheet, plan);
  setEmphases(worksheet, plan);
  if (plan.gridlines === false) worksheet.showGridlines = false;
  if (plan.print) setPage(worksheet, plan.print);
  setRules(worksheet, plan);
  if (plan.frozenRows > 0) worksheet.freezePanes.freezeRows(plan.frozenRows);
  const writes = [...first, ...blockWrites(worksheet, plan.cells)];
  const weigh = ({ area, characters = 0 }: WrittenLater): number =>
    Math.max((area.rows * area.columns) / CELLS_A_REQUEST, (BYTES_A_WRITE + BYTES_A_CHARACTER * characters) / BYTES_A_REQUEST);
  await inRequests(context, writes, { limit: 1, weigh }, ({ write }) => write());
  if (writes.length === 0) await context.sync();
  // After the contents: Excel gives a General cell a format of its own when a date or a percentage is written into it.
  setFormats(worksheet, plan.cells);
}

/** Puts the planned looks on cells. */
export function dress(worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void {
  for (const { value, area } of alikeAreas(cells, ({ style }) => style)) applyStyle(worksheet.getRange(rangeOf(area)), area, sheetStyles[value]);
  for (const { area } of alikeAreas(cells, ({ heavyLeft }) => (heavyLeft ? "heavy" : undefined))) {
    const line = worksheet.getRange(rangeOf(area)).format.borders.getItem(Excel.BorderIndex.edgeLeft);
    Object.assign(line, { style: Excel.BorderLineStyle.continuous, weight: Excel.BorderWeight.medium, color: HEAVY_LINE });
  }
}

export function setRowHeights(worksheet: Excel.Worksheet, { rowHeights = [] }: SheetPlan): void {
  for (const { from, to, height } of rowHeights) worksheet.getRange(`A${from}:A${to}`).format.rowHeight = height;
}

export function setEmphases(worksheet: Excel.Worksheet, { emphasis = [] }: SheetPlan): void {
  for (const one of emphasis) emphasise(worksheet, one);
}

export function setRules(worksheet: Excel.Worksheet, { entryRules }: SheetPlan): void {
  for (const rule of entryRules) setEntryRule(worksheet.getRange(rule.range).dataValidation, rule);
}

export function setFormats(worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void {
  for (const { value, area } of alikeAreas(cells, ({ format }) => format)) {
    worksheet.getRange(rangeOf(area)).numberFormat = Array.from({ length: area.rows }, () => new Array<string>(area.columns).fill(value));
  }
}

/** Puts contents in; every cell without one keeps what it holds. */
export const writeContents = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void =>
  blockWrites(worksheet, cells).forEach(({ write }) => write());

export const lengthOf = (entries: readonly (readonly unknown[])[]): number => JSON.stringify(entries).length;

const blockWrites = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): WrittenLater[] =>
  cellBlocks(cells).map(({ area, entries }) => ({
    area,
    characters: lengthOf(entries),
    write: () => void (worksheet.getRange(rangeOf(area)).formulas = entries),
  }));

/** The width of a column in points, as Excel's format.columnWidth takes it: 8.43 characters are 48 points. */
export const columnPoints = (characters: number): number => pixelsOf(characters) * POINTS_PER_PIXEL;

/** Puts the rule on the range, with its prompt beside the cell and its refusal. Blank cells are always allowed. */
function setEntryRule(validation: Excel.DataValidation, { allow, promptTitle, prompt, refusal }: EntryRule): void {
  if (allow.kind === "number") validation.rule = { decimal: bounds(allow.atLeast, allow.atMost) };
  if (allow.kind === "words") validation.rule = { list: { inCellDropDown: true, source: allow.words.join(",") } };
  if (allow.kind === "condition") validation.rule = { custom: { formula: allow.condition } };
  if (prompt !== "") validation.prompt = { showPrompt: true, title: promptTitle, message: prompt };
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
  if (style.indent !== undefined) range.format.indentLevel = style.indent;
  if (style.wrap) range.format.wrapText = true;
  if (style.top) range.format.verticalAlignment = Excel.VerticalAlignment.top;
  if (style.border !== undefined) surround(range, area, style.border, style);
  if (style.foot !== undefined) footLines(range, area, style.foot);
}

/** A dotted line below every cell of the range. */
function footLines(range: Excel.Range, { rows }: CellArea, colour: string): void {
  for (const line of [Excel.BorderIndex.edgeBottom, ...(rows > 1 ? [Excel.BorderIndex.insideHorizontal] : [])]) {
    const border = range.format.borders.getItem(line);
    border.style = Excel.BorderLineStyle.dot;
    border.color = colour;
  }
}

/** A thin line around every cell of the range, on the sides that the style has; a range of one row has no horizontal line inside it. */
function surround(range: Excel.Range, { rows, columns }: CellArea, colour: string, { sides = SIDES }: SheetStyle): void {
  const edges = {
    left: Excel.BorderIndex.edgeLeft,
    right: Excel.BorderIndex.edgeRight,
    top: Excel.BorderIndex.edgeTop,
    bottom: Excel.BorderIndex.edgeBottom,
  };
  const lines: Excel.BorderIndex[] = sides.map((side) => edges[side]);
  if (rows > 1) lines.push(Excel.BorderIndex.insideHorizontal);
  if (columns > 1 && sides.length === SIDES.length) lines.push(Excel.BorderIndex.insideVertical);
  for (const line of lines) {
    const border = range.format.borders.getItem(line);
    border.style = Excel.BorderLineStyle.continuous;
    border.color = colour;
  }
}
