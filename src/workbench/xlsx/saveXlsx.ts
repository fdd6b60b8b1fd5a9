import { areaOfRange } from "../../workbook/grid/areaOfRange";
import { BooleanNumber, type ICellData, type IStyleData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { CellErrorValue, CellValue, PageSetup, Workbook as FileWorkbook, Worksheet as FileSheet } from "exceljs";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { namesIn } from "../../workbook/grid/writing/definedNames";
import { readCell, spillsOver } from "../../workbook/grid/reading/readCell";
import { usedCells } from "../../workbook/grid/reading/usedArea";
import { pointsOf, ROW_HEIGHT } from "../../workbook/grid/writing/worksheetData";
import { charactersOf } from "../../workbook/columnPixels";
import { rangeOf } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import type { PlannedChart } from "../../workbook/SheetPlan";
import { addCharts } from "../../xlsx/charts/addCharts";
import { fileLibrary } from "../../xlsx/fileLibrary";
import { WorkbookPackage } from "../../xlsx/package/WorkbookPackage";
import { fileRule } from "./fileRule";
import { conditional, footerOf, headerOf, pageSetup } from "../../xlsx/planned/filePage";
import { textForLibrary } from "../../xlsx/planned/textForLibrary";
import { isUnread } from "../unreadFormula";
import { plansOf } from "./plansOf";
import { fileStyle } from "./fileStyle";
import { storedFormula } from "../../xlsx/formulas/storedFormula";
import { writeMerged } from "./saving/mergedCells";
import { printNames } from "../../xlsx/planned/printNames";
import { namesForSeveral, worksOnRanges, type NamesForSeveral } from "../../xlsx/formulas/worksOnRanges";

/** A page as wide as the sheet, as many as it is long; printed column by column, a run sheet falls apart. */
const ON_PAPER: Partial<PageSetup> = { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 };

type Looks = IWorkbookData["styles"];

/** What all sheets of the workbook share. */
interface Shared {
  readonly looks: Looks;
  readonly names: NamesForSeveral;
  readonly fromFile: ReadonlySet<string>;
}

/**
 * The workbook as an .xlsx file: cell formulas under their stored names with the values they show, looks, widths, entry
 * rules, merged cells, names and frozen rows. A spill becomes an array formula of fixed size; the file library can write no other.
 * @param fromFile formulas that came with a file; of any other one that cannot be read the text is written
 */
export async function saveXlsx(engine: GridEngine, fromFile: ReadonlySet<string> = new Set()): Promise<Uint8Array<ArrayBuffer>> {
  const file = await WorkbookPackage.of(await sheetsFile(engine, fromFile));
  for (const sheet of engine.book.getSheets()) await addCharts(file, sheet.getSheetName(), chartsOn(engine, sheet.getSheetId()));
  return file.bytes();
}

/** The charts planned for a sheet, which the grid itself does not draw. @param id the sheet's own in the grid */
export const chartsOn = (engine: GridEngine, id: string): readonly PlannedChart[] =>
  plansOf(engine.book.getSheetBySheetId(id)?.getSheet().getConfig() ?? {}).charts ?? [];

/** Some sheets of the workbook as a file without charts. @param fromFile as above @param only their own ids in the grid; left out for all */
export async function sheetsFile(engine: GridEngine, fromFile: ReadonlySet<string>, only?: ReadonlySet<string>): Promise<Uint8Array<ArrayBuffer>> {
  const { Workbook } = await fileLibrary();
  await engine.settled();
  const file = new Workbook();
  const snapshot = engine.book.save();
  const shared: Shared = { looks: snapshot.styles, names: namesForSeveral(namesIn(engine)), fromFile };
  for (const sheet of engine.book.getSheets()) {
    const data = snapshot.sheets[sheet.getSheetId()];
    if (data !== undefined && only?.has(sheet.getSheetId()) !== false) writeSheet(engine, file, sheet, data, shared);
  }
  writeNames(engine, file);
  return new Uint8Array(await file.xlsx.writeBuffer());
}

function writeSheet(engine: GridEngine, file: FileWorkbook, sheet: FWorksheet, data: Partial<IWorksheetData>, shared: Shared): void {
  const { ySplit = 0, xSplit = 0 } = data.freeze ?? {};
  const plans = plansOf(data);
  const showGridLines = data.showGridlines !== BooleanNumber.FALSE;
  const written = file.addWorksheet(sheet.getSheetName(), {
    views: ySplit + xSplit > 0 ? [{ state: "frozen", ySplit, xSplit, showGridLines }] : [{ state: "normal", showGridLines }],
    pageSetup: plans.print === undefined ? ON_PAPER : pageSetup(plans.print),
  });
  if (plans.print !== undefined) Object.assign(written.headerFooter, { oddHeader: headerOf(plans.print), oddFooter: footerOf(plans.print) });
  for (const [column, { w, s }] of Object.entries(data.columnData ?? {})) {
    if (w !== undefined) written.getColumn(Number(column) + 1).width = charactersOf(w);
    const look = lookFor({ s }, shared.looks);
    if (look !== undefined) written.getColumn(Number(column) + 1).style = fileStyle(look);
  }
  for (const [row, { h, s }] of Object.entries(data.rowData ?? {})) {
    if (h !== undefined && h !== ROW_HEIGHT) written.getRow(Number(row) + 1).height = pointsOf(h);
    const look = lookFor({ s }, shared.looks);
    if (look !== undefined) Object.assign(written.getRow(Number(row) + 1), { style: fileStyle(look) });
  }
  for (const [row, cells] of Object.entries(data.cellData ?? {})) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      const look = lookFor(cell as ICellData, shared.looks);
      if (look !== undefined) written.getCell(Number(row) + 1, Number(column) + 1).style = fileStyle(look);
    }
  }
  writeValues(engine, sheet, written, shared);
  // After the values: a break belongs to a row that stands.
  for (const row of plans.print?.breaksBefore ?? []) written.getRow(row - 1).addPageBreak();
  for (const emphasis of plans.emphasis ?? []) written.addConditionalFormatting(conditional(emphasis));
  writeRules(sheet, written);
  writeMerged(data.mergeData ?? [], written);
}

