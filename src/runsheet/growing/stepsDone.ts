import { cellAfter, type RowsIn } from "../../workbook/SheetGrowth";
import type { SheetPlan } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { saysLabel } from "../words/olderSheets";

// So many labels of a sheet are found where they should be even if some were reworded; with rows put in elsewhere, far fewer are.
const ENOUGH = 0.8;

/**
 * How many of the steps of a growth that broke off were carried out, by where the labels of the sheet stand; undefined where they
 * stand as after none of them, because somebody rearranged the sheet.
 */
export function stepsDone({ rows }: RangeReading, made: SheetPlan, steps: readonly RowsIn[]): number | undefined {
  const texts = new Map(rows.flat().map(({ cell, value }) => [cell, value]));
  const labels = made.cells.flatMap(({ cell, content }) => (cell.startsWith("A") && typeof content === "string" ? [{ cell, content }] : []));
  const found = Array.from({ length: steps.length + 1 }, (_, done) => {
    const so = steps.slice(0, done);
    return labels.filter(({ cell, content }) => saysLabel(texts.get(cellAfter(cell, so)), content)).length;
  });
  const most = Math.max(...found);
  return most >= ENOUGH * labels.length ? found.lastIndexOf(most) : undefined;
}
