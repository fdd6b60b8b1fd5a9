import { SetSelectionsOperation } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { GridEngine } from "../GridEngine";

/** Selects a cell and brings it into view, which selecting alone does not: on a narrow screen it may lie beyond the edge. */
export function selectInView(engine: GridEngine, sheet: FWorksheet, row: number, column: number): void {
  const range = sheet.getRange(row, column).getRange();
  const primary = { ...range, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false };
  const target = { unitId: engine.book.getId(), subUnitId: sheet.getSheetId() };
  engine.api.syncExecuteCommand(SetSelectionsOperation.id, { ...target, selections: [{ range, primary, style: null }], reveal: true });
}
