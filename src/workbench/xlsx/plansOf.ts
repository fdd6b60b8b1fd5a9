import type { IWorksheetData } from "@univerjs/core";
import type { Emphasis, PlannedChart, PrintPlan } from "../../workbook/SheetPlan";

interface Kept {
  readonly print?: PrintPlan;
  readonly emphasis?: readonly Emphasis[];
  readonly charts?: readonly PlannedChart[];
}

/** What a planned sheet keeps for paper and for other spreadsheets, which the grid itself does not show. Set by planned sheets alone. */
export const plansOf = ({ custom }: Partial<IWorksheetData>): Kept => (custom ?? {}) as Kept;
