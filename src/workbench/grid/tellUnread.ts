import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { unreadInCell } from "../../problems/workbook/entryProblems";
import { cellAt } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { isUnread, whyUnread } from "../unreadFormula";

// Before what reads number formats.
const FIRST = 200;

/**
 * Tells of a formula that cannot be read as soon as it is entered. It stays in its cell, where it shows an error that whatever reads it passes on.
 * @param say tells the person what to type instead
 */
export function tellUnread({ injector }: GridEngine, say: (sentence: string) => void): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (typed, { row, col }, next) => {
      const formula = typed?.f ?? "";
      if (formula !== "" && isUnread(formula)) say(unreadInCell(cellAt(row, col), whyUnread(formula)));
      return next(typed);
    },
  });
}
