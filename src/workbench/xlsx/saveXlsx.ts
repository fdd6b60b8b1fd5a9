import { BooleanNumber, type ICellData, type IStyleData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { CellErrorValue, CellValue, PageSetup, Workbook as FileWorkbook, Worksheet as FileSheet } from "exceljs";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { readCell } from "../../workbook/grid/readCell";
import { usedArea } from "../../workbook/grid/usedArea";
import { pointsOf, ROW_HEIGHT } from "../../workbook/grid/worksheetData";
import { charactersOf } from "../../workbook/columnPixels";
import { rangeOf, type CellArea } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { fileLibrary } from "./fileLibrary";
import { fileRule } from "./fileRule";
import { conditional, footerOf, pageSetup, plansOf } from "./filePage";
import { fileStyle } from "./fileStyle";
import { storedFormula } from "./storedFormula";

/** A page as wide as the sheet, as many as it is long; printed column by column, a run sheet falls apart. */
const ON_PAPER: Partial<PageSetup> = { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 };

type Looks = IWorkbookData["styles"];

/**
 * The workbook as an .xlsx file: cell formulas under their stored names with the values they show, looks, widths, entry
 * rules and frozen rows. A spill becomes an array formula of fixed size; the file library can write no other.
 */
export async function saveXlsx(engine: GridEngine): Promise<Uint8Array<ArrayBuffer>> {
  const { Workbook } = await fileLibrary();
  await engine.settled();
  const file = new Workbook();
  const snapshot = engine.book.save();
  for (const sheet of engine.book.getSheets()) {
    const data = snapshot.sheets[sheet.getSheetId()];
    if (data !== undefined) writeSheet(engine, file, sheet, data, snapshot.styles);
  }
  return new Uint8Array(await file.xlsx.writeBuffer());
}

function writeSheet(engine: GridEngine, file: FileWorkbook, sheet: FWorksheet, data: Partial<IWorksheetData>, looks: Looks): void {
  const frozenRows = data.freeze?.ySplit ?? 0;
  const plans = plansOf(data);
  const written = file.addWorksheet(sheet.getSheetName(), {
    views: frozenRows > 0 ? [{ state: "frozen", ySplit: frozenRows, showGridLines: data.showGridlines !== BooleanNumber.FALSE }] : [],
    pageSetup: plans.print === undefined ? ON_PAPER : pageSetup(plans.print),
  });
  if (plans.print !== undefined) written.headerFooter.oddFooter = footerOf(plans.print);
  for (const [column, { w }] of Object.entries(data.columnData ?? {}))
    if (w !== undefined) written.getColumn(Number(column) + 1).width = charactersOf(w);
  for (const [row, { h }] of Object.entries(data.rowData ?? {}))
    if (h !== undefined && h !== ROW_HEIGHT) written.getRow(Number(row) + 1).height = pointsOf(h);
  for (const [row, cells] of Object.entries(data.cellData ?? {})) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      const look = lookFor(cell as ICellData, looks);
      if (look !== undefined) written.getCell(Number(row) + 1, Number(column) + 1).style = fileStyle(look);
    }
  }
  const used = usedArea(engine, sheet);
  if (used !== undefined) writeValues(engine, sheet, used, written);
  // After the values: a break belongs to a row that stands.
  for (const row of plans.print?.breaksBefore ?? []) written.getRow(row - 1).addPageBreak();
  for (const emphasis of plans.emphasis ?? []) written.addConditionalFormatting(conditional(emphasis));
  writeRules(sheet, written);
}

const lookFor = (cell: ICellData, looks: Looks): IStyleData | undefined => (typeof cell.s === "string" ? looks[cell.s] : cell.s) ?? undefined;

function writeValues(engine: GridEngine, sheet: FWorksheet, used: CellArea, written: FileSheet): void {
  for (let row = used.row; row < used.row + used.rows; row++) {
    for (let column = used.column; column < used.column + used.columns; column++) {
      const cell = readCell(engine, sheet, row, column);
      if (cell.value === null && cell.formula === "") continue;
      written.getCell(row + 1, column + 1).value = valueOf(cell);
    }
  }
}

function valueOf(cell: CellReading): CellValue {
  const result = resultOf(cell);
  if (cell.formula === "") return result;
  const held = { formula: storedFormula(cell.formula), ...(result === null ? {} : { result }) };
  return cell.spill === "" ? held : { ...held, shareType: "array", ref: cell.spill };
}

const resultOf = ({ error, value }: CellReading): string | number | boolean | CellErrorValue | null =>
  error === "" ? value : ({ error } as CellErrorValue);

function writeRules(sheet: FWorksheet, written: FileSheet): void {
  for (const { rule } of sheet.getDataValidations()) {
    for (const range of rule.ranges) {
      const area = {
        row: range.startRow,
        column: range.startColumn,
        rows: range.endRow - range.startRow + 1,
        columns: range.endColumn - range.startColumn + 1,
      };
      written.dataValidations.add(rangeOf(area), fileRule(rule));
    }
  }
}