const lookFor = (cell: ICellData, looks: Looks): IStyleData | undefined => (typeof cell.s === "string" ? looks[cell.s] : cell.s) ?? undefined;

function writeValues(engine: GridEngine, sheet: FWorksheet, written: FileSheet, shared: Shared): void {
  const spillAt = spillsOver(engine, sheet.getSheetId());
  for (const { row, column } of usedCells(engine, sheet)) {
    const cell = readCell(engine, sheet, row, column, spillAt);
    if (cell.value !== null || cell.formula !== "") written.getCell(row + 1, column + 1).value = valueOf(cell, shared);
  }
}

/** The library knows names of ranges alone; its writer takes any text for one. */
function writeNames(engine: GridEngine, file: FileWorkbook): void {
  const sheets = file.worksheets.map(({ name }) => name);
  const isWritten = (sheet: string | undefined): boolean => sheet === undefined || sheets.includes(sheet);
  const written = namesIn(engine).filter(({ sheet }) => isWritten(sheet));
  const model = written.map(({ name, refersTo, sheet }) => ({
    name,
    ranges: [storedFormula(`=${refersTo}`)],
    ...(sheet !== undefined && { localSheetId: sheets.indexOf(sheet) }),
  }));
  Object.defineProperty(file.definedNames, "model", { value: [...model, ...printNames(file)] });
}

function valueOf(cell: CellReading, { names, fromFile }: Shared): CellValue {
  const result = resultOf(cell);
  if (cell.formula === "") return result;
  if (!fromFile.has(cell.formula) && isUnread(cell.formula)) return textForLibrary(cell.formula);
  const held = { formula: storedFormula(cell.formula), ...(result === null ? {} : { result }) };
  const area = cell.spill === "" && worksOnRanges(cell.formula, names) ? cell.cell : cell.spill;
  return area === "" ? held : { ...held, shareType: "array", ref: area };
}

const resultOf = ({ error, value }: CellReading): string | number | boolean | CellErrorValue | null =>
  error !== "" ? ({ error } as CellErrorValue) : typeof value === "string" ? textForLibrary(value) : value;

function writeRules(sheet: FWorksheet, written: FileSheet): void {
  for (const { rule } of sheet.getDataValidations()) {
    for (const range of rule.ranges) written.dataValidations.add(rangeOf(areaOfRange(range)), fileRule(rule));
  }
}
