import { ICommandService, isICellData, type ICellData, type IRange, type Nullable } from "@univerjs/core";
import { SetRangeValuesCommand, type ISetRangeValuesCommandParams } from "@univerjs/sheets";
import { filledByFormula } from "../../problems/workbook/entryProblems";
import { cellAt, rangeOf, type CellArea } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { isEmpty, readValue, spillsOver } from "../../workbook/grid/reading/readCell";

/**
 * Refuses what is entered into a cell that the formula of another one fills, as spreadsheets refuse a part of an array: the formula would lose its
 * answer, and with it whatever is calculated from it.
 * @param say tells the person why
 */
export function keepSpills(engine: GridEngine, say: (sentence: string) => void): void {
  const isRefused = (id: string, given: unknown): boolean => {
    if (id !== SetRangeValuesCommand.id) return false;
    const filled = filledPart(engine, (given ?? {}) as ISetRangeValuesCommandParams);
    if (filled !== undefined) say(filledByFormula(filled.cell, cellAt(filled.by.row, filled.by.column), rangeOf(filled.by)));
    return filled !== undefined;
  };
  const commands = engine.injector.get(ICommandService);
  const [execute, executeNow] = [commands.executeCommand.bind(commands), commands.syncExecuteCommand.bind(commands)];
  commands.executeCommand = async (id, params, options) => (isRefused(id, params) ? (false as never) : execute(id, params, options));
  commands.syncExecuteCommand = (id, params, options) => (isRefused(id, params) ? (false as never) : executeNow(id, params, options));
}

/** The first cell that would be entered into a spill whose formula stays. */
function filledPart(engine: GridEngine, given: ISetRangeValuesCommandParams): { readonly cell: string; readonly by: CellArea } | undefined {
  const sheet = given.subUnitId === undefined ? engine.book.getActiveSheet() : engine.book.getSheetBySheetId(given.subUnitId);
  const spills = engine.spills.getArrayFormulaRange()[engine.book.getId()]?.[sheet?.getSheetId() ?? ""];
  if (!sheet || spills === undefined || Object.keys(spills).length === 0) return undefined;
  const entered = cellsIn(given, sheet.getSelection()?.getActiveRange()?.getRange());
  const spillAt = spillsOver(engine, sheet.getSheetId());
  const isWritten = (row: number, column: number): boolean => entered.some((one) => one.row === row && one.column === column);
  for (const { row, column, data } of entered) {
    if (isEmpty(data)) continue;
    const by = spillAt(row, column);
    if (by === undefined || (by.row === row && by.column === column) || isWritten(by.row, by.column)) continue;
    // One that something stands in the way of fills nothing; what is in the way can be changed.
    if (readValue(engine, sheet, by.row, by.column).error !== "#SPILL!") return { cell: cellAt(row, column), by };
  }
  return undefined;
}

interface Entered {
  readonly row: number;
  readonly column: number;
  readonly data: Nullable<ICellData>;
}

/** Cell by cell what the engine's command is given: one content for a range, rows of a range, or contents by their places on the sheet. */
function cellsIn({ value, range }: ISetRangeValuesCommandParams, selected: Nullable<IRange>): readonly Entered[] {
  const area = range ?? selected;
  if (Array.isArray(value))
    return value.flatMap((cells, down) =>
      cells.map((data, right): Entered => ({ row: (area?.startRow ?? 0) + down, column: (area?.startColumn ?? 0) + right, data })),
    );
  if (!isICellData(value)) {
    const rows = Object.entries((value ?? {}) as Record<number, Record<number, Nullable<ICellData>>>);
    return rows.flatMap(([row, cells]) => Object.entries(cells).map(([column, data]) => ({ row: Number(row), column: Number(column), data })));
  }
  if (isEmpty(value) || !area) return [];
  const found: Entered[] = [];
  for (let row = area.startRow; row <= area.endRow; row++)
    for (let column = area.startColumn; column <= area.endColumn; column++) found.push({ row, column, data: value });
  return found;
}
