import type { CellArea } from "../../../workbook/cellArea";
import type { FormulaSources, Precedent } from "./precedents";
import type { ReadFormula } from "../ReadSheets";

/** What a flag says: 0 nothing changed, 1 an input changed since sharing, 2 the cell at the same place is stale. */
export const STALE = 2;

/** The largest flag of cells, in a formula. @param isCounted true where cells filled since then count as a change @param further flags besides */
export type Largest = (from: readonly Precedent[], isCounted: boolean, ...further: readonly string[]) => string;

export interface Part {
  readonly isFixed: boolean;
  /** The cells for whose content the formula is written, where that is so. */
  readonly held: readonly Precedent[] | undefined;
  readonly isBefore: boolean;
  readonly isAfter: boolean;
  readonly source: FormulaSources | undefined;
}

export interface FlagTexts {
  readonly largest: Largest;
  /** Further flags that the formula is stale with. */
  readonly any: () => readonly string[];
  /** Keeps the flag that the formula is guarded by in a cell of its own. @returns its reference */
  readonly beside: (text: string) => string;
  /** A condition: a cell of the formula's sheet holds something else than at sharing. */
  readonly changedAt: (row: number, column: number) => string;
}

/** The flag of a formula; undefined for one that needs none. */
export function flagText(
  { area }: ReadFormula,
  { isFixed, held, isBefore, isAfter, source }: Part,
  { largest, any, beside, changedAt }: FlagTexts,
): string | undefined {
  const all = source?.precedents ?? [];
  // What gives another value each time, and what cannot be looked through, has changed as soon as it is calculated again.
  const isRestless = source?.isVolatile === true || source?.isUnseen === true;
  if (isFixed) return isRestless ? String(STALE) : `IF(${largest(all, true)}>0,${STALE},0)`;
  const outlived = (otherwise: string): string => (held === undefined ? otherwise : `IF(${largest(held, true)}>0,${STALE},${otherwise})`);
  const stale = (): string => outlived(`IF(${largest(all, false, ...any())}=${STALE},${STALE},0)`);
  if (isBefore && isRestless) {
    const flags = largest(all, true, ...eachCell(area, (row, column) => `IF(${changedAt(row, column)},1,0)`));
    // The cell shows whether it is stale, so it cannot be guarded by a flag that looks at the cell.
    return isAfter || held !== undefined ? `IF(${beside(isAfter ? stale() : outlived("0"))}=${STALE},${STALE},${flags})` : flags;
  }
  // One that says itself that it is fixed asks its own flag, and a spill has more cells than the first.
  const isAlone = !isAfter && held === undefined && area.rows * area.columns === 1;
  if (isBefore && isAlone) return `IF(${largest(all, true)}>0,IF(${changedAt(area.row, area.column)},1,0),0)`;
  if (isBefore) return outlived(largest(all, true));
  if (isAfter) return stale();
  return held === undefined ? undefined : outlived("0");
}

const eachCell = <T>({ row, column, rows, columns }: CellArea, make: (row: number, column: number) => T): T[] =>
  Array.from({ length: rows * columns }, (_, index) => make(row + Math.floor(index / columns), column + (index % columns)));
