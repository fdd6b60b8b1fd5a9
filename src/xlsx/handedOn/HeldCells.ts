import type { FileValue } from "../package/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/** What the cells of a sheet hold in a file, and how they look. */
export type HeldCells = ReadonlyMap<string, { readonly value: FileValue; readonly look: number }>;

export async function heldCells(file: WorkbookPackage, sheet: string): Promise<HeldCells> {
  const held = new Map<string, { value: FileValue; look: number }>();
  await file.readCells(sheet, ({ cell, value, look }) => void held.set(cell, { value, look }));
  return held;
}
