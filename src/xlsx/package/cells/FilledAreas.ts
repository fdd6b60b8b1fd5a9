import { cellOfArray, cellOfDataTable } from "../../../problems/files/packageProblems";
import type { CellArea } from "../../../workbook/cellArea";
import { WorkbookProblem } from "../../../workbook/Workbook";
import { keepsFormula, type WantedCell } from "./WantedCell";

interface FilledArea {
  readonly isTable: boolean;
  readonly ref: string;
  readonly area: CellArea;
}

/** The array formulas and what-if tables of a sheet that stay. */
export class FilledAreas {
  private readonly areas: FilledArea[] = [];

  add(area: FilledArea): void {
    this.areas.push(area);
  }

  /** A cell in one of them cannot have a content of its own. @throws WorkbookProblem */
  refuseParts(sheet: string, wanted: readonly WantedCell[]): void {
    if (this.areas.length === 0) return;
    const byRow = new Map<number, WantedCell[]>();
    for (const one of wanted) {
      if (keepsFormula(one.content)) continue;
      const inRow = byRow.get(one.row);
      if (inRow === undefined) byRow.set(one.row, [one]);
      else inRow.push(one);
    }
    for (const { isTable, ref, area } of this.areas) {
      for (let row = area.row; row < area.row + area.rows; row++) {
        const inArea = byRow.get(row)?.find(({ column }) => column >= area.column && column < area.column + area.columns);
        if (inArea === undefined) continue;
        const sentence = isTable ? cellOfDataTable : cellOfArray;
        throw new WorkbookProblem(sentence(sheet, inArea.cell, ref));
      }
    }
  }
}
