import { BooleanNumber, type IStyleData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { GridEngine } from "../../../workbook/grid/GridEngine";
import { ROW_HEIGHT } from "../../../workbook/grid/writing/worksheetData";
import { heldCells, type HeldCells } from "./heldCells";

/** A sheet of the grid at one moment, as far as a file keeps it. */
export interface SheetState {
  readonly id: string;
  readonly name: string;
  readonly cells: HeldCells;
  /** The look that its row or column gives to a cell without one. */
  readonly lineLook: (row: number, column: number) => IStyleData | undefined;
  /** Pixels, by the column's place; a column that nobody set has none. */
  readonly widths: ReadonlyMap<number, number>;
  /** Pixels, of rows whose height was set. */
  readonly heights: ReadonlyMap<number, number>;
  /** What is not changed in place, as one text: merged cells, what stays in view, rules for entries. */
  readonly further: string;
}

export function sheetStates(engine: GridEngine): SheetState[] {
  const { sheets, styles } = engine.book.save();
  return engine.book.getSheets().map((sheet) => sheetState(engine, sheet, sheets[sheet.getSheetId()] ?? {}, styles));
}

function sheetState(engine: GridEngine, sheet: FWorksheet, data: Partial<IWorksheetData>, looks: IWorkbookData["styles"]): SheetState {
  const sizes = (
    lines: object | undefined,
    size: (line: { w?: number; h?: number; ia?: BooleanNumber }) => number | undefined,
  ): Map<number, number> =>
    new Map(
      Object.entries((lines ?? {}) as Record<string, { w?: number; h?: number }>).flatMap(([place, line]) => {
        const pixels = size(line);
        return pixels === undefined ? [] : [[Number(place), pixels] as const];
      }),
    );
  const [rowLooks, columnLooks] = [data.rowData, data.columnData].map((lines) => looksOf(lines, looks)) as [LooksByLine, LooksByLine];
  const lineLook = (row: number, column: number): IStyleData | undefined => rowLooks.get(row) ?? columnLooks.get(column);
  const rules = sheet.getDataValidations().map(({ rule }) => JSON.stringify({ ...rule, uid: "" }));
  return {
    id: sheet.getSheetId(),
    name: sheet.getSheetName(),
    cells: heldCells(engine, sheet, looks, lineLook),
    lineLook,
    widths: sizes(data.columnData, ({ w }) => w),
    heights: sizes(data.rowData, ({ h, ia }) => (ia === BooleanNumber.FALSE && h !== ROW_HEIGHT ? h : undefined)),
    further: JSON.stringify([data.mergeData ?? [], data.freeze ?? {}, data.showGridlines ?? BooleanNumber.TRUE, rules.sort()]),
  };
}

type LooksByLine = ReadonlyMap<number, IStyleData>;

function looksOf(lines: object | undefined, looks: IWorkbookData["styles"]): LooksByLine {
  const found = new Map<number, IStyleData>();
  for (const [place, { s }] of Object.entries((lines ?? {}) as Record<string, { s?: string | IStyleData | null }>)) {
    const look = typeof s === "string" ? looks[s] : s;
    if (look && Object.keys(look).length > 0) found.set(Number(place), look);
  }
  return found;
}
