import { cell, range, type Range } from "../expressions/Expression";
import type { BlockCell } from "./Block";

/** The cells that hold a formula, as few whole rectangles. @param width columns looked at, from A on; left out: all */
export function calculatedAreas(cells: readonly BlockCell[], width = Infinity): Range[] {
  const formulas = cells.filter(({ at, formula }) => formula !== undefined && at.column < width).map(({ at }) => at);
  const downwards = [...formulas].sort((one, other) => one.column - other.column || one.row - other.row);
  const columns: Area[] = [];
  for (const { row, column } of downwards) {
    const last = columns.at(-1);
    if (last?.right === column && last.bottom === row - 1) last.bottom = row;
    else columns.push({ top: row, bottom: row, left: column, right: column });
  }
  const areas: Area[] = [];
  for (const next of columns.sort((one, other) => one.top - other.top || one.bottom - other.bottom || one.left - other.left)) {
    const last = areas.at(-1);
    if (last?.top === next.top && last.bottom === next.bottom && last.right === next.left - 1) last.right = next.right;
    else areas.push(next);
  }
  return areas.map(({ top, bottom, left, right }) => range(cell(top, left), cell(bottom, right)));
}

interface Area {
  top: number;
  bottom: number;
  left: number;
  right: number;
}
