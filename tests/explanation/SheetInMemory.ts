import type { CellsBeside, DefinedName } from "../../src/workbook/CellsBeside";
import type { FirstScreen } from "../../src/workbook/OutOfView";
import { fromCol, parseA1Range, toCol } from "@borgar/fx";
import { readTwice } from "../../src/workbook/readTwice";
import { cellAfter, type Grown, type SheetGrowth } from "../../src/workbook/SheetGrowth";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import {
  WorkbookProblem,
  type Calculation,
  type CellAddress,
  type CellContent,
  type CellLook,
  type CellReading,
  type InputsReading,
  type RangeReading,
  type Reentered,
  type Reentry,
  type Removal,
  type SettledReading,
  type UnfinishedSheet,
  type WantedCells,
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
  /** Sheets whose names were asked for. */
  readonly askedBeside: string[] = [];
  names: readonly DefinedName[] = [];
  unfinished: readonly UnfinishedSheet[] = [];
  /** Whether something may stand on an unfinished sheet that is the user's. */
  asksFirst = false;
  /** Whether somebody types into a copy while it is made. */
  touched = false;
  readonly added: SheetPlan[] = [];
  calculating: Calculation = { state: "done", manual: false };
  private readonly listeners = new Set<(look: CellLook) => void>();

  /** @param sheets sheet name -> "B7" -> what it holds */
  constructor(readonly sheets: Record<string, Record<string, WrittenCell>>) {
    this.selected = { sheet: Object.keys(sheets)[0] ?? "Sheet1", cell: "A1" };
  }

  sheetNames = async (): Promise<readonly string[]> => Object.keys(this.sheets);
  selectedCell = async (): Promise<CellAddress> => this.selected;

  select = async (address: CellAddress): Promise<void> => {
    this.selected = address;
    for (const listener of this.listeners) listener(this.lookAt(address));
  };

  onSelection = async (listener: (look: CellLook) => void): Promise<() => Promise<void>> => {
    this.listeners.add(listener);
    return async () => void this.listeners.delete(listener);
  };

  reenter = async (sheet: string, cells: readonly Reentry[]): Promise<Reentered> => {
    for (const { cell, formula } of cells) this.sheet(sheet)[cell] = { formula, value: 0 };
    return { entered: cells.map(({ cell }) => cell), changed: [] };
  };

  calculation = async (): Promise<Calculation> => this.calculating;
  look = async (address: CellAddress = this.selected): Promise<CellLook> => this.lookAt(address);

  readInputs = async (address: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading> => {
    this.asked.push(wanted.map(({ sheet, range, spill }) => `${sheet}!${range}${spill ? "#" : ""}`).join(" "));
    return { again: this.lookAt(address), ranges: wanted.map((cells) => this.inputCells(cells)) };
  };

  holdsText = async (sheet: string, text: string): Promise<boolean> =>
    Object.keys(this.sheet(sheet)).some((cell) => this.reading(sheet, cell).value === text);

  read = async (sheet: string, range: string): Promise<RangeReading> => {
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

  firstScreen = async (): Promise<FirstScreen> => ({ hiddenRows: [], hiddenColumns: [], merged: [], sheetNames: [] });

  cellsBeside = async (sheet: string): Promise<CellsBeside> => {
    this.askedBeside.push(sheet);
    return { names: this.names.filter((one) => one.sheet === undefined || one.sheet === sheet), rules: [], unread: [] };
  };
  readSettled = (sheet: string, asShown: boolean): Promise<SettledReading> => readTwice(this, sheet, asShown);

  writeFormula = async ({ sheet, cell }: CellAddress, formula: string): Promise<void> => {
    if (this.sheet(sheet)[cell] !== undefined) throw new WorkbookProblem(`${cell} already holds something. Select a blank cell.`);
    this.sheet(sheet)[cell] = { formula };
  };

  replaceValue = async ({ sheet, cell }: CellAddress, held: CellContent, content: CellContent): Promise<void> => {
    const { formula, value } = this.reading(sheet, cell);
    if (formula !== "" || value !== held) throw new WorkbookProblem(`${cell} holds something else.`);
    if (content === null) delete this.sheet(sheet)[cell];
    else this.sheet(sheet)[cell] = content;
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
    return { copy: name, beside: beside.name, touched: this.touched };
  };

  growSheet = async (sheet: string, { steps, written, begun, ended }: SheetGrowth): Promise<Grown> => {
    const moved = Object.entries(this.sheet(sheet)).map(([cell, held]): [string, WrittenCell] => [cellAfter(cell, steps), held]);
    const puts = [begun, ...written, ended].flatMap((one) => one ?? []);
    this.sheets[sheet] = Object.fromEntries([
      ...moved,
      ...puts.map(({ cell, content, formula }): [string, WrittenCell] => [cell, formula === undefined ? (content ?? null) : { formula }]),
    ]);
    return { kept: [] };
  };

  unfinishedSheets = async (): Promise<readonly UnfinishedSheet[]> => this.unfinished;

  removeUnfinished = async ({ id }: UnfinishedSheet, asked: boolean): Promise<Removal> => {
    if (this.asksFirst && !asked) return "ask first";
    const before = this.unfinished.length;
    this.unfinished = this.unfinished.filter((sheet) => sheet.id !== id);
    return this.unfinished.length < before ? "removed" : "gone";
  };

  private lookAt({ sheet, cell }: CellAddress): CellLook {
    const look = { address: { sheet, cell }, reading: this.reading(sheet, cell), calculation: this.calculating };
    const anchor = Object.keys(this.sheet(sheet))
      .map((other) => this.reading(sheet, other))
      .find(({ cell: other, spill }) => other !== cell && spill !== "" && isInside(cell, spill));
    return anchor === undefined || look.reading.formula !== "" ? look : { ...look, anchor };
  }

  private inputCells({ sheet, range, spill }: WantedCells): readonly (readonly CellReading[])[] {
    const area = spill ? this.reading(sheet, range).spill || range : range;
    const filled = Object.keys(this.sheet(sheet))
      .filter((cell) => isInside(cell, area))
      .map(corners);
    const { top, left, bottom, right } = openCorners(area);
    const first = { row: top ?? 0, column: left ?? 0 };
    const last = { row: bottom ?? Math.max(0, ...filled.map((one) => one.top)), column: right ?? Math.max(0, ...filled.map((one) => one.left)) };
    return Array.from({ length: last.row - first.row + 1 }, (_, row) =>
      Array.from({ length: last.column - first.column + 1 }, (_column, column) =>
        this.reading(sheet, `${toCol(first.column + column)}${first.row + row + 1}`),
      ),
    );
  }

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

/** Corners of a range; those of whole columns and rows are open. */
function openCorners(range: string): Partial<Record<"top" | "left" | "bottom" | "right", number | null>> {
  const parsed = parseA1Range(range);
  if (!parsed) throw new Error(`not a range: ${range}`);
  return parsed;
}

function isInside(cell: string, range: string): boolean {
  const [one, whole] = [corners(cell), openCorners(range)];
  const within = (at: number, from: number | null | undefined, to: number | null | undefined): boolean => at >= (from ?? 0) && at <= (to ?? Infinity);
  return within(one.top, whole.top, whole.bottom) && within(one.left, whole.left, whole.right);
}
