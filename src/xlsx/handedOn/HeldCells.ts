import type { FileValue } from "../package/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/** What the cells of a sheet hold in a file, how they look, and whether their formula is said to be one over arrays. */
export type HeldCells = ReadonlyMap<string, HeldCell>;

export interface HeldCell {
  readonly value: FileValue;
  readonly look: number;
  readonly isArray: boolean;
}

export async function heldCells(file: WorkbookPackage, sheet: string): Promise<HeldCells> {
  const held = new Map<string, HeldCell>();
  await file.readCells(sheet, ({ cell, value, look, formulaKind }) => void held.set(cell, { value, look, isArray: formulaKind === "array" }));
  return held;
}
