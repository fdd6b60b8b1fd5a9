import { areaOfRange } from "./areaOfRange";
import type { FWorksheet } from "@univerjs/sheets/facade";
import {
  cellNotBlank,
  changedMeanwhile,
  changedSince,
  changedWhileCopied,
  noSuchSheet,
  notACellFormula,
  tooMuchAtOnce,
} from "../../problems/workbook/workbookProblems";
import { areaNamed } from "../areaNamed";
import { cellAt, rangeOf, type CellArea } from "../cellArea";
import { holdsTheSame } from "../holdsTheSame";
import { readTwice } from "../readTwice";
import { checkSheetPlan } from "../checkSheetPlan";
import type { CellsBeside } from "../CellsBeside";
import { FIRST_SCREEN, type FirstScreen } from "../OutOfView";
import type { Grown, SheetGrowth } from "../SheetGrowth";
import type { SheetPlan } from "../SheetPlan";
import {
  WorkbookProblem,
  type Calculation,
  type CellAddress,
  type CellContent,
  type CellLook,
  type CopyMade,
  type CopyWithValues,
  type InputsReading,
  type RangeReading,
  type Reentered,
  type Reentry,
  type Removal,
  type SettledReading,
  type UnfinishedSheet,
  type WantedCells,
  type Workbook,
} from "../Workbook";
import { cellData } from "./writing/cellData";
import { gridCellsBeside } from "./gridCellsBeside";
import { asOneStep } from "./engine/asOneStep";
import type { GridEngine } from "./GridEngine";
import { growGridSheet } from "./writing/growGridSheet";
import { calculationOf, lookAtCell, readInputCells } from "./reading/lookAtCell";
import { addGridSheet, copyGridSheet, sheetNames } from "./writing/makeSheets";
import { readCell, spillsOver } from "./reading/readCell";
import { selectionWatch } from "./selectionWatch";
import { usedArea } from "./reading/usedArea";

/** Reading takes a second or two for so many cells, filled or not. */
const MOST_CELLS_READ = 500_000;

/** The local workbook: an open-source grid, in a page or headless in Node. */
export class GridWorkbook implements Workbook {
  readonly name = "the local workbook";
  readonly drawsCharts = false;

  constructor(private readonly engine: GridEngine) {}

  async sheetNames(): Promise<readonly string[]> {
    return sheetNames(this.engine);
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
    return this.readingOfAll(found);
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

  async replaceValue({ sheet, cell }: CellAddress, held: CellContent, content: CellContent): Promise<void> {
    const found = this.sheetNamed(sheet);
    const { row, column } = areaNamed(cell);
    await this.engine.settled();
    const there = readCell(this.engine, found, row, column);
    if (there.formula !== "" || there.value !== held) throw new WorkbookProblem((held === null ? cellNotBlank : changedSince)(there.cell));
    found.getRange(row, column).setValue(cellData(content));
    await this.engine.settled();
  }

  async reenter(sheet: string, cells: readonly Reentry[]): Promise<Reentered> {
    const found = this.sheetNamed(sheet);
    await this.engine.settled();
    const result = { entered: [] as string[], changed: [] as string[] };
    asOneStep(this.engine.book.getId(), () => {
      for (const { cell, held, formula } of cells) {
        const { row, column } = areaNamed(cell);
        const there = readCell(this.engine, found, row, column);
        const stands = (there.formula === "" ? String(there.value ?? "") : there.formula) === held;
        (stands ? result.entered : result.changed).push(cell);
        if (stands) found.getRange(row, column).setValue({ f: formula, v: null });
      }
    });
    await this.engine.settled();
    return result;
  }

  addSheet(plan: SheetPlan): Promise<string> {
    return addGridSheet(this.engine, plan);
  }

  async firstScreen(sheet: string): Promise<FirstScreen> {
    const found = this.sheetNamed(sheet).getSheet();
    const places = (count: number): number[] => Array.from({ length: count }, (_, place) => place);
    return {
      sheetNames: sheetNames(this.engine),
      hiddenRows: places(FIRST_SCREEN.rows).filter((row) => !found.getRowVisible(row) || found.getRowHeight(row) === 0),
      hiddenColumns: places(FIRST_SCREEN.columns).filter((column) => !found.getColVisible(column) || found.getColumnWidth(column) === 0),
      merged: found
        .getMergeData()
        .filter(({ startRow }) => startRow < FIRST_SCREEN.rows)
        .map((range) => rangeOf(areaOfRange(range))),
    };
  }

  async cellsBeside(sheet: string): Promise<CellsBeside> {
    return gridCellsBeside(this.engine, this.sheetNamed(sheet));
  }

  readSettled(sheet: string, asShown: boolean): Promise<SettledReading> {
    return readTwice(this, sheet, asShown);
  }

  async copyWithValues(sheet: string, wanted: CopyWithValues): Promise<CopyMade> {
    const original = this.sheetNamed(sheet);
    await copyGridSheet(this.engine, original, wanted, () => {
      if (!holdsTheSame(wanted.read, this.readingOfAll(original))) throw new WorkbookProblem(changedWhileCopied(sheet));
    });
    return { copy: wanted.name, beside: wanted.beside.name, touched: false };
  }

  async growSheet(sheet: string, growth: SheetGrowth): Promise<Grown> {
    const found = this.sheetNamed(sheet);
    checkSheetPlan(growth.plan);
    await this.engine.settled();
    if (!holdsTheSame(growth.read, this.readingOfAll(found))) throw new WorkbookProblem(changedMeanwhile(sheet));
    await growGridSheet(this.engine, found, growth);
    return { kept: [] };
  }

  /** The grid always answers, so nothing is ever left that could not be taken away. */
  async unfinishedSheets(): Promise<readonly UnfinishedSheet[]> {
    return [];
  }

  async removeUnfinished(): Promise<Removal> {
    return "gone";
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

  private readingOfAll(sheet: FWorksheet): RangeReading {
    const area = usedArea(this.engine, sheet);
    return area === undefined ? { sheet: sheet.getSheetName(), range: "", rows: [] } : this.reading(sheet, area);
  }

  private reading(sheet: FWorksheet, area: CellArea): RangeReading {
    if (area.rows * area.columns > MOST_CELLS_READ) throw new WorkbookProblem(tooMuchAtOnce);
    const spillAt = spillsOver(this.engine, sheet.getSheetId());
    const rows = Array.from({ length: area.rows }, (_, row) =>
      Array.from({ length: area.columns }, (_, column) => readCell(this.engine, sheet, area.row + row, area.column + column, spillAt)),
    );
    return { sheet: sheet.getSheetName(), range: rangeOf(area), rows };
  }
}
