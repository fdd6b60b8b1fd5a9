import { headingOfTable } from "../../../problems/files/packageProblems";
import { areaNamed } from "../../../workbook/areaNamed";
import { cellAt, cellArea } from "../../../workbook/cellArea";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { relationshipsOf } from "../../parts/relationships";
import type { CellChange } from "./CellChange";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, elementsOf } from "../parts/markup";

/**
 * The headings of tables stand in their cells and in the table's own part, and formulas name columns by them. Spreadsheets call a file damaged
 * where the two differ.
 * @throws WorkbookProblem where a change would make them differ
 */
export async function keepHeadings(
  parts: EditableParts,
  sheet: { readonly name: string; readonly part: string },
  changes: readonly CellChange[],
): Promise<void> {
  const headings = new Map<string, { readonly column: string; readonly table: string }>();
  for (const { type, target } of await relationshipsOf(parts, sheet.part)) {
    if (type !== "table" || !parts.has(target)) continue;
    const table = elementsOf(target, await parts.text(target));
    const area = cellArea(attributeOf(table, "ref") ?? "");
    if (area === undefined || attributeOf(table, "headerRowCount") === "0") continue;
    for (const [place, one] of (childNamed(table, "tableColumns")?.children ?? []).entries())
      headings.set(cellAt(area.row, area.column + place), { column: attributeOf(one, "name") ?? "", table: attributeOf(table, "displayName") ?? "" });
  }
  if (headings.size === 0) return;
  for (const { cell, content } of changes) {
    const { row, column } = areaNamed(cell);
    const heading = headings.get(cellAt(row, column));
    if (heading === undefined || content.kind === "kept" || content.kind === "recalculated") continue;
    if (content.kind === "formula" || content.value !== heading.column) throw new WorkbookProblem(headingOfTable(sheet.name, cell, heading.table));
  }
}
