import { areaNamed } from "../../workbook/areaNamed";
import { covers } from "../../workbook/cellArea";
import { typedCells } from "../../workbook/holdsTheSame";
import { areasPutIn, cellAfter, isSameShape, type RowsIn, type SheetGrowth } from "../../workbook/SheetGrowth";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { buildRunSheet } from "../buildRunSheet";
import { layout } from "../sheet/layout";
import { changesTo, type Changes } from "./changesTo";
import { isRecord, recordUnderWay, type UnderWay } from "./record";
import { rowsPutIn } from "./rowsPutIn";
import { sheetNow, type SheetNow } from "./SheetNow";

export interface PlannedGrowth extends Pick<Changes, "typedOver" | "inTheWay" | "unlookedFor"> {
  readonly growth: SheetGrowth;
  /** Calculated cells that get their formula back, where nothing else is done. */
  readonly formulas: readonly string[];
  /** What was typed and stays, under the place that it has at the end. */
  readonly stays: ReadonlyMap<string, string | number | boolean>;
}

/**
 * What makes a run sheet the larger one that it is to become, or the same one whole again.
 * @param mends writes formulas over what was typed over them
 * @param done how many steps of this growth were carried out before; left out where it was never begun
 */
export function planGrowth(reading: RangeReading, underWay: UnderWay, mends: boolean, done?: number): PlannedGrowth {
  const { from, to } = underWay;
  const [before, plan] = [buildRunSheet(from), buildRunSheet(to)];
  const all = rowsPutIn(layout(from), layout(to));
  const steps = all.slice(done ?? 0);
  const now = sheetNow(reading, before, steps, all);
  const { written, typedOver, inTheWay, unlookedFor } = changesTo(plan, now, { mends, isBegun: done !== undefined, moves: steps.length > 0 });
  const record = plan.cells.find(isRecord);
  const isTheSame = before.cells.find(isRecord)?.content === record?.content;
  const overwritten = new Set(written.map(({ cell }) => cell));
  return {
    typedOver,
    inTheWay,
    unlookedFor,
    formulas: written.filter(({ formula }) => formula !== undefined).map(({ cell }) => cell),
    stays: new Map(
      [...typedCells(reading)].flatMap(([cell, typed]) => {
        const at = cellAfter(cell, steps);
        const made = now.made.get(at);
        const isOurs = overwritten.has(at) || made?.content === typed || isSameAsMade(made, typed) || isRecord({ content: typed });
        return isOurs ? [] : [[at, typed] as const];
      }),
    ),
    growth: {
      read: reading,
      begun: record === undefined || isTheSame ? undefined : { ...record, content: recordUnderWay(underWay) },
      steps,
      written: written.filter((one) => !isRecord(one)),
      dressed: dressed(plan, now, all, overwritten),
      plan,
      ended: record,
    },
  };
}

const isSameAsMade = (made: PlannedCell | undefined, typed: string | number | boolean): boolean =>
  made?.formula !== undefined && typeof typed === "string" && typed.startsWith("=") && isSameShape(made.formula, typed);

/** What is new, what changes its looks, what is written, and what touches rows put in, whose lines may have gone with theirs. */
function dressed({ cells, columnWidths }: SheetPlan, { made }: SheetNow, all: readonly RowsIn[], written: ReadonlySet<string>): PlannedCell[] {
  const touching = areasPutIn(all, columnWidths.length).map((area) => ({ ...area, row: area.row - 1, rows: area.rows + 2 }));
  return cells.filter((one) => {
    const before = made.get(one.cell);
    if (before === undefined || written.has(one.cell) || !looksTheSame(before, one)) return true;
    const { row, column } = areaNamed(one.cell);
    return touching.some((area) => covers(area, row, column));
  });
}

const looksTheSame = (one: PlannedCell, other: PlannedCell): boolean =>
  one.style === other.style && one.format === other.format && one.heavyLeft === other.heavyLeft;
