import { parseA1Range } from "@borgar/fx";
import type { CellAddress, CellReading, Workbook } from "../workbook/Workbook";
import type { Position } from "./formula/Cells";

/** The formula cell whose answers a cell belongs to, and the cell's place in them. */
export interface SpillPlace {
  readonly anchor: CellReading;
  readonly position: Position;
}

/** The spill that fills a cell which holds a value but no cell formula of its own, or undefined. @throws WorkbookProblem */
export async function spillAnchor(workbook: Workbook, { sheet, cell }: CellAddress): Promise<SpillPlace | undefined> {
  const used = await workbook.readUsed(sheet);
  for (const anchor of used.rows.flat()) {
    const position = anchor.spill === "" ? undefined : placeIn(anchor.spill, cell);
    if (position !== undefined) return { anchor, position };
  }
  return undefined;
}

function placeIn(area: string, cell: string): Position | undefined {
  const whole = parseA1Range(area);
  const one = parseA1Range(cell);
  if (!whole || !one) return undefined;
  const row = (one.top ?? 0) - (whole.top ?? 0);
  const column = (one.left ?? 0) - (whole.left ?? 0);
  const inside = row >= 0 && column >= 0 && (one.top ?? 0) <= (whole.bottom ?? 0) && (one.left ?? 0) <= (whole.right ?? 0);
  return inside ? { row, column } : undefined;
}
