import {
  IUniverInstanceService,
  UniverInstanceType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type Nullable,
  type Workbook,
} from "@univerjs/core";
import { SetRangeValuesCommand, SheetInterceptorService } from "@univerjs/sheets";
import type { GridEngine } from "../../workbook/grid/GridEngine";

/** A place on a sheet, counted from 0, and how far the selection reaches from it. */
export interface Selected {
  /** The sheet's own id in the grid. */
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/**
 * Enters a block of texts, each as if it were typed into its cell: looks stay, and so do the number formats of boxes. A
 * single text fills the selection. One step to undo.
 * @returns false where the block reaches beyond the sheet or into merged cells; nothing is entered then
 */
export function enterBlock({ api, book, injector }: GridEngine, block: readonly (readonly string[])[], selected: Selected): boolean {
  const unit = injector.get(IUniverInstanceService).getUnit<Workbook>(book.getId(), UniverInstanceType.UNIVER_SHEET);
  const sheet = unit?.getSheetBySheetId(selected.sheetId);
  const [first = []] = block;
  const isSingle = block.length === 1 && first.length === 1;
  const [rows, columns] = isSingle ? [selected.rows, selected.columns] : [block.length, first.length];
  const { row: top, column: left } = selected;
  if (!unit || !sheet || top + rows > sheet.getRowCount() || left + columns > sheet.getColumnCount()) return false;
  const area = { startRow: top, endRow: top + rows - 1, startColumn: left, endColumn: left + columns - 1 };
  const isMerged = sheet
    .getMergeData()
    .some((one) => one.startRow <= area.endRow && one.endRow >= top && one.startColumn <= area.endColumn && one.endColumn >= left);
  if (isMerged) return false;
  const write = injector.get(SheetInterceptorService);
  const value: IObjectMatrixPrimitiveType<Nullable<ICellData>> = {};
  for (let row = top; row <= area.endRow; row++) {
    const cells: Record<number, Nullable<ICellData>> = (value[row] = {});
    for (let column = left; column <= area.endColumn; column++) {
      const text = (isSingle ? first[0] : block[row - top]?.[column - left]) ?? "";
      const s = sheet.getCellRaw(row, column)?.s;
      cells[column] = write.onWriteCell(unit, sheet, row, column, { ...contentOf(text), ...(s === undefined ? {} : { s }) });
    }
  }
  return api.syncExecuteCommand(SetRangeValuesCommand.id, { unitId: unit.getUnitId(), subUnitId: sheet.getSheetId(), value });
}

const NOTHING = { v: null, f: null, si: null, p: null } as const;

const contentOf = (text: string): ICellData =>
  text === "" ? { ...NOTHING, t: null } : text.startsWith("=") && text.length > 1 ? { ...NOTHING, f: text } : { ...NOTHING, v: text };
