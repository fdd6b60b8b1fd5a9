import { holdsCall } from "../../sharing/findCalls";
import type { NameReading } from "../../sharing/plain/reading/PlainReading";
import type { PlainCell, PlainSheets } from "../../sharing/plain/plainSheets";
import { relativeFormula } from "../../sharing/plain/formula/RelativeFormula";
import { plannedBeside } from "../../sharing/plain/plannedBeside";
import { areaNamed } from "../../workbook/areaNamed";
import { cellAt, cellsOfArea } from "../../workbook/cellArea";
import { FIXED_FILL } from "../../workbook/sheetStyles";
import { storedFormula } from "../formulas/storedFormula";
import { namesForSeveral, worksOnRangesWrittenOut, type NamesForSeveral } from "../formulas/worksOnRanges";
import type { CellChange, FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import { addPlanned } from "../planned/addPlanned";
import type { HeldCells } from "./HeldCells";

/** How a file writes A33#. */
const SPILL_IN_FILE = "ANCHORARRAY";

const FIXED_LOOK = { fill: FIXED_FILL } as const;

/**
 * Puts plain formulas into a workbook file, in place, marks the fixed cells, and adds the sheets they need, out of view. Nothing
 * else of the file changes but that it is calculated when it is opened.
 * @param held what the cells hold, by sheet; the values are kept beside the new formulas
 * @param named the names that the formulas may use
 */
export async function putPlain(
  file: WorkbookPackage,
  { cells, names, withAreas, workings, flags }: PlainSheets,
  held: ReadonlyMap<string, HeldCells>,
  named: readonly NameReading[] = [],
): Promise<void> {
  const inFile = named.map(({ name, formula }) => ({ name, refersTo: formula }));
  const several = namesForSeveral(inFile);
  const bySheet = new Map<string, PlainCell[]>();
  for (const cell of cells) {
    const here = bySheet.get(cell.sheet);
    if (here === undefined) bySheet.set(cell.sheet, [cell]);
    else here.push(cell);
  }
  for (const [sheet, here] of bySheet) await changeSheet(file, { sheet, cells: here, held: held.get(sheet) ?? new Map(), several });
  await file.changeNames(names);
  await file.mendBesideCells(SPILL_IN_FILE, withAreas);
  const beside = [...(workings === undefined ? [] : [plannedBeside(workings)]), ...flags.map(plannedBeside)];
  const answer = (sheet: string): number | null => (flags.some(({ name }) => name === sheet) ? 0 : null);
  const added = await addPlanned(file, beside, { answer, names: inFile });
  await file.hide(added);
  await file.calculateOnOpening();
}

interface SheetPut {
  readonly sheet: string;
  readonly cells: readonly PlainCell[];
  readonly held: HeldCells;
  readonly several: NamesForSeveral;
}

async function changeSheet(file: WorkbookPackage, { sheet, cells, held, several }: SheetPut): Promise<void> {
  const fixed = cells.filter(({ kind }) => kind === "fixed").flatMap(({ area }) => cellsOfArea(areaNamed(area)).flat());
  const bases = [...new Set(fixed.map((cell) => held.get(cell)?.look ?? 0))];
  const marked = bases.length === 0 ? [] : await file.addLooks(bases.map((base) => [base, FIXED_LOOK]));
  const markOf = new Map(bases.map((base, index) => [base, marked[index]]));
  const changes: CellChange[] = [];
  const putting = { markOf, several, known: new Map<string, boolean>() };
  for (const cell of cells) for (const change of changesFor(cell, held, putting)) changes.push(change);
  await file.changeCells(sheet, changes);
}

interface Putting {
  readonly markOf: ReadonlyMap<number, number | undefined>;
  readonly several: NamesForSeveral;
  /** What was found of formulas that are filled down. */
  readonly known: Map<string, boolean>;
}

function changesFor(plain: PlainCell, held: HeldCells, { markOf, several, known }: Putting): CellChange[] {
  const { kind, area: range, formulas } = plain;
  const area = areaNamed(range);
  const valueAt = (cell: string): FileValue => held.get(cell)?.value ?? null;
  const isSeveral = area.rows * area.columns > 1;
  const isOverArrays = kind !== "fixed" && isReadOverArrays(plain, held, { several, known });
  return cellsOfArea(area).flatMap((row, down) =>
    row.map((cell, across): CellChange => {
      const value = valueAt(cell);
      const mark = kind === "fixed" ? markOf.get(held.get(cell)?.look ?? 0) : undefined;
      const look = mark === undefined ? {} : { look: mark };
      if ("each" in formulas) {
        const array = isOverArrays ? { array: cell } : {};
        return { cell, content: { kind: "formula", formula: storedFormula(formulas.each[down]?.[across] ?? '=""'), value, ...array }, ...look };
      }
      if (down + across > 0) return { cell, content: { kind: "recalculated", value }, ...look };
      const array = formulas.isArray || isSeveral || isOverArrays ? { array: range.replaceAll("$", "") } : {};
      return { cell: cellAt(area.row, area.column), content: { kind: "formula", formula: storedFormula(formulas.one), value, ...array }, ...look };
    }),
  );
}

/**
 * True where the formula worked over arrays before: the file says so, or it calls one of ours, which only programs with arrays everywhere calculate.
 * In the file its plain form would take one cell of each range.
 */
function isReadOverArrays({ cell, before }: PlainCell, held: HeldCells, { several, known }: Pick<Putting, "several" | "known">): boolean {
  if (held.get(cell)?.isArray === true) return true;
  if (!holdsCall(before)) return false;
  // References to single cells stay such in every row; a name may look like a cell, and a range may be one cell in some rows alone.
  const relative = several.size > 0 || before.includes(":") ? undefined : relativeFormula(before, areaNamed(cell).row + 1)?.formula;
  const told = relative === undefined ? undefined : known.get(relative);
  if (told !== undefined) return told;
  const found = worksOnRangesWrittenOut(before, several);
  if (relative !== undefined) known.set(relative, found);
  return found;
}
