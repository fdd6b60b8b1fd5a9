import type { FRange, FWorksheet } from "@univerjs/sheets/facade";
import { cellNotBlank, nameJustTaken, noSuchSheet, notACellFormula } from "../../problems/workbookProblems";
import { areaNamed, areaToFill } from "../areaNamed";
import { cellAt, rangeOf, type CellArea } from "../cellArea";
import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName, unfinishedCopyName } from "../freeSheetName";
import type { SheetPlan } from "../SheetPlan";
import {
  WorkbookProblem,
  type Calculation,
  type CellAddress,
  type CellLook,
  type CopyWithValues,
  type InputsReading,
  type RangeReading,
  type UnfinishedSheet,
  type WantedCells,
  type Workbook,
} from "../Workbook";
import type { GridEngine } from "./GridEngine";
import { cellData } from "./cellData";
import { fitRowHeights } from "./fitRowHeights";
import { gridSheet, insertGridSheet } from "./GridSheet";
import { calculationOf, lookAtCell, readInputCells } from "./lookAtCell";
import { readCell } from "./readCell";
import { selectionWatch } from "./selectionWatch";
import { usedArea } from "./usedArea";

/** The local workbook: an open-source grid, in a page or headless in Node. */
export class GridWorkbook implements Workbook {
  readonly name = "the local workbook";
  readonly drawsCharts = false;

  constructor(private readonly engine: GridEngine) {}

  async sheetNames(): Promise<readonly string[]> {
    return this.names();
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

  async onSelection(listener: (look: CellLook) => void): Promise<() => Promise<void>> {
    const stop = selectionWatch(this.engine, () => lookAtCell(this.engine, this.engine.book.getActiveSheet(), this.selected().cell), listener);
    return async () => stop();
  }

  async calculation(): Promise<Calculation> {
    return calculationOf(this.engine);
  }

  async look(address?: CellAddress): Promise<CellLook> {
    const { sheet, cell } = address ?? this.selected();
    return lookAtCell(this.engine, this.sheetNamed(sheet), cell);
  }

  async readInputs({ sheet, cell }: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading> {
    const sheets = wanted.map((cells) => ({ ...cells, found: this.sheetNamed(cells.sheet) }));
    const ranges = sheets.map(({ found, range, spill }) => readInputCells(this.engine, found, range, spill));
    return { again: lookAtCell(this.engine, this.sheetNamed(sheet), cell), ranges };
  }

  async holdsText(sheet: string, text: string): Promise<boolean> {
    const cells = this.sheetNamed(sheet).getSheet().getCellMatrix();
    let holds = false;
    cells.forValue((_row, _column, cell) => void (holds ||= cell?.v === text));
    return holds;
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
    const name = freeSheetName(plan.name, this.names());
    await this.wholeOrNothing(async (made) => {
      const sheet = insertGridSheet(this.engine, gridSheet(plan, name));
      made.push(sheet);
      await this.select({ sheet: name, cell: plan.startAt });
      await this.engine.settled();
      fitRowHeights(this.engine, sheet);
    });
    return name;
  }

  async copyWithValues(sheet: string, { name, areas, beside }: CopyWithValues): Promise<void> {
    const original = this.sheetNamed(sheet);
    checkSheetPlan(beside);
    const filled = areas.map((one) => ({ area: areaToFill(one), values: one.values }));
    await this.engine.settled();
    this.refuseTaken(name, beside.name);
    await this.wholeOrNothing(async (made) => {
      const copy = this.engine.book.duplicateSheet(original);
      made.push(copy);
      copy.setName(unfinishedCopyName(sheet, this.names()));
      await this.engine.settled();
      filled.forEach(({ area, values }) => rangeOn(copy, area).setValues(values.map((row) => row.map(cellData))));
      await this.engine.settled();
      this.refuseTaken(name, beside.name);
      const recorded = insertGridSheet(this.engine, gridSheet(beside, beside.name));
      made.push(recorded);
      await this.engine.settled();
      fitRowHeights(this.engine, recorded);
      this.refuseTaken(name);
      copy.setName(name);
    });
  }

  /** The grid always answers, so nothing is ever left that could not be taken away. */
  async unfinishedSheets(): Promise<readonly UnfinishedSheet[]> {
    return [];
  }

  async removeUnfinished(): Promise<boolean> {
    return false;
  }

  /** Takes the sheets made so far away again when the work fails. */
  private async wholeOrNothing(work: (made: FWorksheet[]) => Promise<void>): Promise<void> {
    const made: FWorksheet[] = [];
    try {
      await work(made);
    } catch (problem) {
      made.forEach((sheet) => this.engine.book.deleteSheet(sheet));
      throw problem;
    }
  }

  private names(): string[] {
    return this.engine.book.getSheets().map((sheet) => sheet.getSheetName());
  }

  private refuseTaken(...wanted: readonly string[]): void {
    const taken = this.names();
    if (wanted.some((name) => freeSheetName(name, taken) !== name)) throw new WorkbookProblem(nameJustTaken);
  }

  private selected(): CellAddress {
    const sheet = this.engine.book.getActiveSheet();
    const cell = sheet.getSelection()?.getCurrentCell();
    return { sheet: sheet.getSheetName(), cell: cellAt(cell?.actualRow ?? 0, cell?.actualColumn ?? 0) };
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
