import { cellArea, cellAt, type CellArea } from "../../../src/workbook/cellArea";
import type { BookState } from "../BookState";
import { chartsObject } from "./chartObjects";
import { badArgument, unmodelled } from "../HostError";
import type { HostObject } from "../HostObject";
import { pageBreaksObject, pageLayoutObject } from "./pageObjects";
import { rangeObject } from "./rangeObject";
import { namesObject } from "./namesObject";
import { WHOLE_SHEET, type SheetState } from "../SheetState";

export function worksheetObject(book: BookState, sheet: SheetState): HostObject {
  return {
    kind: "Worksheet",
    identity: () => ({ Id: sheet.id }),
    reads: { Id: () => sheet.id, Name: () => sheet.name, Position: () => book.sheets.indexOf(sheet) },
    writes: {
      Name: (name: string) => book.rename(sheet, name),
      Gridlines: (isShown: boolean) => (sheet.gridlines = isShown),
      Visibility: (visibility: string) => (sheet.visibility = visibility),
    },
    parts: {
      Names: () => namesObject(sheet),
      Charts: () => chartsObject(book, sheet),
      PageLayout: () => pageLayoutObject(sheet),
      HorizontalPageBreaks: () => pageBreaksObject(sheet),
      Protection: () => ({ kind: "WorksheetProtection", reads: { Protected: () => sheet.isProtected } }),
      AutoFilter: () => ({ kind: "AutoFilter", reads: { IsDataFiltered: () => sheet.isFiltered } }),
      FreezePanes: () => ({ kind: "WorksheetFreezePanes", methods: { FreezeRows: (rows: number) => void (sheet.frozenRows = rows) } }),
    },
    methods: {
      GetRange: (range: string) => {
        const area = cellArea(range) ?? wholeLines(range);
        if (area === undefined) throw badArgument(range);
        return rangeObject(book, sheet, area);
      },
      GetRangeByIndexes: (row: number, column: number, rows: number, columns: number) => rangeObject(book, sheet, { row, column, rows, columns }),
      GetCell: (row: number, column: number) => rangeObject(book, sheet, { row, column, rows: 1, columns: 1 }),
      // Looks are not modelled as using a cell.
      GetUsedRangeOrNullObject: () => {
        const area = sheet.used();
        return area === undefined ? null : rangeObject(book, sheet, area);
      },
      FindAllOrNullObject: (text: string, { completeMatch, matchCase }: { completeMatch?: boolean; matchCase?: boolean }) => {
        if (completeMatch !== true || matchCase !== true) throw unmodelled("a search for parts of a text or any letter case");
        const found = [...sheet.cells].filter(([, { value }]) => value === text).map(([cell]) => cell);
        return found.length === 0
          ? null
          : { kind: "RangeAreas", reads: { Address: () => found.join(",") }, methods: { _KeepReference: () => undefined } };
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

const WHOLE_LINES = /^\$?([A-Z]{1,3})\$?:\$?([A-Z]{1,3})$|^\$?(\d+):\$?(\d+)$/i;

/** "B:C" and "3:9". */
function wholeLines(range: string): CellArea | undefined {
  const [, left, right, top, bottom] = WHOLE_LINES.exec(range) ?? [];
  const last = cellAt(WHOLE_SHEET.rows - 1, WHOLE_SHEET.columns - 1);
  if (left !== undefined) return cellArea(`${left}1:${right}${WHOLE_SHEET.rows}`);
  return top === undefined ? undefined : cellArea(`A${top}:${last.replace(/\d+/, "")}${bottom}`);
}
