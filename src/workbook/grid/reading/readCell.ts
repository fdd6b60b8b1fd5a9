import { areaOfRange } from "../areaOfRange";
import { CellValueType, numfmt, type ICellData, type IRange } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { cellAt, covers, rangeOf, type CellArea } from "../../cellArea";
import type { CellContent, CellReading } from "../../Workbook";
import type { GridEngine } from "../GridEngine";
import { lineLook, overLine } from "./lineLook";

const GENERAL = "General";
/** ECMA-376 Part 1, 18.18.11 and 18.17.3, and the codes that came with spilling formulas. */
const ERROR_CODES: readonly string[] = [
  "#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", "#SPILL!", "#CALC!", "#CYCLE!", "#ERROR!",
]; // prettier-ignore

/**
 * What one cell holds and shows; row and column count from 0.
 * @param spillAt finds the spill over a cell: whoever reads many cells gives spillsOver, since looking through all spills for each takes long
 */
export function readCell(
  engine: GridEngine,
  sheet: FWorksheet,
  row: number,
  column: number,
  spillAt: SpillAt = (down, across) => spillOver(engine, sheet.getSheetId(), down, across),
): CellReading {
  const sheetId = sheet.getSheetId();
  const own: ICellData | null = sheet.getSheet().getCellRaw(row, column) ?? null;
  const formula = engine.spills.getFormulaStringByCell(row, column, sheetId, engine.book.getId()) ?? "";
  const spilled = isEmpty(own) ? spilledCell(engine, sheetId, row, column) : undefined;
  const value = contentOf(spilled ?? own);
  const error = isError(spilled ?? own, value) ? String(value) : "";
  const spill = spillAt(row, column);
  return {
    cell: cellAt(row, column),
    formula,
    value,
    shown: shownAs(value, patternOf(sheet, own, row, column)),
    error,
    message: error === "" ? "" : messageBehind(engine, sheetId, row, column, spill, error),
    spill: spill?.row === row && spill.column === column && error !== "#SPILL!" ? rangeOf(spill) : "",
  };
}

/** The value of one cell, or the error code it shows, without anything that takes longer to find. */
export function readValue(engine: GridEngine, sheet: FWorksheet, row: number, column: number): Pick<CellReading, "value" | "error"> {
  const own: ICellData | null = sheet.getSheet().getCellRaw(row, column) ?? null;
  const held = isEmpty(own) ? (spilledCell(engine, sheet.getSheetId(), row, column) ?? own) : own;
  const value = contentOf(held);
  return { value, error: isError(held, value) ? String(value) : "" };
}

export const isEmpty = (cell: ICellData | null | undefined | void): boolean =>
  cell == null || ((cell.v === undefined || cell.v === null || cell.v === "") && !cell.f && !cell.si && !cell.p);

function contentOf(cell: ICellData | null | undefined): CellContent {
  if (cell == null) return null;
  // Text with line breaks typed into the page is kept as a small document that ends in a line end.
  if (cell.p?.body) return cell.p.body.dataStream.replace(/\r\n$/, "").replace(/\r/g, "\n");
  if (cell.v === undefined || cell.v === null) return null;
  if (cell.t === CellValueType.BOOLEAN) return cell.v === true || cell.v === 1 || String(cell.v).toUpperCase() === "TRUE";
  if (cell.v === "" && !cell.f && !cell.si) return null;
  return cell.v;
}

const isError = (cell: ICellData | null | undefined, value: CellContent): boolean =>
  typeof value === "string" && cell?.t !== CellValueType.FORCE_STRING && ERROR_CODES.includes(value);

function shownAs(value: CellContent, pattern: string): string {
  if (value === null) return "";
  return typeof value === "boolean" ? String(value).toUpperCase() : numfmt.format(pattern, value, { throws: false });
}

function patternOf(sheet: FWorksheet, cell: ICellData | null, row: number, column: number): string {
  const own = typeof cell?.s === "string" ? sheet.getWorkbook().getStyles().get(cell.s) : cell?.s;
  return overLine(own, lineLook(sheet.getSheet(), row, column))?.n?.pattern ?? GENERAL;
}

const spilledCell = (engine: GridEngine, sheetId: string, row: number, column: number): ICellData | undefined =>
  engine.spills.getArrayFormulaCellData()[engine.book.getId()]?.[sheetId]?.[row]?.[column] ?? undefined;

/** The area of the spill that covers a cell. */
export type SpillAt = (row: number, column: number) => CellArea | undefined;

/** The area of the spill that covers one cell; looks through the spills of the sheet. */
export const spillOver = (engine: GridEngine, sheetId: string, row: number, column: number): CellArea | undefined =>
  spillAreas(engine, sheetId).find((area) => covers(area, row, column));

/** The same for many cells of a sheet as it is now, at the price of one look through its spills. */
export function spillsOver(engine: GridEngine, sheetId: string): SpillAt {
  const byRow = new Map<number, CellArea[]>();
  for (const area of spillAreas(engine, sheetId)) {
    for (let row = area.row; row < area.row + area.rows; row++) {
      const inRow = byRow.get(row);
      if (inRow === undefined) byRow.set(row, [area]);
      else inRow.push(area);
    }
  }
  return (row, column) => byRow.get(row)?.find((area) => covers(area, row, column));
}

/** Every area that the formula in its first cell fills, or would fill if nothing stood in its way. */
export function spillAreas(engine: GridEngine, sheetId: string): CellArea[] {
  const onSheet = engine.spills.getArrayFormulaRange()[engine.book.getId()]?.[sheetId] ?? {};
  return Object.values(onSheet).flatMap((inRow) =>
    (Object.values(inRow ?? {}) as (IRange | null)[]).flatMap((range) => {
      if (range === null) return [];
      const area = areaOfRange(range);
      return area.rows * area.columns > 1 ? [area] : [];
    }),
  );
}

function messageBehind(engine: GridEngine, sheetId: string, row: number, column: number, spill: CellArea | undefined, error: string): string {
  const formulaCell = spill ?? { row, column };
  return engine.messages.behind(sheetId, formulaCell, { row: row - formulaCell.row, column: column - formulaCell.column }, error);
}
