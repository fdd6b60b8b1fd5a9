import type { PlainCell, PlainSheets } from "../../sharing/plain/plainSheets";
import { plannedBeside } from "../../sharing/plain/plannedBeside";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { storedFormula } from "../../xlsx/formulas/storedFormula";
import type { CellChange, FileValue } from "../../xlsx/package/CellChange";
import type { WorkbookPackage } from "../../xlsx/package/WorkbookPackage";
import { addPlanned } from "../../xlsx/planned/addPlanned";
import { fileValue } from "./fileValue";

export type ShownIn = ReadonlyMap<string, ReadonlyMap<string, CellReading>>;

/**
 * Puts plain formulas into a workbook file, in place, and adds the sheets they need, out of view. Nothing else of the file changes but that it is
 * calculated when it is opened.
 * @param shown what every cell shows, by sheet and cell
 */
export async function putPlain(file: WorkbookPackage, { cells, names, workings, flags }: PlainSheets, shown: ShownIn): Promise<void> {
  const bySheet = new Map<string, CellChange[]>();
  for (const cell of cells) {
    const changes = bySheet.get(cell.sheet) ?? [];
    bySheet.set(cell.sheet, changes);
    for (const change of changesFor(cell, shown.get(cell.sheet) ?? new Map<string, CellReading>())) changes.push(change);
  }
  for (const [sheet, changes] of bySheet) await file.changeCells(sheet, changes);
  await file.changeNames(names);
  const beside = [...(workings === undefined ? [] : [plannedBeside(workings)]), ...flags.map(plannedBeside)];
  const added = await addPlanned(file, beside, { answer: (sheet) => (flags.some(({ name }) => name === sheet) ? 0 : null) });
  await file.hide(added);
  await file.calculateOnOpening();
}

function changesFor({ area: range, formulas }: PlainCell, shown: ReadonlyMap<string, CellReading>): CellChange[] {
  const area = areaNamed(range);
  const valueAt = (cell: string): FileValue => {
    const reading = shown.get(cell);
    return reading === undefined ? "" : fileValue(reading);
  };
  const places = Array.from({ length: area.rows }, (_, down) => Array.from({ length: area.columns }, (_, across) => [down, across] as const)).flat();
  return places.map(([down, across]): CellChange => {
    const cell = cellAt(area.row + down, area.column + across);
    const value = valueAt(cell);
    if ("each" in formulas) return { cell, content: { kind: "formula", formula: storedFormula(formulas.each[down]?.[across] ?? '=""'), value } };
    if (down + across > 0) return { cell, content: { kind: "recalculated", value } };
    const array = formulas.isArray || places.length > 1 ? { array: range.replaceAll("$", "") } : {};
    return { cell, content: { kind: "formula", formula: storedFormula(formulas.one), value, ...array } };
  });
}
