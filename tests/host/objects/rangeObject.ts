import { cellArea, cellAt, covers, rangeOf, type CellArea } from "../../../src/workbook/cellArea";
import type { BookState } from "../BookState";
import { badArgument, unmodelled } from "../HostError";
import type { HostObject } from "../HostObject";
import { valueType, wireValue } from "../HostValue";
import { putRowsIn } from "../moveRows";
import { conditionalFormatsObject } from "./pageObjects";
import { rangeFormatObject } from "./rangeFormatObject";
import { WHOLE_SHEET, type SheetState } from "../SheetState";
import { cellsWithRules, validationObject } from "./validationObject";
import { worksheetObject } from "./worksheetObject";

const MOST_SEARCHED = 10_000_000;

type Written = number | string | boolean | null;

/** A range as the client library sees it. */
export function rangeObject(book: BookState, sheet: SheetState, area: CellArea): HostObject {
  let reference = "";
  const each = <T>(of: (row: number, column: number) => T): T[][] =>
    Array.from({ length: area.rows }, (_row, down) =>
      Array.from({ length: area.columns }, (_column, across) => of(area.row + down, area.column + across)),
    );
  const sub = (row: number, column: number, rows: number, columns: number): HostObject => rangeObject(book, sheet, { row, column, rows, columns });

  /** A row of values for each row of the range; null leaves a cell alone. */
  const writeEach = <T>(rows: readonly (readonly (T | null)[])[], put: (row: number, column: number, value: T) => void): void => {
    checkSize(area, rows.length, rows[0]?.length ?? 0);
    rows.forEach((values, down) => {
      checkSize(area, rows.length, values.length);
      values.forEach((value, across) => value !== null && put(area.row + down, area.column + across, value));
    });
  };
  const write = (rows: readonly (readonly Written[])[]): void => {
    writeEach(rows, (row, column, value) => sheet.write(row, column, value));
    book.events.push({ kind: "changed", sheet, range: rangeOf(area) });
  };

  return {
    kind: "Range",
    identity: () => (reference === "" ? {} : { _ReferenceId: reference }),
    reads: {
      Address: () => addressOf(sheet, area),
      Values: () => each((row, column) => wireValue(sheet.value(row, column))),
      ValueTypes: () => each((row, column) => valueType(sheet.value(row, column))),
      // Text that begins with "=" comes without its apostrophe, just as a formula would.
      Formulas: () => each((row, column) => sheet.formula(row, column) ?? ghost(book, sheet, row, column) ?? wireValue(sheet.value(row, column))),
      Text: () => each((row, column) => sheet.text(row, column)),
      NumberFormat: () => each((row, column) => sheet.format(row, column)),
      RowHidden: () => allOrMixed(Array.from({ length: area.rows }, (_, down) => sheet.hiddenRows.has(area.row + down))),
      ColumnHidden: () => allOrMixed(Array.from({ length: area.columns }, (_, across) => sheet.hiddenColumns.has(area.column + across))),
      HasSpill: () => {
        book.since("1.12", "Range.hasSpill");
        return allOrMixed(each((row, column) => sheet.spillParent(row, column) !== undefined).flat());
      },
    },
    writes: {
      Values: write,
      Formulas: write,
      NumberFormat: (rows: readonly (readonly (string | null)[])[]) =>
        writeEach(rows, (row, column, format) => sheet.setLook(row, column, "numberFormat", format)),
    },
    parts: {
      Worksheet: () => worksheetObject(book, sheet),
      Format: () => rangeFormatObject(sheet, area),
      DataValidation: () => validationObject(sheet, rangeOf(area)),
      ConditionalFormats: () => conditionalFormatsObject(sheet, area),
    },
    methods: {
      _KeepReference: () => {
        if (reference === "")
          book.references.set(
            (reference = book.nextId()),
            rangeObjectKept(() => reference, book, sheet, area),
          );
      },
      _ValidateArraySize: (rows: number, columns: number) => checkSize(area, rows, columns),
      GetRow: (row: number) => sub(area.row + row, area.column, 1, area.columns),
      GetCell: (row: number, column: number) => sub(area.row + row, area.column + column, 1, 1),
      GetResizedRange: (rows: number, columns: number) => sub(area.row, area.column, area.rows + rows, area.columns + columns),
      GetBoundingRect: (other: HostObject) => bounding(book, sheet, area, other),
      GetSpillingToRangeOrNullObject: () => spillRange(book, sheet, sheet.spills.get(rangeOf(area))),
      GetMergedAreasOrNullObject: () => {
        book.since("1.13", "Range.getMergedAreasOrNullObject");
        const areas = sheet.merged.flatMap((one) => cellArea(one) ?? []).filter((one) => covers(area, one.row, one.column));
        return areas.length === 0 ? null : areasObject(areas.map((one) => addressOf(sheet, one)));
      },
      GetSpillParentOrNullObject: () => spillRange(book, sheet, sheet.spillParent(area.row, area.column)),
      GetUsedRangeOrNullObject: (valuesOnly: boolean) => {
        if (!valuesOnly) throw unmodelled("a used range that counts formats");
        const used = sheet.used(area);
        return used === undefined ? null : rangeObject(book, sheet, used);
      },
      GetSpecialCellsOrNullObject: (type: string) => {
        if (type !== "DataValidations") throw unmodelled(`special cells of type ${type}`);
        // Over all cells of a sheet this takes Excel for Windows minutes (OfficeDev/office-js issue 4245).
        if (area.rows * area.columns > MOST_SEARCHED) throw unmodelled("special cells of a whole sheet");
        const found = cellsWithRules(sheet, area);
        return found.length === 0 ? null : areasObject(found.map((one) => addressOf(sheet, one)));
      },
      Insert: (shift: string) => {
        if (shift !== "Down" || area.columns !== WHOLE_SHEET.columns) throw unmodelled("putting in anything but whole rows");
        putRowsIn(book, sheet, area.row, area.rows);
        return rangeObject(book, sheet, area);
      },
      Clear: (what: string) => {
        if (what !== "Formats") throw unmodelled(`clearing ${what}`);
        for (let row = area.row; row < area.row + area.rows; row++)
          for (let column = area.column; column < area.column + area.columns; column++) sheet.looks.delete(cellAt(row, column));
      },
      Select: () => book.select(sheet, rangeOf(area)),
    },
  };
}

