import type { GridEngine } from "../workbook/grid/GridEngine";
import { cellAt } from "../workbook/cellArea";
import { typeInto } from "../workbook/grid/typing/typeInto";
import { isUnread } from "./unreadFormula";

/**
 * Makes a text of each formula that cannot be read, so that a file can hold it: a formula it would be taken for damage, and taken out.
 * @param fromFile the formulas that the file brought along, which stay as they are
 * @returns the cells, "Sheet1!B7"
 */
export function unreadAsText(engine: GridEngine, fromFile: ReadonlySet<string>): string[] {
  const found: string[] = [];
  for (const sheet of engine.book.getSheets()) {
    const [name, id] = [sheet.getSheetName(), sheet.getSheetId()];
    const unread: [cell: string, formula: string][] = [];
    sheet
      .getSheet()
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (!cell?.f && !cell?.si) return;
        const formula = engine.spills.getFormulaStringByCell(row, column, id, engine.book.getId()) ?? "";
        if (formula !== "" && !fromFile.has(formula) && isUnread(formula)) unread.push([cellAt(row, column), formula]);
      });
    for (const [cell, formula] of unread) {
      typeInto(engine, { sheet: name, cell }, `'${formula}`);
      found.push(`${name}!${cell}`);
    }
  }
  return found;
}
