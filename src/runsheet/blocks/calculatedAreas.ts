import { cell, range, type Cell, type Range } from "../expressions/Expression";
import type { BlockCell } from "./Block";

/** The cells that hold a formula, as few whole rectangles. @param width columns looked at, from A on; left out: all */
export const calculatedAreas = (cells: readonly BlockCell[], width = Infinity): Range[] =>
  areasOf(cells.filter(({ at, formula }) => formula !== undefined && at.column < width).map(({ at }) => at));

/**
 * The cells of so many columns, from A on, that hold words or nothing and are no boxes, in the rows of headings and totals all of them: a
 * number there is taken for a weighing by what reads a table down to and with its neighbours.
 */
export function wordAreas(cells: readonly BlockCell[], width: number): Range[] {
  const onPaper = cells.filter(({ at }) => at.column < width);
  const held = new Set(onPaper.map(({ at }) => `${at.row},${at.column}`));
  const isWords = ({ formula, content, style }: BlockCell): boolean =>
    formula === undefined && (content === undefined || typeof content === "string") && !style.startsWith("runBox");
  const rows = new Set(onPaper.filter(({ style }) => style.includes("Band") || style === "runTotal").map(({ at }) => at.row));
  const between = [...rows].flatMap((row) => Array.from({ length: width }, (_, column) => cell(row, column)));
  return areasOf([...onPaper.filter(isWords).map(({ at }) => at), ...between.filter(({ row, column }) => !held.has(`${row},${column}`))]);
}

/** Cells as few whole rectangles. */
function areasOf(cells: readonly Cell[]): Range[] {
  const downwards = [...cells].sort((one, other) => one.column - other.column || one.row - other.row);
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
