import { ICommandService, IUniverInstanceService, UniverInstanceType, type Injector, type IUnitRange, type Workbook } from "@univerjs/core";
import { FormulaDataModel, IActiveDirtyManagerService } from "@univerjs/engine-formula";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
} from "@univerjs/sheets";

/** What a change that moves cells is told by; a move from one sheet to another names both ends. */
export interface Moved {
  readonly unitId: string;
  readonly subUnitId?: string;
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
}

/** The engine's changes by which cells come into other places. */
export const MOVE_CELLS: readonly string[] = [
  InsertRowMutation,
  InsertColMutation,
  RemoveRowMutation,
  RemoveColMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  MoveColsMutation,
  ReorderRangeMutation,
].map(({ id }) => id);

/**
 * Mends a defect of engine 0.25.1: where cells of a sheet move, it calculates what stood in the places that went, but not what reads cells that came
 * into a place of others, and what a formula spilled stays behind where it was. Calculates the formulas of the sheet, and with them what reads it, and
 * spills anew.
 */
export function calculateMovedCells(injector: Injector): void {
  const changes = injector.get(IActiveDirtyManagerService);
  const spills = injector.get(FormulaDataModel);
  const books = injector.get(IUniverInstanceService);
  injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (!MOVE_CELLS.includes(id)) return;
    const { unitId } = params as Moved;
    for (const sheet of sheetsMoved(params as Moved))
      for (const kept of [spills.getArrayFormulaRange(), spills.getArrayFormulaCellData()]) delete kept[unitId]?.[sheet];
  });
  const find = changes.get.bind(changes);
  changes.get = (id) => {
    const found = find(id);
    if (found === undefined || found === null || !MOVE_CELLS.includes(id)) return found;
    return {
      ...found,
      getDirtyData: (command) => {
        const known = found.getDirtyData(command);
        return { ...known, dirtyRanges: [...(known.dirtyRanges ?? []), ...wholeSheets(books, command.params as Moved)] };
      },
    };
  };
}

/** The sheets on which cells moved. */
export const sheetsMoved = ({ subUnitId, from, to }: Moved): string[] =>
  [...new Set([subUnitId, from?.subUnitId, to?.subUnitId])].filter((sheet) => sheet !== undefined);

/** Every cell of the sheets that are still there. */
function wholeSheets(books: IUniverInstanceService, moved: Moved): IUnitRange[] {
  const book = books.getUnit<Workbook>(moved.unitId, UniverInstanceType.UNIVER_SHEET);
  return sheetsMoved(moved).flatMap((sheetId) => {
    const sheet = book?.getSheetBySheetId(sheetId);
    if (!sheet) return [];
    const range = { startRow: 0, startColumn: 0, endRow: sheet.getRowCount() - 1, endColumn: sheet.getColumnCount() - 1 };
    return [{ unitId: moved.unitId, sheetId, range }];
  });
}
