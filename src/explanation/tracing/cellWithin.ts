import { cellArea, rangeOf } from "../../workbook/cellArea";
import type { RangeReference } from "../formula/references";
import type { Valued } from "./Traced";

/** Where the cell stands that INDEX takes: of a table by row and column, of a single row or column by its place. */
export function cellWithin([table, first, second]: readonly (Valued | undefined)[]): RangeReference | undefined {
  const area = table?.place === undefined || table.place.spill ? undefined : cellArea(table.place.range);
  const [one, other] = [first, second].map((value) => value?.cells[0]?.[0]);
  if (area === undefined || table?.place === undefined || typeof one !== "number") return undefined;
  const isRow = second === undefined && area.rows === 1;
  const [down, right] = isRow ? [1, one] : [one, typeof other === "number" ? other : 1];
  const isWithin = down >= 1 && down <= area.rows && right >= 1 && right <= area.columns;
  if (!isWithin) return undefined;
  return { ...table.place, range: rangeOf({ row: area.row + down - 1, column: area.column + right - 1, rows: 1, columns: 1 }) };
}
