import type { Cell, Expression, Range } from "../expressions/Expression";
import { placesIn } from "../expressions/parts";
import type { BlockCell } from "./Block";

/**
 * The calculated cells that one of them is calculated from, at any distance, itself left out.
 * @param isAside cells that are passed over, and all that only they are calculated from
 */
export function calculatedFor(of: Cell, cells: readonly BlockCell[], isAside: (at: Cell) => boolean): ReadonlySet<BlockCell> {
  const planned = new Map(cells.map((one) => [keyOf(one.at.row, one.at.column), one]));
  const found = new Set<BlockCell>();
  const looked = new Set<string>();
  const ahead: Expression[] = [planned.get(keyOf(of.row, of.column))?.formula ?? 0];
  const reach = (row: number, column: number): void => {
    const one = planned.get(keyOf(row, column));
    if (one?.formula === undefined || found.has(one) || isAside(one.at)) return;
    found.add(one);
    ahead.push(one.formula);
  };
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop())
    for (const { from, to } of placesIn(next).map(areaOf)) {
      const area = `${from.row},${from.column},${to.row},${to.column}`;
      if (looked.has(area)) continue;
      looked.add(area);
      for (let row = from.row; row <= to.row; row++) for (let column = from.column; column <= to.column; column++) reach(row, column);
    }
  return found;
}

const keyOf = (row: number, column: number): string => `${row},${column}`;
const areaOf = (place: Cell | Range): { readonly from: Cell; readonly to: Cell } => (place.kind === "cell" ? { from: place, to: place } : place);
