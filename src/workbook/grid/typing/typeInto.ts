import { CellValueType } from "@univerjs/core";
import { cellArea } from "../../cellArea";
import type { CellAddress, CellContent } from "../../Workbook";
import type { GridEngine } from "../GridEngine";
import { cellData } from "../writing/cellData";

const KEEPS_TEXT = "'";

/** Enters content into a cell the way typing it would: "=..." is a formula, "12" a number, "'12" the text 12, "" clears. */
export function typeInto(engine: GridEngine, { sheet, cell }: CellAddress, content: CellContent): void {
  const area = cellArea(cell);
  const range = area && engine.book.getSheetByName(sheet)?.getRange(area.row, area.column);
  if (range === undefined) throw new Error(`no cell ${cell} on a sheet ${sheet}`);
  if (content === null || content === "") range.clearContent();
  else if (typeof content !== "string") range.setValue(cellData(content));
  else if (content.startsWith("=")) range.setValue({ f: content, v: null, p: null, si: null });
  else if (content.startsWith(KEEPS_TEXT)) range.setValue({ ...cellData(content.slice(KEEPS_TEXT.length)), t: CellValueType.FORCE_STRING });
  else range.setValue(content);
}
