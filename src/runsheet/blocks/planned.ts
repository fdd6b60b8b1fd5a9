import type { EntryRule, PlannedCell, RowHeight } from "../../workbook/SheetPlan";
import { formulaText, placeOf } from "../expressions/formulaText";
import type { BlockCell, BoxRule } from "./Block";

/** A cell with its formula written out. */
export const plannedCell = ({ at, content, formula, style, format }: BlockCell): PlannedCell => ({
  cell: placeOf(at),
  ...(content === undefined ? {} : { content }),
  ...(formula === undefined ? {} : { formula: formulaText(formula) }),
  style,
  ...(format === undefined ? {} : { format }),
});

export const plannedRule = ({ over, allow, ...rule }: BoxRule): EntryRule => ({
  range: placeOf(over),
  allow: allow.kind === "condition" ? { kind: "condition", condition: formulaText(allow.condition) } : allow,
  ...rule,
});

/** Rows of one height one after another, together. */
export function rowHeights(heights: readonly number[]): RowHeight[] {
  return heights.reduce<RowHeight[]>((so, height, index) => {
    const last = so.at(-1);
    if (last?.height === height) return [...so.slice(0, -1), { ...last, to: index + 1 }];
    return [...so, { from: index + 1, to: index + 1, height }];
  }, []);
}
