import type { SheetRule } from "../../../workbook/CellsBeside";

/** A rule, and its sheet. */
export interface RuleReading extends SheetRule {
  readonly sheet: string;
}
