import { areaNamed } from "../../workbook/areaNamed";
import { cellsOfArea } from "../../workbook/cellArea";
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
  /** Cells in which the sheet's own formulas look for a formula, wherever they were moved to; undefined on a sheet where none does. */
  readonly lookedFor: ReadonlySet<string> | undefined;
}

/**
 * @param steps that are still to come
 * @param all every step since the sheet was as the plan says
 */
export function sheetNow({ rows }: RangeReading, made: SheetPlan, steps: readonly RowsIn[], all: readonly RowsIn[]): SheetNow {
  const filled = rows.flat().filter(({ value, formula }) => formula !== "" || value !== null);
  const lookedFor = filled.flatMap(({ formula }) => lookedForBy(formula));
  return {
    lookedFor: lookedFor.length === 0 ? undefined : new Set(lookedFor.map((cell) => cellAfter(cell, steps))),
    held: new Map(filled.map(({ cell, formula, value }) => [cellAfter(cell, steps), { now: cell, formula, value }])),
    made: new Map(made.cells.map((planned) => [cellAfter(planned.cell, all), planned])),
  };
}

const LOOKS = /ISFORMULA\((\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)\)/gi;

/** The cells that a formula asks whether they hold one. */
const lookedForBy = (formula: string): string[] => [...formula.matchAll(LOOKS)].flatMap(([, asked = ""]) => cellsOfArea(areaNamed(asked)).flat());

export const isBox = ({ style }: PlannedCell): boolean => style?.startsWith("runBox") === true;
