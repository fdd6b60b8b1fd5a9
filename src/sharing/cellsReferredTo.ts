import { tokenize, tokenTypes } from "@borgar/fx";
import { cellArea, wholeLines, type CellArea } from "../workbook/cellArea";
import type { CellReading } from "../workbook/Workbook";

/**
 * The areas among the first rows of a sheet that its formulas refer to, those of other sheets counted as its own: what stands there must stay
 * as it is on a copy that calculates, blank cells too. Takes only formulas apart that may reach up there.
 */
export function cellsReferredTo(rows: readonly (readonly CellReading[])[], rowsLookedAt: number): readonly CellArea[] {
  const reachesUp = new RegExp(`[A-Z]\\$?[1-${rowsLookedAt}](?!\\d)|[A-Z]:\\$?[A-Z]|\\b[1-${rowsLookedAt}]:`, "i");
  return rows.flatMap((row) => row.flatMap(({ formula }) => (formula !== "" && reachesUp.test(formula) ? areasIn(formula) : [])));
}

const areasIn = (formula: string): CellArea[] =>
  tokenize(formula).flatMap(({ type, value }) => {
    if (type !== tokenTypes.REF_RANGE && type !== tokenTypes.REF_BEAM) return [];
    const cells = value.slice(value.lastIndexOf("!") + 1).replaceAll("$", "");
    return cellArea(cells) ?? wholeLines(cells) ?? [];
  });
