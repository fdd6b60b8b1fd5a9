import { fromCol, parseA1Range, toCol } from "@borgar/fx";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import {
  WorkbookProblem,
  type CellAddress,
  type CellContent,
  type CellReading,
  type RangeReading,
  type UnfinishedSheet,
  type Workbook,
} from "../../src/workbook/Workbook";

/** A cell as a test writes it: a value, or any of its reading's parts. */
export type WrittenCell = CellContent | Partial<CellReading>;

/** A workbook of a few cells for tests: it reads, records what was asked, and calculates nothing. */
export class SheetInMemory implements Workbook {
  readonly name = "the test workbook";
  drawsCharts = false;
  selected: CellAddress;
  readonly asked: string[] = [];
  unfinished: readonly UnfinishedSheet[] = [];
  readonly added: SheetPlan[] = [];
  private readonly listeners = new Set<(address: CellAddress) => void>();

  /** @param sheets sheet name -> "B7" -> what it holds */
  constructor(readonly sheets: Record<string, Record<string, WrittenCell>>) {
    this.selected = { sheet: Object.keys(sheets)[0] ?? "Sheet1", cell: "A1" };
  }

  sheetNames = async (): Promise<readonly string[]> => Object.keys(this.sheets);
  selectedCell = async (): Promise<CellAddress> => this.selected;

  select = async (address: CellAddress): Promise<void> => {
    this.selected = address;
    for (const listener of this.listeners) listener(address);
  };

  onSelection = async (listener: (address: CellAddress) => void): Promise<() => Promise<void>> => {
    this.listeners.add(listener);
    return async () => void this.listeners.delete(listener);
  };

  read = async (sheet: string, range: string): Promise<RangeReading> => {
    this.asked.push(`${sheet}!${range}`);
    const { top, left, bottom, right } = corners(range);
    const rows = Array.from({ length: bottom - top + 1 }, (_, row) =>
      Array.from({ length: right - left + 1 }, (_, column) => this.reading(sheet, `${toCol(left + column)}${top + row + 1}`)),
    );
    return { sheet, range, rows };
  };

  readUsed = async (sheet: string): Promise<RangeReading> => {
    const filled = Object.keys(this.sheet(sheet)).map(corners);
    if (filled.length === 0) return { sheet, range: "", rows: [] };
    // From the first cell that holds anything, as hosts have it, not from A1.
    const top = Math.min(...filled.map((one) => one.top)) + 1;
    const left = Math.min(...filled.map((one) => one.left));
    const bottom = Math.max(...filled.map((one) => one.bottom)) + 1;
    const right = Math.max(...filled.map((one) => one.right));
    return this.read(sheet, `${toCol(left)}${top}:${toCol(right)}${bottom}`);
  };

  writeFormula = async ({ sheet, cell }: CellAddress, formula: string): Promise<void> => {
    if (this.sheet(sheet)[cell] !== undefined) throw new WorkbookProblem(`${cell} already holds something. Select a blank cell.`);
    this.sheet(sheet)[cell] = { formula };
  };

  addSheet = async (plan: SheetPlan): Promise<string> => {
    this.added.push(plan);
    this.sheets[plan.name] = Object.fromEntries(
      plan.cells.map((cell) => [cell.cell, cell.formula === undefined ? (cell.content ?? null) : { formula: cell.formula }]),
    );
    return plan.name;
  };

  copyWithValues: Workbook["copyWithValues"] = async (sheet, { name, areas, beside }) => {
    this.sheets[name] = { ...this.sheet(sheet) };
    for (const { range, values } of areas) {
      const { top, left } = corners(range);
      values.forEach((row, down) => row.forEach((value, across) => (this.sheet(name)[`${toCol(left + across)}${top + down + 1}`] = value)));
    }
    await this.addSheet(beside);
  };

  unfinishedSheets = async (): Promise<readonly UnfinishedSheet[]> => this.unfinished;

  removeUnfinished = async ({ id }: UnfinishedSheet): Promise<boolean> => {
    const before = this.unfinished.length;
    this.unfinished = this.unfinished.filter((sheet) => sheet.id !== id);
    return this.unfinished.length < before;
  };

  private sheet(name: string): Record<string, WrittenCell> {
    const sheet = this.sheets[name];
    if (sheet === undefined) throw new WorkbookProblem(`There is no sheet "${name}". Choose another.`);
    return sheet;
  }

  private reading(sheet: string, cell: string): CellReading {
    const written = this.sheet(sheet)[cell] ?? null;
    const parts = typeof written === "object" && written !== null ? written : { value: written };
    const value = parts.value ?? parts.error ?? null;
    return { cell, formula: "", value, shown: value === null ? "" : String(value), error: "", message: "", spill: "", ...parts };
  }
}

function corners(range: string): { top: number; left: number; bottom: number; right: number } {
  const parsed = parseA1Range(range);
  if (!parsed) throw new Error(`not a range: ${range}`);
  return { top: parsed.top ?? 0, left: parsed.left ?? fromCol("A"), bottom: parsed.bottom ?? 0, right: parsed.right ?? 0 };
}
