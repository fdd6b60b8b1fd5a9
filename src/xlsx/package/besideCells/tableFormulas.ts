import { relationshipsOf } from "../../parts/relationships";
import { areaNamed } from "../../../workbook/areaNamed";
import { cellAt, type CellArea } from "../../../workbook/cellArea";
import type { EditableParts } from "../parts/EditableParts";
import { attributeOf, childNamed, childrenNamed, elementsOf, escapedText, removal, withAttributes, type Element } from "../parts/markup";
import type { Edit } from "../parts/partText";

/**
 * What is to stand in place of a formula that a table keeps for its column, without "="; undefined for none.
 * @param cells of the column, heading and total left out
 */
export type ColumnFormula = (formula: string, cells: readonly string[]) => string | undefined;

/**
 * Changes what the tables of a sheet keep beside their cells: the formula that a spreadsheet fills into each new row (ECMA-376 Part 1, 18.5.1.1), and
 * with `stillTotals` also what totals are worked out by, since the cells then hold values.
 */
export async function changeTableFormulas(
  parts: EditableParts,
  sheetPart: string,
  { column, stillTotals }: { readonly column: ColumnFormula; readonly stillTotals: boolean | ((formula: string) => boolean) },
): Promise<void> {
  for (const { type, target } of await relationshipsOf(parts, sheetPart)) {
    if (type !== "table" || !parts.has(target)) continue;
    const text = await parts.text(target);
    const table = elementsOf(target, text);
    const area = areaNamed(attributeOf(table, "ref") ?? "A1");
    const [headings, totalRows] = [Number(attributeOf(table, "headerRowCount") ?? 1), Number(attributeOf(table, "totalsRowCount") ?? 0)];
    const columns = childNamed(table, "tableColumns");
    const edits = (columns === undefined ? [] : childrenNamed(columns, "tableColumn")).flatMap((element, place): Edit[] => {
      const cells = cellsOf(area, place, headings, totalRows);
      const filled = childrenNamed(element, "calculatedColumnFormula").flatMap((one) => changed(one, column(one.text, cells)));
      const totals = childrenNamed(element, "totalsRowFormula").map((one) => one.text);
      const isStill = typeof stillTotals === "boolean" ? stillTotals : totals.some(stillTotals);
      return isStill ? [...filled, ...stillTotal(text, element)] : filled;
    });
    await parts.edit(target, edits);
  }
}

const cellsOf = ({ row, column, rows }: CellArea, place: number, headings: number, totals: number): string[] =>
  Array.from({ length: Math.max(0, rows - headings - totals) }, (_, down) => cellAt(row + headings + down, column + place));

function changed(element: Element, formula: string | undefined): Edit[] {
  if (formula === element.text) return [];
  return [formula === undefined ? removal(element) : { from: element.end, to: element.close.start, text: escapedText(formula) }];
}

const stillTotal = (text: string, element: Element): Edit[] => [
  ...(attributeOf(element, "totalsRowFunction") === undefined ? [] : [withAttributes(text, element, { totalsRowFunction: undefined })]),
  ...childrenNamed(element, "totalsRowFormula").map(removal),
];
