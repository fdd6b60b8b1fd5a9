import { cellChangedTwice } from "../../../problems/files/packageProblems";
import { notACellRange } from "../../../problems/workbook/workbookProblems";
import { areaNamed } from "../../../workbook/areaNamed";
import { WorkbookProblem } from "../../../workbook/Workbook";
import type { CellChange, NewContent } from "./CellChange";

/** What is to become of one cell. */
export interface WantedCell extends CellChange {
  readonly row: number;
  readonly column: number;
}

export const keepsFormula = ({ kind }: NewContent): boolean => kind === "recalculated" || kind === "kept";

export const isBlank = (content: NewContent): boolean => content.kind === "kept" || (content.kind !== "formula" && content.value === null);

/** By row, then by column. */
export function inOrder(changes: readonly CellChange[], sheet: string): WantedCell[] {
  const wanted = changes.map((change): WantedCell => {
    const { cell, content, look } = change;
    const { row, column, rows, columns } = areaNamed(cell);
    if (rows * columns > 1) throw new WorkbookProblem(notACellRange(cell));
    return look === undefined ? { cell, content, row, column } : { cell, content, look, row, column };
  });
  wanted.sort((one, other) => one.row - other.row || one.column - other.column);
  const twice = wanted.find(({ row, column }, index) => wanted[index + 1]?.row === row && wanted[index + 1]?.column === column);
  if (twice !== undefined) throw new WorkbookProblem(cellChangedTwice(sheet, twice.cell));
  return wanted;
}
