import type { ICellData } from "@univerjs/core";
import type { GridEngine } from "../workbook/grid/GridEngine";

/** What people and the pane put on the sheets, as one text: names, values and cell formulas, without what is calculated from them. */
export function typedContent(engine: GridEngine): string {
  const { sheets, sheetOrder } = engine.book.save();
  const cellsOf = (id: string): [string, string, unknown][] =>
    Object.entries(sheets[id]?.cellData ?? {}).flatMap(([row, cells]) =>
      Object.entries((cells ?? {}) as Record<string, ICellData>).map(([column, cell]): [string, string, unknown] => [row, column, held(cell)]),
    );
  return JSON.stringify(sheetOrder.map((id) => [sheets[id]?.name, cellsOf(id).filter(([, , content]) => content !== "")]));
}

/** A shared formula stands in its first cell; the others only refer to it. */
const held = ({ f, si, p, v }: ICellData): unknown => f || si || p?.body?.dataStream || (v ?? "");
