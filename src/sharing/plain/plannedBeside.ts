import type { SheetPlan } from "../../workbook/SheetPlan";
import type { WorkingsCell } from "./WorkingsSheet";

/** The sheet of workings or one of flags as a plan: headings beside formulas, which alone begin with "=". */
export const plannedBeside = ({ name, cells }: { readonly name: string; readonly cells: readonly WorkingsCell[] }): SheetPlan => ({
  name,
  cells: cells.map(({ cell, content }) => (content.startsWith("=") ? { cell, formula: content } : { cell, content })),
  columnWidths: [],
  entryRules: [],
  frozenRows: 0,
  startAt: "A1",
});
