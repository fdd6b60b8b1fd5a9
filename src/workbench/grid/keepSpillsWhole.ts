import { ICommandService, Rectangle, type IRange } from "@univerjs/core";
import {
  DeleteRangeMoveLeftCommand,
  DeleteRangeMoveUpCommand,
  IAutoFillService,
  InsertRangeMoveDownCommand,
  InsertRangeMoveRightCommand,
  MoveRangeCommand,
  type IMoveRangeCommandParams,
} from "@univerjs/sheets";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { whyNotInPart, type CellsTouched } from "./filledPart";

const DOWN: readonly string[] = [InsertRangeMoveDownCommand.id, DeleteRangeMoveUpCommand.id];
const ACROSS: readonly string[] = [InsertRangeMoveRightCommand.id, DeleteRangeMoveLeftCommand.id];

/**
 * Refuses what is dragged, filled or shifted into a part of what a formula fills, or out of it, as what is typed there is refused.
 * @param say tells the person why
 */
export function keepSpillsWhole(engine: GridEngine, say: (sentence: string) => void): void {
  const isRefused = (touched: readonly CellsTouched[]): boolean => {
    const why = whyNotInPart(engine, touched);
    if (why !== undefined) say(why);
    return why !== undefined;
  };
  const commands = engine.injector.get(ICommandService);
  const [execute, executeNow] = [commands.executeCommand.bind(commands), commands.syncExecuteCommand.bind(commands)];
  commands.executeCommand = async (id, params, options) =>
    isRefused(touchedBy(engine, id, params)) ? (false as never) : execute(id, params, options);
  commands.syncExecuteCommand = (id, params, options) =>
    isRefused(touchedBy(engine, id, params)) ? (false as never) : executeNow(id, params, options);
  const fills = engine.injector.get(IAutoFillService);
  const fill = fills.triggerAutoFill.bind(fills);
  fills.triggerAutoFill = async (unitId, sheetId, source, selected, ...others) =>
    isRefused([{ sheetId, written: Rectangle.subtract(selected, source) }]) ? false : fill(unitId, sheetId, source, selected, ...others);
}

/** What the engine's commands that move cells of a sheet touch. */
function touchedBy({ book }: GridEngine, id: string, given: unknown): readonly CellsTouched[] {
  if (id !== MoveRangeCommand.id && !DOWN.includes(id) && !ACROSS.includes(id)) return [];
  const active = book.getActiveSheet();
  if (id === MoveRangeCommand.id) {
    const { fromRange, toRange, fromSubUnitId = active.getSheetId(), toSubUnitId = fromSubUnitId } = given as IMoveRangeCommandParams;
    return onSheets([fromSubUnitId, fromRange], [toSubUnitId, toRange]);
  }
  const range = (given as { readonly range?: IRange } | undefined)?.range ?? active.getSelection()?.getActiveRange()?.getRange();
  if (!range) return [];
  const rest = DOWN.includes(id) ? { ...range, endRow: active.getMaxRows() - 1 } : { ...range, endColumn: active.getMaxColumns() - 1 };
  return [{ sheetId: active.getSheetId(), moved: [rest] }];
}

/** What a move from a place to another touches. */
export const onSheets = ([fromSheet, moved]: readonly [string, IRange], [toSheet, written]: readonly [string, IRange]): readonly CellsTouched[] =>
  fromSheet === toSheet
    ? [{ sheetId: fromSheet, moved: [moved], written: [written] }]
    : [
        { sheetId: fromSheet, moved: [moved] },
        { sheetId: toSheet, written: [written] },
      ];
