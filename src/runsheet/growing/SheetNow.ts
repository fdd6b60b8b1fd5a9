import { cellAfter, type RowsIn } from "../../workbook/SheetGrowth";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import type { CellReading, RangeReading } from "../../workbook/Workbook";

/** A cell as it stands: its place at the end, where it stands now, and what it holds. */
export interface CellNow {
  readonly now: string;
  readonly formula: string;
  readonly value: CellReading["value"];
}

/** What stands on a sheet, and what it was made with, each under the place that the cell has at the end. */
export interface SheetNow {
  readonly held: ReadonlyMap<string, CellNow>;
  readonly made: ReadonlyMap<string, PlannedCell>;
}

/**
 * @param steps that are still to come
 * @param all every step since the sheet was as the plan says
 */
export function sheetNow({ rows }: RangeReading, made: SheetPlan, steps: readonly RowsIn[], all: readonly RowsIn[]): SheetNow {
  const filled = rows.flat().filter(({ value, formula }) => formula !== "" || value !== null);
  return {
    held: new Map(filled.map(({ cell, formula, value }) => [cellAfter(cell, steps), { now: cell, formula, value }])),
    made: new Map(made.cells.map((planned) => [cellAfter(planned.cell, all), planned])),
  };
}

export const isBox = ({ style }: PlannedCell): boolean => style?.startsWith("runBox") === true;
