import { cellArea } from "../cellArea";
import type { CellAddress } from "../Workbook";
import type { GridEngine } from "./GridEngine";

/** What is said beside a cell before something is typed into it; blank where nothing is. The engine itself does not show it. */
export function entryPrompt(engine: GridEngine, { sheet, cell }: CellAddress): { title: string; text: string } {
  const area = cellArea(cell);
  const range = area && engine.book.getSheetByName(sheet)?.getRange(area.row, area.column);
  const rule = range?.getDataValidation()?.rule;
  return { title: rule?.promptTitle ?? "", text: rule?.prompt ?? "" };
}
