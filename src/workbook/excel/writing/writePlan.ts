import { rangeOf, type CellArea } from "../../cellArea";
import { pixelsOf, POINTS_PER_PIXEL } from "../../columnPixels";
import type { EntryRule, PlannedCell, RowHeight, SheetPlan } from "../../SheetPlan";
import { HEAVY_LINE, SIDES, sheetStyles, type SheetStyle } from "../../sheetStyles";
import { alikeAreas } from "./alikeAreas";
import { cellBlocks } from "./cellBlocks";
import { CELLS_A_REQUEST, rowBands } from "../inRequests";
import { emphasise, setPage } from "./pageAndEmphasis";
import { contentsLater, setLater, writeAllButLast, writeWeighed, type WrittenLater } from "./weighed";

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
  if (plan.gridlines === false) worksheet.showGridlines = false;
  if (plan.print) setPage(worksheet, plan.print);
  if (plan.frozenRows > 0) worksheet.freezePanes.freezeRows(plan.frozenRows);
  const looks = [...dressing(worksheet, plan.cells), ...heights(worksheet, plan), ...emphases(worksheet, plan), ...rules(worksheet, plan)];
  const writes = [...first, ...looks, ...blockWrites(worksheet, plan.cells)];
  await writeWeighed(context, writes);
  if (writes.length === 0) await context.sync();
  // After the contents: Excel gives a General cell a format of its own when a date or a percentage is written into it.
  await writeAllButLast(context, formats(worksheet, plan.cells));
}

const atOnce = (writes: readonly WrittenLater[]): void => writes.forEach(({ write }) => write());

/** Puts the planned looks on cells. */
export const dress = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void => atOnce(dressing(worksheet, cells));

function dressing(worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): WrittenLater[] {
  const styled = alikeAreas(cells, ({ style }) => style).map(({ value, area }) =>
    setLater(settingsOf(sheetStyles[value]), () => applyStyle(worksheet.getRange(rangeOf(area)), area, sheetStyles[value])),
  );
  const lined = alikeAreas(cells, ({ heavyLeft }) => (heavyLeft ? "heavy" : undefined)).map(({ area }) =>
    setLater(LINE_SETTINGS, () => {
      const line = worksheet.getRange(rangeOf(area)).format.borders.getItem(Excel.BorderIndex.edgeLeft);
      Object.assign(line, { style: Excel.BorderLineStyle.continuous, weight: Excel.BorderWeight.medium, color: HEAVY_LINE });
    }),
  );
  return [...styled, ...lined];
}

/** What is set for a style, and two settings for each line of a border, the lines inside a range among them. */
const settingsOf = ({ border, foot, sides = SIDES, ...looks }: SheetStyle): number =>
  Object.keys(looks).length + 2 * ((border === undefined ? 0 : sides.length + 2) + (foot === undefined ? 0 : 2));

const LINE_SETTINGS = 3;
const RULE_SETTINGS = 6;

export const setRowHeights = (worksheet: Excel.Worksheet, plan: SheetPlan): void => atOnce(heights(worksheet, plan));

/** Rows of one height that follow each other are set together. */
function heights(worksheet: Excel.Worksheet, { rowHeights = [] }: SheetPlan): WrittenLater[] {
  const joined: RowHeight[] = [];
  for (const one of rowHeights) {
    const last = joined.at(-1);
    if (last?.height === one.height && last.to + 1 === one.from) joined[joined.length - 1] = { ...last, to: one.to };
    else joined.push(one);
  }
  return joined.map(({ from, to, height }) => setLater(1, () => void (worksheet.getRange(`A${from}:A${to}`).format.rowHeight = height)));
}

export const setEmphases = (worksheet: Excel.Worksheet, plan: SheetPlan): void => atOnce(emphases(worksheet, plan));

const emphases = (worksheet: Excel.Worksheet, { emphasis = [] }: SheetPlan): WrittenLater[] =>
  emphasis.map((one) => setLater(RULE_SETTINGS, () => emphasise(worksheet, one)));

export const setRules = (worksheet: Excel.Worksheet, plan: SheetPlan): void => atOnce(rules(worksheet, plan));

const rules = (worksheet: Excel.Worksheet, { entryRules }: SheetPlan): WrittenLater[] =>
  entryRules.map((rule) => setLater(RULE_SETTINGS, () => setEntryRule(worksheet.getRange(rule.range).dataValidation, rule)));

export const setFormats = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void => atOnce(formats(worksheet, cells));

const formats = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): WrittenLater[] =>
  alikeAreas(cells, ({ format }) => format).flatMap(({ value, area }) =>
    rowBands(area, CELLS_A_REQUEST).flatMap((band) => {
      const entries = Array.from({ length: band.rows }, () => new Array<string>(band.columns).fill(value));
      return contentsLater(band, entries, (piece) => void (worksheet.getRange(rangeOf(piece.area)).numberFormat = piece.entries));
    }),
  );

/** Puts contents in; every cell without one keeps what it holds. */
export const writeContents = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): void => atOnce(blockWrites(worksheet, cells));

const blockWrites = (worksheet: Excel.Worksheet, cells: readonly PlannedCell[]): WrittenLater[] =>
  cellBlocks(cells).flatMap(({ area, entries }) =>
    contentsLater(area, entries, (piece) => void (worksheet.getRange(rangeOf(piece.area)).formulas = piece.entries)),
  );

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
