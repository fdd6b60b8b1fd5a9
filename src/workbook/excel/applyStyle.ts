import type { CellArea } from "../cellArea";
import type { SheetStyle } from "../sheetStyles";

export function applyStyle(range: Excel.Range, area: CellArea, style: SheetStyle): void {
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
