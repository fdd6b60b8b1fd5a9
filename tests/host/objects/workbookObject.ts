import { cellArea } from "../../../src/workbook/cellArea";
import type { BookEvent, BookState } from "../BookState";
import type { HostObject } from "../HostObject";
import { namesObject } from "./namesObject";
import { rangeObject } from "./rangeObject";
import { worksheetObject } from "./worksheetObject";

/** The path of every batch begins here. */
export function workbookObject(book: BookState, watched: Set<BookEvent["kind"]>): HostObject {
  return {
    kind: "Workbook",
    parts: {
      Worksheets: () => worksheetsObject(book, watched),
      Names: () => namesObject(book),
      Application: () => ({
        kind: "Application",
        reads: { CalculationMode: () => book.calculation.mode, CalculationState: () => book.calculation.state },
        methods: {
          CreateWorkbook: (file: string) => ({
            kind: "WorkbookCreated",
            identity: () => ({ Id: book.nextId() }),
            methods: { Open: () => void book.opened.push(file) },
          }),
        },
      }),
    },
    methods: {
      GetActiveCell: () => {
        const { row, column } = cellArea(book.selected(book.active)) ?? { row: 0, column: 0 };
        return rangeObject(book, book.active, { row, column, rows: 1, columns: 1 });
      },
      // What the library asks of Excel on the web in place of the two above.
      CreateAndOpenWorkbook: (file: string) => void book.opened.push(file),
      _RemoveReference: (id: string) => void book.references.delete(id),
    },
  };
}

function worksheetsObject(book: BookState, watched: Set<BookEvent["kind"]>): HostObject {
  const watch = (kind: BookEvent["kind"]) => () => void watched.add(kind);
  const unwatch = (kind: BookEvent["kind"]) => () => void watched.delete(kind);
  return {
    kind: "WorksheetCollection",
    items: () => book.sheets.map((sheet) => worksheetObject(book, sheet)),
    item: (key: string) => worksheetObject(book, book.sheet(key)),
    methods: {
      Add: (name: string | null) => worksheetObject(book, book.add(name)),
      GetItem: (key: string) => worksheetObject(book, book.sheet(key)),
      GetItemOrNullObject: (key: string) => {
        const sheet = book.find(key);
        return sheet ? worksheetObject(book, sheet) : null;
      },
      _RegisterSelectionChangedEvent: watch("selected"),
      _UnregisterSelectionChangedEvent: unwatch("selected"),
      _RegisterActivatedEvent: watch("activated"),
      _UnregisterActivatedEvent: unwatch("activated"),
      _RegisterDataChangedEvent: watch("changed"),
      _UnregisterDataChangedEvent: unwatch("changed"),
      _RegisterCalculatedEvent: watch("calculated"),
      _UnregisterCalculatedEvent: unwatch("calculated"),
    },
  };
}
