import { typedCells } from "../../holdsTheSame";
import { cellAfter, isSameShape, type SheetGrowth } from "../../SheetGrowth";
import { isAlike, isFormula, type HeldCells } from "../reading/heldCells";

type Held = string | number | boolean;

/** What somebody typed between the last look and the request that wrote over it. */
export interface Displaced {
  readonly cell: string;
  readonly typed: Held;
  /** What stands there in its place; "" for nothing. */
  readonly written: Held;
}

/** What the request found that was not there when the sheet was read, and wrote over. */
export function displaced({ read, steps, written }: SheetGrowth, before: HeldCells): Displaced[] {
  const expected = new Map([...typedCells(read)].map(([cell, held]) => [cellAfter(cell, steps), held]));
  return written.flatMap(({ cell, formula, content = "" }) => {
    const found = before.get(cell);
    return found === undefined || isExpected(expected.get(cell), found) ? [] : [{ cell, typed: found, written: formula ?? content }];
  });
}

/** Formulas are moved by the host, so only their shape can be expected. */
const isExpected = (expected: Held | undefined, found: Held): boolean =>
  isAlike(expected, found) || (isFormula(expected) && isFormula(found) && isSameShape(expected, found));
