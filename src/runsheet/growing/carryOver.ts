import { typedCells } from "../../workbook/holdsTheSame";
import { cellAfter } from "../../workbook/SheetGrowth";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { buildRunSheet } from "../buildRunSheet";
import { layout } from "../sheet/layout";
import type { UnderWay } from "./record";
import { rowsPutIn } from "./rowsPutIn";
import { isBox } from "./SheetNow";

/**
 * A new sheet with more columns, and in its boxes all that stands in those of the old one. Boxes keep their columns however many
 * samples there are; what the sheet works out moves, and tables that cross the heavy line would be torn by columns put in.
 */
export function carryOver(reading: RangeReading, { from, to }: UnderWay): SheetPlan {
  const steps = rowsPutIn(layout(from), layout(to));
  const held = typedCells(reading);
  const values = new Map(reading.rows.flat().map(({ cell, value }) => [cell, value]));
  const boxes = new Map(
    buildRunSheet(from)
      .cells.filter(isBox)
      .map(({ cell }) => [cellAfter(cell, steps), cell]),
  );
  const plan = buildRunSheet(to);
  return {
    ...plan,
    name: reading.sheet,
    cells: plan.cells.map((one): PlannedCell => {
      const old = boxes.get(one.cell);
      if (old === undefined || !isBox(one)) return one;
      const typed = held.get(old);
      // A formula names cells by where they stood, so what it comes to is taken along.
      const value = typeof typed === "string" && typed.startsWith("=") ? values.get(old) : typed;
      const { cell, style, format, heavyLeft } = one;
      const blank: PlannedCell = { cell, ...(style && { style }), ...(format && { format }), ...(heavyLeft && { heavyLeft }) };
      return value === undefined || value === null ? blank : { ...blank, content: value };
    }),
  };
}
