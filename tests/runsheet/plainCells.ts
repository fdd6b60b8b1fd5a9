import type { BlockCell } from "../../src/runsheet/blocks/Block";
import type { Cell } from "../../src/runsheet/expressions/Expression";
import type { Plain } from "../../src/explanation/runSheet/Plain";
import { workOut, type ValueAt } from "../../src/explanation/runSheet/workOut";

/** Planned cells on plain values, worked out without a spreadsheet. */
export interface PlainCells {
  readonly planned: ReadonlyMap<string, BlockCell>;
  /** Puts a value into a cell, also in place of what a formula would give. Null empties it. */
  type(cell: Cell, content: Plain): void;
  /** What a cell holds: null where there is nothing. */
  value(cell: Cell): Plain;
  readonly at: ValueAt;
}

/** @param isWithoutOurs as in a spreadsheet that does not know our functions */
export function plainCells(cells: readonly BlockCell[], isWithoutOurs = false): PlainCells {
  const key = (row: number, column: number): string => `${row},${column}`;
  const planned = new Map<string, BlockCell>(cells.map((one) => [key(one.at.row, one.at.column), one]));
  const typed = new Map<string, Plain>();
  let known = new Map<string, Plain>();
  const look = (row: number, column: number): Plain => {
    const name = key(row, column);
    const value = typed.get(name);
    if (value !== undefined) return value;
    const before = known.get(name);
    if (before !== undefined) return before;
    const one = planned.get(name);
    const now = one?.formula === undefined ? (one?.content ?? null) : workOut(one.formula, at);
    known.set(name, now);
    return now;
  };
  const at = Object.assign(look, {
    isWithoutOurs,
    isFormula: (row: number, column: number) => typed.get(key(row, column)) === undefined && planned.get(key(row, column))?.formula !== undefined,
  });
  const type = ({ row, column }: Cell, content: Plain): void => {
    typed.set(key(row, column), content);
    known = new Map();
  };
  return { planned, type, value: ({ row, column }) => at(row, column), at };
}
