import { areaNamed } from "../../workbook/areaNamed";
import { cellArea, cellAt, covers, wholeLines, type CellArea } from "../../workbook/cellArea";
import type { CellsBeside } from "../../workbook/CellsBeside";
import type { CellAddress, CellLook, CellReading, InputCell, InputsReading, WantedCells } from "../../workbook/Workbook";
import { sheetCalled, type Book, type BookSheet } from "../book/Book";

const DONE = { state: "done", manual: false } as const;
// Whole rows and columns of a long sheet, and no more.
const MOST_CELLS = 2_000_000;

/** A workbook file as the explanation of a cell reads it: nothing changes while it is read. */
export class FileCells {
  private readonly known = new Map<string, ReadonlyMap<string, CellReading>>();

  constructor(private readonly book: Pick<Book, "sheets" | "names">) {}

  look({ sheet, cell }: CellAddress): CellLook {
    const found = sheetCalled(this.book, sheet);
    const { row, column } = areaNamed(cell);
    const anchor = found.reading.rows.flat().find(({ spill, cell: at }) => spill !== "" && at !== cell && covers(areaNamed(spill), row, column));
    return {
      address: { sheet: found.name, cell },
      reading: this.at(found, row, column),
      calculation: DONE,
      ...(anchor === undefined ? {} : { anchor }),
    };
  }

  readInputs(address: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading> {
    return Promise.resolve({ again: this.look(address), ranges: wanted.map((cells) => this.range(cells)) });
  }

  /** Defined names alone: rules are of no matter to what a cell says. */
  cellsBeside(): Promise<CellsBeside> {
    return Promise.resolve({ names: this.book.names, rules: [], unread: ["colouring", "entry"] });
  }

  private range({ sheet, range, spill }: WantedCells): InputCell[][] | undefined {
    const found = sheetCalled(this.book, sheet);
    const area = this.areaOf(found, range, spill);
    if (area === undefined || area.rows * area.columns > MOST_CELLS) return undefined;
    return Array.from({ length: area.rows }, (_, down) =>
      Array.from({ length: area.columns }, (__, across) => {
        const { value, error } = this.at(found, area.row + down, area.column + across);
        return { value, error };
      }),
    );
  }

  /** Whole columns and rows reach to the last cell of theirs that holds anything. */
  private areaOf(sheet: BookSheet, range: string, spill: boolean): CellArea | undefined {
    if (spill) {
      const { row, column } = areaNamed(range);
      return areaNamed(this.at(sheet, row, column).spill || range);
    }
    const whole = wholeLines(range);
    if (whole === undefined) return cellArea(range);
    let [rows, columns] = [0, 0];
    for (const { row, column, value } of sheet.cells) {
      if (value === null || !covers(whole, row, column)) continue;
      rows = Math.max(rows, row - whole.row + 1);
      columns = Math.max(columns, column - whole.column + 1);
    }
    return { ...whole, rows: Math.min(whole.rows, rows), columns: Math.min(whole.columns, columns) };
  }

  private at({ name, reading }: BookSheet, row: number, column: number): CellReading {
    const cells = this.known.get(name) ?? new Map(reading.rows.flat().map((one) => [one.cell, one]));
    this.known.set(name, cells);
    const cell = cellAt(row, column);
    return cells.get(cell) ?? { cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" };
  }
}
