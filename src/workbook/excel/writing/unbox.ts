import { rangeOf } from "../../cellArea";
import { sheetStyles } from "../../sheetStyles";
import { alikeAreas } from "./alikeAreas";

/** Takes the look of a box to fill in from cells: no fill, no lines, the colour of printed words. */
export function unbox(worksheet: Excel.Worksheet, cells: readonly string[]): void {
  const planned = cells.map((cell) => ({ cell }));
  for (const { area } of alikeAreas(planned, () => "box")) {
    const { fill, font, borders } = worksheet.getRange(rangeOf(area)).format;
    fill.clear();
    font.color = sheetStyles.label.fontColour;
    const inside = [...(area.rows > 1 ? [Excel.BorderIndex.insideHorizontal] : []), ...(area.columns > 1 ? [Excel.BorderIndex.insideVertical] : [])];
    const edges = [Excel.BorderIndex.edgeLeft, Excel.BorderIndex.edgeRight, Excel.BorderIndex.edgeTop, Excel.BorderIndex.edgeBottom];
    for (const line of [...edges, ...inside]) borders.getItem(line).style = Excel.BorderLineStyle.none;
  }
}
