import { areaOfRange } from "../../../workbook/grid/areaOfRange";
import type { ICellData, IRange, IStyleData, IWorkbookData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { COLUMNS_OF_A_SHEET, rangeOf } from "../../../workbook/cellArea";
import type { GridEngine } from "../../../workbook/grid/GridEngine";
import { isEmpty, readValue } from "../../../workbook/grid/reading/readCell";
import { usedCells } from "../../../workbook/grid/reading/usedArea";
import type { FileValue } from "../../../xlsx/package/cells/CellChange";
import { overLine } from "../../../workbook/grid/reading/lineLook";

/** A cell of the grid as far as a file keeps it. */
export interface HeldCell {
  readonly row: number;
  readonly column: number;
  /** As typed, with "="; "" for none. */
  readonly formula: string;
  readonly value: FileValue;
  /** The cells that the formula fills, itself included; "" for one cell alone. */
  readonly spill: string;
  /** True where another cell's formula fills it. */
  readonly isFilled: boolean;
  readonly look: IStyleData | undefined;
}

/** Cells by their place on the sheet. */
export type HeldCells = ReadonlyMap<number, HeldCell>;

export const placeOf = (row: number, column: number): number => row * COLUMNS_OF_A_SHEET + column;

/**
 * Every cell of a sheet that holds anything or has a look.
 * @param looks the workbook's list of looks, which cells name
 * @param lineLook the look of a cell's row or column
 */
export function heldCells(
  engine: GridEngine,
  sheet: FWorksheet,
  looks: IWorkbookData["styles"],
  lineLook: (row: number, column: number) => IStyleData | undefined,
): HeldCells {
  const [unit, id] = [engine.book.getId(), sheet.getSheetId()];
  const spills = engine.spills.getArrayFormulaRange()[unit]?.[id] ?? {};
  const places = new Map<number, readonly [number, number]>();
  const matrix = sheet.getSheet().getCellMatrix();
  matrix.forValue((row, column) => void places.set(placeOf(row, column), [row, column]));
  for (const { row, column } of usedCells(engine, sheet)) places.set(placeOf(row, column), [row, column]);
  const held = new Map<number, HeldCell>();
  for (const [place, [row, column]] of places) {
    const own: ICellData | undefined = matrix.getValue(row, column) ?? undefined;
    const isFormula = (own?.f ?? "") !== "" || (own?.si ?? "") !== "";
    const { value, error } = readValue(engine, sheet, row, column);
    const range = (spills[row]?.[column] ?? undefined) as IRange | undefined;
    const ownLook = typeof own?.s === "string" ? looks[own.s] : own?.s;
    const isFilled = !isFormula && isEmpty(own) && value !== null;
    if (!isFormula && value === null && !ownLook) continue;
    const look = overLine(ownLook, lineLook(row, column));
    held.set(place, {
      ...{ row, column, look, isFilled },
      formula: isFormula ? (engine.spills.getFormulaStringByCell(row, column, id, unit) ?? "") : "",
      value: error === "" ? value : { error },
      spill: range === undefined || !isFormula || error === "#SPILL!" ? "" : spillOf(range),
    });
  }
  return held;
}

function spillOf(range: IRange): string {
  const area = areaOfRange(range);
  return area.rows * area.columns === 1 ? "" : rangeOf(area);
}
