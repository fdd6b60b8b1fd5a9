import type { CellArea } from "../../../workbook/cellArea";
import type { ReadFormula } from "../reading/ReadSheets";
import type { FormulaSources, Precedent } from "./FormulaSources";

/** What a flag says: 0 nothing changed, 1 an input changed since sharing, 2 the cell at the same place is stale. */
export const STALE = 2;

/** The largest flag of cells, in a formula. @param isCounted true where cells filled since then count as a change @param further flags besides */
export type Largest = (from: readonly Precedent[], isCounted: boolean, ...further: readonly string[]) => string;

export interface Part {
  readonly isFixed: boolean;
  /** The cells for whose content the formula is written, where that is so. */
  readonly held: readonly Precedent[] | undefined;
  /** The cell that is more than 0 while the formula would fill other cells. */
  readonly resized: string | undefined;
  /** A fixed formula with an error in place of our calls, where it may lead past them. */
  readonly withoutCalls: string | undefined;
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
  /** A condition: a text of a formula gives something else than the formula's first cell held at sharing. */
  readonly givesElse: (text: string) => string;
  /** A condition: a cell of the formula's sheet holds something else than at sharing. */
  readonly changedAt: (row: number, column: number) => string;
}

/** The flag of a formula; undefined for one that needs none. */
export function flagText(
  { area }: ReadFormula,
  { isFixed, withoutCalls, held, resized, isBefore, isAfter, source }: Part,
  { largest, any, beside, givesElse, changedAt }: FlagTexts,
): string | undefined {
  const all = source?.precedents ?? [];
  // What gives another value each time, and what cannot be looked through, has changed as soon as it is calculated again.
  const isRestless = source?.isVolatile === true || source?.isUnseen === true;
  if (isFixed) return isRestless ? String(STALE) : fixedFlag(largest(all, true), withoutCalls, givesElse);
  const isForNow = held !== undefined || resized !== undefined;
  const further = resized === undefined ? [] : [resized];
  const outlived = (otherwise: string): string => (isForNow ? `IF(${largest(held ?? [], true, ...further)}>0,${STALE},${otherwise})` : otherwise);
  const stale = (): string => outlived(`IF(${largest(all, false, ...any())}=${STALE},${STALE},0)`);
  if (isBefore && isRestless) {
    const flags = largest(all, true, ...eachCell(area, (row, column) => `IF(${changedAt(row, column)},1,0)`));
    // The cell shows whether it is stale, so it cannot be guarded by a flag that looks at the cell.
    return isAfter || isForNow ? `IF(${beside(isAfter ? stale() : outlived("0"))}=${STALE},${STALE},${flags})` : flags;
  }
  // One that says itself that it is fixed asks its own flag, and a spill has more cells than the first.
  const isAlone = !isAfter && !isForNow && area.rows * area.columns === 1;
  if (isBefore && isAlone) return `IF(${largest(all, true)}>0,IF(${changedAt(area.row, area.column)},1,0),0)`;
  if (isBefore) return outlived(largest(all, true));
  if (isAfter) return stale();
  return isForNow ? outlived("0") : undefined;
}

// A cell holds 8,192 characters, and calls stand in 64 others (Excel specifications and limits).
const LONGEST_FLAG = 8000;

/** Stale once inputs changed, unless the formula goes past our functions and gives what it gave; while anything it asks is stale, it is too. */
function fixedFlag(inputs: string, withoutCalls: string | undefined, givesElse: FlagTexts["givesElse"]): string {
  const plainly = `IF(${inputs}>0,${STALE},0)`;
  if (withoutCalls === undefined) return plainly;
  const precisely = `IF(${inputs}=1,IF(${givesElse(`(${withoutCalls})`)},${STALE},0),${inputs})`;
  return precisely.length > LONGEST_FLAG ? plainly : precisely;
}

const eachCell = <T>({ row, column, rows, columns }: CellArea, make: (row: number, column: number) => T): T[] =>
  Array.from({ length: rows * columns }, (_, index) => make(row + Math.floor(index / columns), column + (index % columns)));
