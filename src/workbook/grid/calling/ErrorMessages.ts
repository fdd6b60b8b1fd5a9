import { GridError, type GridValue } from "./HostFunction";

/** Counted from 0. */
interface GridPosition {
  readonly row: number;
  readonly column: number;
}

interface CallsOfACell {
  readonly calculation: number;
  readonly results: GridValue[][][];
}

/** The sentences behind the errors on the sheets. The engine's cells keep only the error code. */
export class ErrorMessages {
  private calculation = 0;
  private readonly calls = new Map<string, CallsOfACell>();

  /** From here on a cell's calls replace those it made in earlier calculations. */
  beginCalculation(): void {
    this.calculation++;
  }

  /** Keeps what a custom function gave to the cell formula that called it. */
  record(sheetId: string, caller: GridPosition, result: GridValue[][]): void {
    const key = keyOf(sheetId, caller);
    const known = this.calls.get(key);
    if (known?.calculation === this.calculation) known.results.push(result);
    else this.calls.set(key, { calculation: this.calculation, results: [result] });
  }

  /**
   * The sentence behind an error code shown by a formula cell or by a cell of its spill; "" when none is known.
   * Of several calls in one cell formula the last with that code counts.
   * @param offset rows and columns from the formula cell
   */
  behind(sheetId: string, formulaCell: GridPosition, offset: GridPosition, code: string): string {
    const results = this.calls.get(keyOf(sheetId, formulaCell))?.results ?? [];
    for (const result of [...results].reverse()) {
      const there = result[offset.row]?.[offset.column];
      // A formula such as =SUM(...) shows in one cell an error that stands anywhere in the rectangle it was given.
      const found = isCoded(there, code) ? there : result.flat().find((value) => isCoded(value, code));
      if (found instanceof GridError) return found.message;
    }
    return "";
  }
}

const keyOf = (sheetId: string, { row, column }: GridPosition): string => `${sheetId} ${row} ${column}`;
const isCoded = (value: GridValue | undefined, code: string): boolean => value instanceof GridError && value.code === code;
