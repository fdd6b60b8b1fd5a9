import { cellArea } from "../workbook/cellArea";
import type { CellReading, RangeReading } from "../workbook/Workbook";

/**
 * What a sheet calls one of its cells: the words left of it in its row; where a table numbers its rows, the heading above
 * and the number. "" where the sheet says nothing, and for a spill, which brings words of its own.
 */
export function labelOf({ cell, spill }: CellReading, { rows }: Pick<RangeReading, "rows">): string {
  if (spill !== "") return "";
  const at = rows.findIndex((row) => row.some((other) => other.cell === cell));
  const column = rows[at]?.findIndex((other) => other.cell === cell) ?? 0;
  const printed = (rows[at] ?? []).slice(0, column).filter(({ formula, value }) => formula === "" && value !== null && value !== "");
  const first = printed.find((other) => cellArea(other.cell)?.column === 0);
  if (first === undefined || typeof first.value === "string") return String(first?.value ?? "");
  const above = rows.slice(0, at).flatMap((row) => row[column] ?? []);
  const heading = above.filter(({ formula, value }) => formula === "" && typeof value === "string" && value !== "").at(-1)?.value ?? "";
  return heading === "" ? "" : `${heading}, ${first.shown}`;
}
