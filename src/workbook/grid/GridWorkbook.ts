import type { FRange, FWorksheet } from "@univerjs/sheets/facade";
import { cellNotBlank, noSuchSheet, notACellFormula } from "../../problems/workbookProblems";
import { areaNamed, areaToFill } from "../areaNamed";
import { cellAt, rangeOf, type CellArea } from "../cellArea";
import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName } from "../freeSheetName";
import type { SheetPlan } from "../SheetPlan";
import { WorkbookProblem, type CellAddress, type FrozenArea, type RangeReading, type Workbook } from "../Workbook";
import type { GridEngine } from "./GridEngine";
import { cellData } from "./cellData";
import { fitRowHeights } from "./fitRowHeights";
import { gridSheet, insertGridSheet } from "./GridSheet";
import { readCell } from "./readCell";
import { selectionWatch } from "./selectionWatch";
import { usedArea } from "./usedArea";

/** The local workbook: an open-source grid, in a page or headless in Node. */
export class GridWorkbook implements Workbook {
  readonly name = "the local workbook";
  readonly drawsCharts = false;

  constructor(private readonly engine: GridEngine) {}

  async sheetNames(): Promise<readonly string[]> {
    return this.engine.book.getSheets().map((sheet) => sheet.getSheetName());
  }

  async selectedCell(): Promise<CellAddress> {
    return this.selected();
  }

  async select({ sheet, cell }: CellAddress): Promise<void> {
    const found = this.sheetNamed(sheet);
    const { row, column } = areaNamed(cell);
    this.engine.book.setActiveSheet(found);
    found.getRange(row, column).activate();
  }

  async onSelection(listener: (address: CellAddress) => void): Promise<() => Promise<void>> {
    const stop = selectionWatch(this.engine, () => this.look(), listener);
    return async () => stop();
  }

  async read(sheet: string, range: string): Promise<RangeReading> {
    const found = this.sheetNamed(sheet);
    const area = areaNamed(range);
    await this.engine.settled();
    return this.reading(found, area);
  }

  async readUsed(sheet: string): Promise<RangeReading> {
    const found = this.sheetNamed(sheet);
    await this.engine.settled();
    const area = usedArea(this.engine, found);
    return area === undefined ? { sheet: found.getSheetName(), range: "", rows: [] } : this.reading(found, area);
  }

  async writeFormula({ sheet, cell }: CellAddress, formula: string): Promise<void> {
    if (!formula.startsWith("=")) throw new WorkbookProblem(notACellFormula(formula));
    const found = this.sheetNamed(sheet);
    const { row, column } = areaNamed(cell);
    await this.engine.settled();
    const there = readCell(this.engine, found, row, column);
    if (there.value !== null || there.formula !== "") throw new WorkbookProblem(cellNotBlank(there.cell));
    found.getRange(row, column).setValue({ f: formula });
    await this.engine.settled();
  }

  async addSheet(plan: SheetPlan): Promise<string> {
    checkSheetPlan(plan);
    const name = freeSheetName(plan.name, await this.sheetNames());
    const sheet = insertGridSheet(this.engine, gridSheet(plan, name));
    await this.select({ sheet: name, cell: plan.startAt });
    await this.engine.settled();
    fitRowHeights(this.engine, sheet);
    return name;
  }

  async copySheet(sheet: string, wantedName: string): Promise<string> {
    const original = this.sheetNamed(sheet);
    const name = freeSheetName(wantedName, await this.sheetNames());
    await this.engine.settled();
    this.engine.book.duplicateSheet(original).setName(name);
    await this.engine.settled();
    return name;
  }

  async freeze(sheet: string, areas: readonly FrozenArea[]): Promise<void> {
    const found = this.sheetNamed(sheet);
    const ranges = areas.map((filled) => rangeOn(found, areaToFill(filled)));
    await this.engine.settled();
    areas.forEach(({ values }, index) => ranges[index]?.setValues(values.map((row) => row.map(cellData))));
    await this.engine.settled();
  }

  private selected(): CellAddress {
    const sheet = this.engine.book.getActiveSheet();
    const cell = sheet.getSelection()?.getCurrentCell();
    return { sheet: sheet.getSheetName(), cell: cellAt(cell?.actualRow ?? 0, cell?.actualColumn ?? 0) };
  }

  private look(): { address: CellAddress; held: string } {
    const address = this.selected();
    const { row, column } = areaNamed(address.cell);
    return { address, held: JSON.stringify(readCell(this.engine, this.sheetNamed(address.sheet), row, column)) };
  }

  private sheetNamed(name: string): FWorksheet {
    const sheet = this.engine.book.getSheets().find((candidate) => candidate.getSheetName().toLowerCase() === name.toLowerCase());
    if (sheet === undefined) throw new WorkbookProblem(noSuchSheet(name));
    return sheet;
  }

  private reading(sheet: FWorksheet, area: CellArea): RangeReading {
    const rows = Array.from({ length: area.rows }, (_, row) =>
      Array.from({ length: area.columns }, (_, column) => readCell(this.engine, sheet, area.row + row, area.column + column)),
    );
    return { sheet: sheet.getSheetName(), range: rangeOf(area), rows };
  }
}

const rangeOn = (sheet: FWorksheet, { row, column, rows, columns }: CellArea): FRange => sheet.getRange(row, column, rows, columns);
