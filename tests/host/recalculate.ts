import { cellArea, cellAt, rangeOf } from "../../src/workbook/cellArea";
import type { BookState } from "./BookState";
import { ErrorValue, type HostValue } from "./HostValue";
import type { SheetState } from "./SheetState";

/** What a test lets a cell formula come to: one value or, for a spill, rows of values. */
export type Calculate = (formula: string, cell: string, look: (cell: string) => HostValue) => HostValue | HostValue[][];

// Formulas that wait for each other settle in as many rounds as the longest chain has links; tests use short ones.
const MOST_ROUNDS = 10;

/** Works out every formula of every sheet, in rounds, until nothing changes any more. */
export function recalculate(book: BookState, calculate: Calculate): void {
  for (const sheet of book.sheets) {
    const before = fingerprint(sheet);
    for (let round = 0, last = ""; round < MOST_ROUNDS && last !== fingerprint(sheet); round++) {
      last = fingerprint(sheet);
      calculateOnce(sheet, calculate);
    }
    if (before === fingerprint(sheet)) continue;
    const used = sheet.used();
    if (used !== undefined) book.events.push({ kind: "calculated", sheet, range: rangeOf(used) });
  }
}

/** Works out only the formulas that were never worked out, as in manual mode a formula is when it is entered. */
export function calculateEntered(book: BookState, calculate: Calculate): void {
  for (const sheet of book.sheets) {
    for (const [cell, state] of sheet.cells) {
      if (state.formula === undefined || state.value !== null) continue;
      const answer = calculate(state.formula, cell, (other) => at(sheet, other));
      state.value = Array.isArray(answer) ? spill(sheet, cell, answer) : answer;
    }
  }
}

/** True where some formula shows something else than it comes to now; spills are left out of this look. */
export function wouldChange(book: BookState, calculate: Calculate): boolean {
  return book.sheets.some((sheet) =>
    [...sheet.cells].some(([cell, { formula, value }]) => {
      if (formula === undefined) return false;
      const answer = calculate(formula, cell, (other) => at(sheet, other));
      return !Array.isArray(answer) && JSON.stringify(answer) !== JSON.stringify(value);
    }),
  );
}

function calculateOnce(sheet: SheetState, calculate: Calculate): void {
  sheet.spilled.clear();
  sheet.spills.clear();
  for (const [cell, state] of sheet.cells) {
    if (state.formula === undefined) continue;
    const answer = calculate(state.formula, cell, (other) => at(sheet, other));
    state.value = Array.isArray(answer) ? spill(sheet, cell, answer) : answer;
  }
}

/** Fills the cells beside the formula's own, unless one of them holds something. @returns the value of the formula's own cell */
function spill(sheet: SheetState, anchor: string, rows: readonly (readonly HostValue[])[]): HostValue {
  const { row, column } = cellArea(anchor) ?? { row: 0, column: 0 };
  const filled = rows.flatMap((values, down) => values.map((value, across) => ({ cell: cellAt(row + down, column + across), value })));
  if (filled.some(({ cell }) => cell !== anchor && sheet.cells.has(cell))) return new ErrorValue("#SPILL!");
  for (const { cell, value } of filled) if (cell !== anchor) sheet.spilled.set(cell, { value, anchor });
  if (filled.length > 1) sheet.spills.set(anchor, rangeOf({ row, column, rows: rows.length, columns: rows[0]?.length ?? 1 }));
  return rows[0]?.[0] ?? null;
}

function at(sheet: SheetState, cell: string): HostValue {
  const { row, column } = cellArea(cell) ?? { row: 0, column: 0 };
  return sheet.value(row, column);
}

const fingerprint = (sheet: SheetState): string =>
  JSON.stringify([[...sheet.cells.entries()].filter(([, { formula }]) => formula !== undefined), [...sheet.spilled]]);
