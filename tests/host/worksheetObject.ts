import { cellArea } from "../../src/workbook/cellArea";
import type { BookState } from "./BookState";
import { chartsObject } from "./chartObjects";
import { badArgument, unmodelled } from "./HostError";
import type { HostObject } from "./HostObject";
import { rangeObject } from "./rangeObject";
import type { SheetState } from "./SheetState";

export function worksheetObject(book: BookState, sheet: SheetState): HostObject {
  return {
    kind: "Worksheet",
    identity: () => ({ Id: sheet.id }),
    reads: { Id: () => sheet.id, Name: () => sheet.name, Position: () => book.sheets.indexOf(sheet) },
    writes: { Name: (name: string) => book.rename(sheet, name) },
    parts: {
      Charts: () => chartsObject(book, sheet),
      FreezePanes: () => ({ kind: "WorksheetFreezePanes", methods: { FreezeRows: (rows: number) => void (sheet.frozenRows = rows) } }),
    },
    methods: {
      GetRange: (range: string) => {
        const area = cellArea(range);
        if (area === undefined) throw badArgument(range);
        return rangeObject(book, sheet, area);
      },
      GetRangeByIndexes: (row: number, column: number, rows: number, columns: number) => rangeObject(book, sheet, { row, column, rows, columns }),
      GetCell: (row: number, column: number) => rangeObject(book, sheet, { row, column, rows: 1, columns: 1 }),
      GetUsedRangeOrNullObject: (valuesOnly: boolean) => {
        if (!valuesOnly) throw unmodelled("a used range that counts formats");
        const area = sheet.used();
        return area === undefined ? null : rangeObject(book, sheet, area);
      },
      Copy: (position: string) => {
        if (position !== "End") throw unmodelled(`a copy placed at ${position}`);
        return worksheetObject(book, book.copy(sheet));
      },
      Activate: () => book.activate(sheet),
      Delete: () => book.remove(sheet),
    },
  };
}
