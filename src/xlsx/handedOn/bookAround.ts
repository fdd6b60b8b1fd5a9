import type { PlainReading, SheetsGoing } from "../../sharing/plain/reading/PlainReading";
import type { CellReading } from "../../workbook/Workbook";
import { cellAt } from "../../workbook/cellArea";
import type { FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";

/** What the formulas of a workbook may name besides the cells of the shared sheets. */
export type BookAround = Required<Pick<PlainReading, "names" | "tables">> & Pick<PlainReading, "going">;

/** @param kept the sheets that stay; left out: every sheet */
export async function bookAround(file: WorkbookPackage, kept?: readonly string[]): Promise<BookAround> {
  const going = kept && (await sheetsGoing(file, kept));
  return { names: await file.definedNames(), tables: await file.tables(), ...(going && { going }) };
}

/** What is still to be known of the sheets of a file that go once others are kept alone; undefined where none goes. */
export async function sheetsGoing(file: WorkbookPackage, kept: readonly string[]): Promise<SheetsGoing | undefined> {
  const sheets = (await file.sheets()).filter(({ kind }) => kind === "worksheet").map(({ name }) => name);
  const stay = new Set(kept.map((name) => name.toLowerCase()));
  const goes = sheets.filter((name) => !stay.has(name.toLowerCase()));
  if (goes.length === 0) return undefined;
  const held = new Map<string, ReadonlyMap<string, CellReading>>();
  for (const name of goes) {
    const cells = new Map<string, CellReading>();
    await file.readCells(name, ({ cell, value }) => void cells.set(cell, heldReading(cell, value)));
    held.set(name.toLowerCase(), cells);
  }
  return {
    order: sheets,
    isGone: (sheet) => held.has(sheet.toLowerCase()),
    heldAt: (sheet, row, column) => held.get(sheet.toLowerCase())?.get(cellAt(row, column)),
  };
}

function heldReading(cell: string, inFile: FileValue): CellReading {
  const error = typeof inFile === "object" && inFile !== null ? inFile.error : "";
  const value = typeof inFile === "object" ? null : inFile;
  return { cell, formula: "", value, shown: String(value ?? ""), error, message: "", spill: "" };
}
