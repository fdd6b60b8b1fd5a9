import type { PlannedCell } from "../workbook/SheetPlan";

// FNV-1a of 32 bits (Fowler, Noll, Vo; from memory), in letters: numbers in a label change with rounds and samples, this does not follow them.
const [START, PRIME] = [0x811c9dc5, 0x01000193];
const LETTERS = "abcdefghijklmnop";

/** What tells the formulas of one sheet, as one version of Retort makes it, from any others. */
export function formulasMark(cells: readonly Pick<PlannedCell, "cell" | "formula">[]): string {
  let mark = START;
  for (const { cell, formula } of cells)
    for (const sign of formula === undefined ? "" : `${cell}${formula}`) mark = Math.imul(mark ^ (sign.codePointAt(0) ?? 0), PRIME) >>> 0;
  return Array.from({ length: 8 }, (_, place) => LETTERS[(mark >>> (4 * place)) & 15]).join("");
}
