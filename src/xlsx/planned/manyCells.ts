import { areaNamed } from "../../workbook/areaNamed";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import { storedFormula } from "../formulas/storedFormula";
import { namesForSeveral, worksOnRanges } from "../formulas/worksOnRanges";
import type { CellChange, FileValue } from "../package/cells/CellChange";
import type { WorkbookPackage } from "../package/WorkbookPackage";
import type { ForPlans } from "./plannedFile";

// The file library takes a tenth of a millisecond and two kilobytes for each cell, which is felt above this.
const MANY = 2000;

/** What is left out of a long sheet. */
export interface LeftOut {
  readonly cells: readonly PlannedCell[];
  /** In points, by rows from 0, of rows without any of the cells that stay. */
  readonly heights: ReadonlyMap<number, number>;
}

/** A long sheet without all but one cell of each look and without the heights of other rows, and what is left out. A short one has nothing left out. */
export function withoutRepeats(plan: SheetPlan): { readonly short: SheetPlan; readonly left: LeftOut } {
  if (plan.cells.length <= MANY) return { short: plan, left: { cells: [], heights: new Map() } };
  const [first, left] = [new Map<string, PlannedCell>(), [] as PlannedCell[]];
  for (const cell of plan.cells) {
    const look = lookOf(cell);
    if (first.has(look)) left.push(cell);
    else first.set(look, cell);
  }
  const cells = [...first.values()];
  // A break stands in the row before it.
  const stay = new Set([...cells.map(({ cell }) => areaNamed(cell).row + 1), ...(plan.print?.breaksBefore ?? []).map((row) => row - 1)]);
  const rowHeights = (plan.rowHeights ?? []).flatMap(({ from, to, height }) => rows(from, to).map((row) => ({ from: row, to: row, height })));
  const heights = new Map(rowHeights.flatMap(({ from, height }) => (stay.has(from) ? [] : [[from - 1, height] as const])));
  return { short: { ...plan, cells, rowHeights: rowHeights.filter(({ from }) => stay.has(from)) }, left: { cells: left, heights } };
}

const rows = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Most sheets have a dozen looks. */
const lookOf = ({ style, format, heavyLeft }: PlannedCell): string =>
  format === undefined && heavyLeft === undefined ? (style ?? "") : JSON.stringify([style, format, heavyLeft]);

/** Puts cells that were left out into their sheet, each with the look of the one that stands there. */
export async function putRepeats(
  file: WorkbookPackage,
  plan: SheetPlan,
  { cells: left, heights }: LeftOut,
  { answer, names = [] }: ForPlans,
): Promise<void> {
  if (left.length === 0 && heights.size === 0) return;
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
  await file.changeCells(plan.name, changes, heights);
}

function contentOf({ cell, content, formula }: PlannedCell, value: FileValue, isOverArrays: (formula: string) => boolean): CellChange["content"] {
  if (formula === undefined) return { kind: "value", value: content ?? null };
  const array = isOverArrays(formula) ? { array: cell.replaceAll("$", "") } : {};
  return { kind: "formula", formula: storedFormula(formula), value, ...array };
}
