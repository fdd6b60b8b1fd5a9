import type { PlainCell, PlainSheets } from "../../sharing/plain/plainSheets";
import { plannedBeside } from "../../sharing/plain/plannedBeside";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea } from "../../workbook/cellArea";
import { emphasisStyles } from "../../workbook/sheetStyles";
import { storedFormula } from "../formulas/storedFormula";
import type { CellChange, FileValue } from "../package/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import type { HeldCells } from "./HeldCells";

const FIXED_LOOK = { fill: emphasisStyles.failed.fill } as const;

/**
 * Puts plain formulas into a workbook file, in place, marks the fixed cells, and adds the sheets they need, out of view. Nothing
 * else of the file changes but that it is calculated when it is opened.
 * @param held what the cells hold, by sheet; the values are kept beside the new formulas
 */
export async function putPlain(
  file: WorkbookPackage,
  { cells, names, workings, flags }: PlainSheets,
  held: ReadonlyMap<string, HeldCells>,
): Promise<void> {
  const bySheet = new Map<string, PlainCell[]>();
  for (const cell of cells) {
    const here = bySheet.get(cell.sheet);
    if (here === undefined) bySheet.set(cell.sheet, [cell]);
    else here.push(cell);
  }
  for (const [sheet, here] of bySheet) await changeSheet(file, sheet, here, held.get(sheet) ?? new Map());
  await file.changeNames(names);
  const beside = [...(workings === undefined ? [] : [plannedBeside(workings)]), ...flags.map(plannedBeside)];
  const added = await addPlanned(file, beside, { answer: (sheet) => (flags.some(({ name }) => name === sheet) ? 0 : null) });
  await file.hide(added);
  await file.calculateOnOpening();
}

async function changeSheet(file: WorkbookPackage, sheet: string, cells: readonly PlainCell[], held: HeldCells): Promise<void> {
  const fixed = cells.filter(({ kind }) => kind === "fixed").flatMap(({ area }) => cellsOfArea(areaNamed(area)).flat());
  const bases = [...new Set(fixed.map((cell) => held.get(cell)?.look ?? 0))];
  const marked = bases.length === 0 ? [] : await file.addLooks(bases.map((base) => [base, FIXED_LOOK]));
  const markOf = new Map(bases.map((base, index) => [base, marked[index]]));
  const changes: CellChange[] = [];
  for (const cell of cells) for (const change of changesFor(cell, held, markOf)) changes.push(change);
  await file.changeCells(sheet, changes);
}

function changesFor({ kind, area: range, formulas }: PlainCell, held: HeldCells, markOf: ReadonlyMap<number, number | undefined>): CellChange[] {
  const area = areaNamed(range);
  const valueAt = (cell: string): FileValue => held.get(cell)?.value ?? null;
  const isSeveral = area.rows * area.columns > 1;
  return cellsOfArea(area).flatMap((row, down) =>
    row.map((cell, across): CellChange => {
      const value = valueAt(cell);
      const mark = kind === "fixed" ? markOf.get(held.get(cell)?.look ?? 0) : undefined;
      const look = mark === undefined ? {} : { look: mark };
      if ("each" in formulas)
        return { cell, content: { kind: "formula", formula: storedFormula(formulas.each[down]?.[across] ?? '=""'), value }, ...look };
      if (down + across > 0) return { cell, content: { kind: "recalculated", value }, ...look };
      const array = formulas.isArray || isSeveral ? { array: range.replaceAll("$", "") } : {};
      return { cell: cellAt(area.row, area.column), content: { kind: "formula", formula: storedFormula(formulas.one), value, ...array }, ...look };
    }),
  );
}
