import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, lettersOf } from "../../workbook/cellArea";
import { quotedSheet } from "../../workbook/quotedSheet";
import type { PlannedChart } from "../../workbook/SheetPlan";
import type { FileValue } from "../package/cells/CellChange";
import type { EditableParts } from "../package/parts/EditableParts";
import { append, appendTo, attributeOf, elementsOf, escapedAttribute, readMarkup, type Tag } from "../package/parts/markup";
import { nameIn, sayContentType } from "../package/parts/namedParts";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import { inStrict, RELATIONSHIPS, relationshipType, workbookOutline, type Outline } from "../package/workbookOutline";
import { relationshipsOf } from "../parts/relationships";
import { chartMarkup } from "./chartMarkup";

const CHART_TYPE = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
const CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";

/** Draws planned charts on a sheet, as the spreadsheet's own. What else is drawn on the sheet stays. @throws WorkbookProblem where there is no such sheet */
export async function addCharts(file: WorkbookPackage, sheet: string, charts: readonly PlannedChart[]): Promise<void> {
  if (charts.length === 0) return;
  const { parts } = file;
  const values = new Map<string, FileValue>();
  await file.readCells(sheet, ({ cell, value }) => values.set(cell, value));
  const outline = await workbookOutline(parts);
  const found = outline.sheets.find(({ name }) => name.toLowerCase() === sheet.toLowerCase());
  if (found === undefined) return;
  const drawing = await drawingOf(parts, outline, found.part);
  for (const chart of charts) {
    const part = parts.freeName("xl/charts/chart", ".xml");
    put(parts, outline, part, chartMarkup(chart, (range) => absolute(found.name, range), (range) => valuesIn(range, values))); // prettier-ignore
    await sayContentType(parts, part, CHART_TYPE);
    const id = await nameIn(parts, drawing, relationshipType(outline, "chart"), part);
    const text = await parts.text(drawing);
    const root = elementsOf(drawing, text);
    const frame = frameMarkup(chart, id, lastNumber(drawing, text) + 1);
    await parts.edit(drawing, [appendTo(text, root, outline.isStrict ? inStrict(frame) : frame)]);
  }
}

const put = (parts: EditableParts, { isStrict }: Outline, part: string, markup: string): void =>
  parts.put(part, isStrict ? inStrict(markup) : markup);

/** "'Orchard kiln'!$B$3:$B$9" of "B3:B9". */
function absolute(sheet: string, range: string): string {
  const { row, column, rows, columns } = areaNamed(range);
  const corner = (down: number, across: number): string => `$${lettersOf(across)}$${down + 1}`;
  return `${quotedSheet(sheet)}!${corner(row, column)}:${corner(row + rows - 1, column + columns - 1)}`;
}

function valuesIn(range: string, values: ReadonlyMap<string, FileValue>): FileValue[] {
  const { row, column, rows, columns } = areaNamed(range);
  return Array.from({ length: rows * columns }, (_, index) => values.get(cellAt(row + (index % rows), column + Math.floor(index / rows))) ?? null);
}

/** What comes behind the drawing in a sheet's part (ECMA-376 Part 1, 18.3.1.99). */
const BEHIND = ["legacyDrawing", "legacyDrawingHF", "drawingHF", "picture", "oleObjects", "controls", "webPublishItems", "tableParts", "extLst"];

/** The part of everything drawn on a sheet; one without gets a blank one. */
async function drawingOf(parts: EditableParts, outline: Outline, sheet: string): Promise<string> {
  const known = (await relationshipsOf(parts, sheet)).find(({ type }) => type === "drawing")?.target;
  if (known !== undefined) return known;
  const part = parts.freeName("xl/drawings/drawing", ".xml");
  put(parts, outline, part, `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}"/>`);
  await sayContentType(parts, part, DRAWING_TYPE);
  const id = await nameIn(parts, sheet, relationshipType(outline, "drawing"), part);
  const text = await parts.text(sheet);
  let root: Tag | undefined;
  let behind: number | undefined;
  let end = 0;
  readMarkup(sheet, text, {
    open: (tag, depth) => {
      if (depth === 0) root = tag;
      if (depth === 1 && BEHIND.includes(tag.name)) behind ??= tag.start;
    },
    close: (_name, { start }, depth) => void (depth === 0 && (end = start)),
  });
  if (root === undefined) return part;
  const space = outline.isStrict ? inStrict(RELATIONSHIPS) : RELATIONSHIPS;
  const markup = `<${root.prefix}drawing xmlns:r="${space}" r:id="${id}"/>`;
  await parts.edit(sheet, [behind === undefined ? append(text, root, end, markup) : { from: behind, to: behind, text: markup }]);
  return part;
}

/** Everything drawn on a sheet has a number of its own. */
function lastNumber(part: string, text: string): number {
  let last = 1;
  readMarkup(part, text, {
    open: (tag) => void (tag.name === "cNvPr" && (last = Math.max(last, Number(attributeOf(tag, "id") ?? 0)))),
  });
  return last;
}

/** A frame for the chart over the cells it covers; it moves and grows with them. */
function frameMarkup({ over, title }: PlannedChart, id: string, number: number): string {
  const { row, column, rows, columns } = areaNamed(over);
  const at = (tag: string, down: number, across: number): string =>
    `<xdr:${tag}><xdr:col>${across}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${down}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${tag}>`;
  return (
    `<xdr:twoCellAnchor xmlns:xdr="${DRAWING}" xmlns:a="${MAIN}">${at("from", row, column)}${at("to", row + rows, column + columns)}` +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${number}" name="${escapedAttribute(title)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    `<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${CHART}">` +
    `<c:chart xmlns:c="${CHART}" xmlns:r="${RELATIONSHIPS}" r:id="${id}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`
  );
}
