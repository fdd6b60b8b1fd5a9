import type { FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/** What the cells of a sheet hold in a file, how they look, and whether their formula is said to be one over arrays. */
export type HeldCells = ReadonlyMap<string, HeldCell>;

export interface HeldCell {
  readonly value: FileValue;
  readonly look: number;
  readonly isArray: boolean;
  /** The cells that it fills as one over arrays, "B2:B9"; left out where that does not matter. */
  readonly fills?: string;
  /** True for one over arrays that is as large as its answer. */
  readonly spills?: boolean;
}

export async function heldCells(file: WorkbookPackage, sheet: string): Promise<HeldCells> {
  const held = new Map<string, HeldCell>();
  await file.readCells(sheet, ({ cell, value, look, formulaKind, fills, spills }) => {
    const isArray = formulaKind === "array";
    held.set(cell, { value, look, isArray, ...(isArray ? { fills: fills.replaceAll("$", "") } : {}), ...(spills && { spills }) });
  });
  return held;
}
