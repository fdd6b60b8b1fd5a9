import type { CellsBeside } from "../../src/workbook/CellsBeside";
import type { FirstScreen } from "../../src/workbook/OutOfView";
import { cellArea, cellAt } from "../../src/workbook/cellArea";
import { freeSheetName } from "../../src/workbook/freeSheetName";
import { readTwice } from "../../src/workbook/readTwice";
import type { Grown } from "../../src/workbook/SheetGrowth";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import type {
  Calculation,
  CellAddress,
  CellContent,
  CellLook,
  CellReading,
  CopyMade,
  CopyWithValues,
  InputsReading,
  RangeReading,
  Reentered,
  Removal,
  SettledReading,
  UnfinishedSheet,
  Workbook,
} from "../../src/workbook/Workbook";

type Sheet = Map<string, CellReading>;

export const reading = (cell: string, about: Partial<CellReading>): CellReading => ({
  cell,
  formula: "",
  value: null,
  shown: "",
  error: "",
  message: "",
  spill: "",
  ...about,
});

/** A workbook of given readings, which records what is asked of it. */
export class MemoryWorkbook implements Workbook {
  readonly name = "memory";
  readonly drawsCharts = false;
  readonly sheets = new Map<string, Sheet>();
  readonly plans: SheetPlan[] = [];
  readonly calls: string[] = [];

  constructor(sheet: string, readings: readonly CellReading[]) {
    this.sheets.set(sheet, new Map(readings.map((one) => [one.cell, one])));
  }

  async sheetNames(): Promise<readonly string[]> {
    return [...this.sheets.keys()];
  }

  async readUsed(sheet: string): Promise<RangeReading> {
    this.calls.push(`read ${sheet}`);
    return { sheet, range: "A1", rows: [[...(this.sheets.get(sheet)?.values() ?? [])]] };
  }

  async copyWithValues(sheet: string, { name, areas, beside }: CopyWithValues): Promise<CopyMade> {
    this.calls.push(`copy ${sheet} to ${name}`);
    this.sheets.set(name, new Map(this.sheets.get(sheet)));
    this.calls.push(`freeze ${areas.length} areas of ${name}`);
    for (const { range, values } of areas) {
      const { row, column } = cellArea(range) ?? { row: 0, column: 0 };
      values.forEach((line, down) => line.forEach((value, across) => this.put(name, cellAt(row + down, column + across), value)));
    }
    await this.addSheet(beside);
    return { copy: name, beside: beside.name, touched: false };
  }

  async addSheet(plan: SheetPlan): Promise<string> {
    const name = freeSheetName(plan.name, await this.sheetNames());
    this.calls.push(`add ${name}`);
    this.plans.push(plan);
    this.sheets.set(name, new Map(plan.cells.map(({ cell, content }) => [cell, reading(cell, { value: content ?? null })])));
    return name;
  }

  private put(sheet: string, cell: string, value: CellContent): void {
    this.sheets.get(sheet)?.set(cell, reading(cell, { value }));
  }

  calculating: Calculation = { state: "done", manual: false };
  calculation = async (): Promise<Calculation> => this.calculating;
  look = async (): Promise<CellLook> => ({ address: { sheet: "", cell: "A1" }, reading: reading("A1", {}), calculation: this.calculating });
  readInputs = async (): Promise<InputsReading> => ({ again: await this.look(), ranges: [] });
  holdsText = async (): Promise<boolean> => false;
  selectedCell = async (): Promise<CellAddress> => ({ sheet: "", cell: "A1" });
  select = async (): Promise<void> => undefined;
  onSelection = async (): Promise<() => Promise<void>> => async () => undefined;
  read = async (sheet: string): Promise<RangeReading> => this.readUsed(sheet);
  growSheet = async (): Promise<Grown> => ({ kept: [] });
  unfinishedSheets = async (): Promise<readonly UnfinishedSheet[]> => [];
  removeUnfinished = async (): Promise<Removal> => "gone";
  firstScreen = async (): Promise<FirstScreen> => ({ hiddenRows: [], hiddenColumns: [], merged: [], sheetNames: await this.sheetNames() });

  beside: CellsBeside = { names: [], rules: [], unread: [] };
  cellsBeside = async (): Promise<CellsBeside> => this.beside;
  readSettled = (sheet: string, asShown: boolean): Promise<SettledReading> => readTwice(this, sheet, asShown);
  reenter = async (): Promise<Reentered> => ({ entered: [], changed: [] });
  replaceValue = async (): Promise<void> => undefined;
  writeFormula = async (): Promise<void> => undefined;
}
