import { BooleanNumber, generateRandomId, type ICellData, type IDataValidationRule, type IRange, type IWorksheetData } from "@univerjs/core";
import type { Cell, DataValidation, Worksheet as FileSheet } from "exceljs";
import { notAWorkbookFile } from "../../problems/workbookProblems";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { cellData } from "../../workbook/grid/cellData";
import { replaceSheets, type GridSheet } from "../../workbook/grid/GridSheet";
import { ROW_HEIGHT, rowPixelsOf } from "../../workbook/grid/worksheetData";
import { pixelsOf } from "../../workbook/columnPixels";
import { cellArea, covers, type CellArea } from "../../workbook/cellArea";
import { WorkbookProblem, type CellContent } from "../../workbook/Workbook";
import { fileLibrary } from "./fileLibrary";
import { lookOf } from "./fileStyle";
import { plansIn } from "./filePage";
import { ruleOf } from "./fileRule";
import { typedFormula } from "./storedFormula";

/** Room to go on working below and beside what the file holds. */
const SPARE_ROWS = 100;
const COLUMNS = 26;

/**
 * Puts the sheets of an .xlsx file in place of the open ones and calculates them.
 * @throws WorkbookProblem when the content is no .xlsx file; the open sheets then stay
 */
export async function openXlsx(engine: GridEngine, content: Uint8Array<ArrayBuffer>): Promise<void> {
  const { Workbook } = await fileLibrary();
  const file = new Workbook();
  try {
    await file.xlsx.load(content.buffer);
  } catch {
    throw new WorkbookProblem(notAWorkbookFile);
  }
  if (file.worksheets.length === 0) throw new WorkbookProblem(notAWorkbookFile);
  await replaceSheets(engine, file.worksheets.map(sheetOf));
}

function sheetOf(sheet: FileSheet): GridSheet {
  const cells: Record<number, Record<number, ICellData>> = {};
  // A height that the file says is kept, whatever the text would take.
  const heights: Record<number, { h: number; ia: BooleanNumber }> = {};
  const arrays = arrayAreas(sheet);
  sheet.eachRow({ includeEmpty: false }, (row, rowNumber) => {
    if ((row.height as number | undefined) !== undefined) heights[rowNumber - 1] = { h: rowPixelsOf(row.height), ia: BooleanNumber.FALSE };
    row.eachCell({ includeEmpty: true }, (cell, columnNumber) => {
      const held = heldBy(cell, arrays);
      if (held !== undefined) (cells[rowNumber - 1] ??= {})[columnNumber - 1] = held;
    });
  });
  const views = (sheet.views as typeof sheet.views | null) ?? [];
  const frozenRows = views.reduce((rows, view) => (view.state === "frozen" ? (view.ySplit ?? 0) : rows), 0);
  const data: Partial<IWorksheetData> = {
    id: generateRandomId(),
    name: sheet.name,
    rowCount: sheet.rowCount + SPARE_ROWS,
    columnCount: Math.max(COLUMNS, sheet.columnCount),
    defaultRowHeight: ROW_HEIGHT,
    cellData: cells,
    rowData: heights,
    custom: plansIn(sheet),
    ...(views.some(({ showGridLines }) => showGridLines === false) && { showGridlines: BooleanNumber.FALSE }),
    columnData: Object.fromEntries(
      (sheet.columns ?? []).flatMap(({ width }, column) => (width === undefined ? [] : [[column, { w: pixelsOf(width) }]])),
    ),
    ...(frozenRows > 0 && { freeze: { xSplit: 0, ySplit: frozenRows, startRow: frozenRows, startColumn: -1 } }),
  };
  return { name: sheet.name, data, rules: rulesOf(sheet) };
}

/** Every array formula's area; the grid fills all of it from the first cell. */
function arrayAreas(sheet: FileSheet): CellArea[] {
  const areas: CellArea[] = [];
  sheet.eachRow((row) =>
    row.eachCell((cell) => {
      const { shareType, ref } = cell.model;
      const area = shareType === "array" && ref !== undefined ? cellArea(ref) : undefined;
      if (area !== undefined) areas.push(area);
    }),
  );
  return areas;
}

function heldBy(cell: Cell, arrays: readonly CellArea[]): ICellData | undefined {
  const look = lookOf(cell.style);
  const [row, column] = [Number(cell.row) - 1, Number(cell.col) - 1];
  const isFilledByArray = arrays.some((area) => covers(area, row, column) && (area.row !== row || area.column !== column));
  if (isFilledByArray) return { s: look };
  if (cell.formula) return { f: typedFormula(cell.formula), s: look };
  const value = valueOf(cell);
  return value === null && Object.keys(cell.style).length === 0 ? undefined : { ...cellData(value), s: look };
}

const DAY_OF_1970 = 25_569;
const MILLISECONDS_A_DAY = 86_400_000;

/** Days since the file format's day 0, which the library has turned into a date because of the cell's number format. */
const serialOf = (date: Date): number => (date.getTime() + DAY_OF_1970 * MILLISECONDS_A_DAY) / MILLISECONDS_A_DAY;

function valueOf({ value }: Cell): CellContent {
  if (value === null || value === undefined) return null;
  if (value instanceof Date) return serialOf(value);
  if (typeof value !== "object") return value;
  if ("richText" in value) return value.richText.map(({ text }) => text).join("");
  if ("error" in value) return value.error;
  return "text" in value ? String(value.text) : null;
}

/** The library lists a rule under every cell it holds for; the cells of one rule are brought together again. */
function rulesOf(sheet: FileSheet): IDataValidationRule[] {
  const { model } = sheet.dataValidations;
  const cells = Object.entries(model).flatMap(([address, rule]) => {
    const area = cellArea(address);
    return area === undefined ? [] : [{ ...area, rule }];
  });
  const downTheColumns = cells.sort((one, other) => one.column - other.column || one.row - other.row);
  const rules = new Map<string, { rule: DataValidation; ranges: IRange[] }>();
  for (const { row, column, rows, columns, rule } of downTheColumns) {
    const key = JSON.stringify(rule);
    const ranges = rules.get(key)?.ranges ?? [];
    rules.set(key, { rule, ranges });
    const above = ranges.at(-1);
    if (above?.endRow === row - 1 && above.startColumn === column && columns === 1) above.endRow = row + rows - 1;
    else ranges.push({ startRow: row, startColumn: column, endRow: row + rows - 1, endColumn: column + columns - 1 });
  }
  return [...rules.values()].map(({ rule, ranges }) => ruleOf(rule, ranges));
}
