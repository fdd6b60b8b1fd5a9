import { areaNamed } from "../../areaNamed";
import type { SheetPlan } from "../../SheetPlan";
import { isSameShape } from "../../SheetGrowth";

/**
 * Asks for the looks under a condition that a plan of ours put on a sheet. They are told by the shape of their conditions, because the
 * cells in these move with rows; the user's own are left alone. @returns them, once the request has been answered
 */
export function askForEmphasis(worksheet: Excel.Worksheet, plan: SheetPlan): () => readonly Excel.ConditionalFormat[] {
  const { emphasis = [] } = plan;
  if (emphasis.length === 0) return () => [];
  const ours = worksheet.getRangeByIndexes(0, 0, rowsOf(plan), plan.columnWidths.length);
  const there = ours.conditionalFormats.load("items/id,items/type,items/customOrNullObject/rule/formula");
  return () =>
    there.items.filter(({ type, customOrNullObject }) => {
      if (type !== Excel.ConditionalFormatType.custom) return false;
      const { formula } = customOrNullObject.rule;
      // A request that broke off between adding a rule and writing its condition leaves one that never holds.
      return !formula || emphasis.some(({ condition }) => isSameShape(condition, formula));
    });
}

const rowsOf = ({ cells }: SheetPlan): number => cells.reduce((most, { cell }) => Math.max(most, areaNamed(cell).row + 1), 1);
