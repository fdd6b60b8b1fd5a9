import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import { storedFormula } from "../formulas/storedFormula";
import { namesForSeveral, worksOnRanges } from "../formulas/worksOnRanges";
import type { CellChange, FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import type { ForPlans } from "./plannedFile";

// The file library takes a tenth of a millisecond and two kilobytes for each cell, which is felt above this.
const MANY = 2000;

/** A long sheet without all but one cell of each look, and the cells left out. A short one has none left out. */
export function withoutRepeats(plan: SheetPlan): { readonly short: SheetPlan; readonly left: readonly PlannedCell[] } {
  if (plan.cells.length <= MANY) return { short: plan, left: [] };
  const [first, left] = [new Map<string, PlannedCell>(), [] as PlannedCell[]];
  for (const cell of plan.cells) {
    const look = lookOf(cell);
    if (first.has(look)) left.push(cell);
    else first.set(look, cell);
  }
  return { short: { ...plan, cells: [...first.values()] }, left };
}

const lookOf = ({ style, format, heavyLeft }: PlannedCell): string => JSON.stringify([style, format, heavyLeft]);

/** Puts cells that were left out into their sheet, each with the look of the one that stands there. */
export async function putRepeats(
  file: WorkbookPackage,
  plan: SheetPlan,
  left: readonly PlannedCell[],
  { answer, names = [] }: ForPlans,
): Promise<void> {
  if (left.length === 0) return;
  const looks = new Map<string, number>();
  await file.readCells(plan.name, ({ cell, look }) => void looks.set(cell, look));
  const firsts = new Map<string, number>();
  for (const cell of plan.cells) {
    const look = looks.get(cell.cell);
    if (look !== undefined && !firsts.has(lookOf(cell))) firsts.set(lookOf(cell), look);
  }
  const several = namesForSeveral(names);
  const changes = left.map((planned): CellChange => {
    const value = answer?.(plan.name, planned.cell) ?? null;
    const look = firsts.get(lookOf(planned));
    const content = contentOf(planned, value, (formula) => worksOnRanges(formula, several));
    return { cell: planned.cell, content, ...(look === undefined || look === 0 ? {} : { look }) };
  });
  await file.changeCells(plan.name, changes);
}

function contentOf({ cell, content, formula }: PlannedCell, value: FileValue, isOverArrays: (formula: string) => boolean): CellChange["content"] {
  if (formula === undefined) return { kind: "value", value: content ?? null };
  const array = isOverArrays(formula) ? { array: cell.replaceAll("$", "") } : {};
  return { kind: "formula", formula: storedFormula(formula), value, ...array };
}
