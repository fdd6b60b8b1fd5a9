import type { Cell } from "../../runsheet/expressions/Expression";
import { cellAt } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { shownBy } from "./shownBy";

/** What a sheet shows, cell by cell. */
export class ShownCells {
  private readonly readings: ReadonlyMap<string, CellReading>;

  constructor(reading: RangeReading) {
    this.readings = new Map(reading.rows.flat().map((one) => [one.cell, one]));
  }

  reading({ row, column }: Pick<Cell, "row" | "column">): CellReading | undefined {
    return this.readings.get(cellAt(row - 1, column));
  }

  /** The text of a cell, its error code where it shows an error, "" where it is blank. */
  text(at: Pick<Cell, "row" | "column">, format?: string): string {
    const reading = this.reading(at);
    if (reading === undefined) return "";
    if (reading.error !== "") return reading.error;
    if (reading.shown === "") return shownBy(reading.value, format);
    // "0.##" shows a whole number with a point that nothing follows.
    return typeof reading.value === "number" && reading.shown.endsWith(".") ? reading.shown.slice(0, -1) : reading.shown.trim();
  }

  isError(at: Pick<Cell, "row" | "column">): boolean {
    return (this.reading(at)?.error ?? "") !== "";
  }

  number(at: Pick<Cell, "row" | "column">): number | undefined {
    const reading = this.reading(at);
    return reading?.error === "" && typeof reading.value === "number" ? reading.value : undefined;
  }
}
