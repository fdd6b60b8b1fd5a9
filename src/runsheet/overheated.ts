import { detailBox } from "./constantWeightArguments";
import { cellAt } from "../workbook/cellArea";
import type { PlannedCell } from "../workbook/SheetPlan";
import type { Layout } from "./layout";
import { materialStands } from "./materialStands";

/** Beside a temperature that kiln or furnace is set to: a caution when the vessel's material does not stand it, else nothing. */
export function overheated(rows: Layout, row: number): PlannedCell {
  const [set, stands] = [cellAt(row - 1, 1), materialStands(rows)];
  const words = `"Caution: above the "&${stands}&" °C that "&${detailBox(rows, "material")}&" stands"`;
  return { cell: cellAt(row - 1, 2), formula: `=IF(COUNT(${set})=0,"",IFERROR(IF(${set}>${stands},${words},""),""))`, style: "note" };
}