/** Areas of which the client is told nothing but where they stand. */
const areasObject = (addresses: readonly string[]): HostObject => ({
  kind: "RangeAreas",
  reads: { Address: () => addresses.join(",") },
  parts: {
    Areas: () => ({
      kind: "RangeCollection",
      items: () => addresses.map((address) => ({ kind: "Range", reads: { Address: () => address }, methods: { _KeepReference: () => undefined } })),
    }),
  },
  methods: { _KeepReference: () => undefined },
});

/** The same range under the reference that the client asked to keep. */
const rangeObjectKept = (reference: () => string, book: BookState, sheet: SheetState, area: CellArea): HostObject => ({
  ...rangeObject(book, sheet, area),
  identity: () => ({ _ReferenceId: reference() }),
});

/** Some hosts give the formula of the first cell for every cell it fills; a test switches that on. */
function ghost(book: BookState, sheet: SheetState, row: number, column: number): string | undefined {
  const anchor = book.ghostFormulas ? cellArea(sheet.spilled.get(cellAt(row, column))?.anchor ?? "") : undefined;
  return anchor && sheet.formula(anchor.row, anchor.column);
}

function spillRange(book: BookState, sheet: SheetState, range: string | undefined): HostObject | null {
  const area = range === undefined ? undefined : cellArea(range);
  return area === undefined ? null : rangeObject(book, sheet, area);
}

function bounding(book: BookState, sheet: SheetState, one: CellArea, other: HostObject): HostObject {
  const address = String(other.reads?.Address?.());
  const area = cellArea(address.slice(address.lastIndexOf("!") + 1));
  if (area === undefined) throw badArgument(address);
  const row = Math.min(one.row, area.row);
  const column = Math.min(one.column, area.column);
  const rows = Math.max(one.row + one.rows, area.row + area.rows) - row;
  return rangeObject(book, sheet, { row, column, rows, columns: Math.max(one.column + one.columns, area.column + area.columns) - column });
}

function checkSize(area: CellArea, rows: number, columns: number): void {
  if (rows !== area.rows || columns !== area.columns) throw badArgument("the number of rows or columns in the input array doesn't match the range");
}

/** true, false, or null when cells differ. */
const allOrMixed = (flags: readonly boolean[]): boolean | null => (flags.every(Boolean) ? true : flags.some(Boolean) ? null : false);

const PLAIN_NAME = /^[A-Za-z_]\w*$/;
const addressOf = (sheet: SheetState, area: CellArea): string =>
  `${PLAIN_NAME.test(sheet.name) ? sheet.name : `'${sheet.name.replaceAll("'", "''")}'`}!${rangeOf(area)}`;
