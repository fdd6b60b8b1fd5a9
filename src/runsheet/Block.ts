import type { EntryRule, PlannedCell } from "../workbook/SheetPlan";

/** One part of a run sheet. */
export interface Block {
  readonly cells: readonly PlannedCell[];
  readonly entryRules: readonly EntryRule[];
}
