import { parseA1Ref, parseStructRef } from "@borgar/fx";
import { COLUMNS_OF_A_SHEET, rangeOf, ROWS_OF_A_SHEET, type CellArea } from "../../../workbook/cellArea";
import { quotedSheet } from "../../../workbook/quotedSheet";
import type { Surroundings } from "../reading/Surroundings";

/** The cells that a reference stands for. */
export interface Referred {
  /** The sheet, or undefined for cells of another workbook, which are not ours to look at. */
  readonly sheet: string | undefined;
  /** The last sheet of a reference to several, as in Sheet1:Sheet3!A1. */
  readonly lastSheet?: string;
  readonly area: CellArea;
  /** True for B:C or 3:9. */
  readonly isWhole: boolean;
}

/** The cells of "B7", "$B$7:C12", "'My sheet'!B7", "B:B", "[Book]Sheet1!A1"; undefined for anything else. */
export function cellsReferred(text: string, home: string): Referred | undefined {
  const quoted = sheetInQuotes(text);
  if (quoted !== undefined) {
    const found = cellsReferred(quoted.cells, quoted.sheet);
    return found === undefined || found.sheet !== quoted.sheet ? found : { ...found, sheet: quoted.sheet };
  }
  const parsed = parseA1Ref(text);
  if (parsed === undefined || !("range" in parsed) || parsed.range === undefined) return undefined;
  const scopes = parsed.context ?? [];
  const { top, left, bottom, right } = parsed.range;
  const isWhole = top === null || left === null || bottom === null || right === null;
  const [row, column] = [top ?? 0, left ?? 0];
  const area = {
    row,
    column,
    rows: (bottom ?? ROWS_OF_A_SHEET - 1) - row + 1,
    columns: (right ?? COLUMNS_OF_A_SHEET - 1) - column + 1,
  };
  if (scopes.length > 1 || /^\[?\d+\]$|\.xl\w+$/i.test(scopes[0] ?? "")) return { sheet: undefined, area, isWhole };
  const [first = home, last] = (scopes[0] ?? home).split(":");
  return last === undefined ? { sheet: first, area, isWhole } : { sheet: first, lastSheet: last, area, isWhole };
}

/**
 * A sheet in quotation marks whose name holds brackets: the parser takes what stands in them for a workbook, behind which a sheet's name would
 * have to follow.
 */
function sheetInQuotes(text: string): { readonly sheet: string; readonly cells: string } | undefined {
  const [, name, cells = ""] = /^'((?:[^']|'')*)'!(.+)$/.exec(text) ?? [];
  const sheet = name?.replaceAll("''", "'");
  return sheet === undefined || !sheet.includes("[") || /\][^\]]+$/.test(sheet) ? undefined : { sheet, cells };
}

/** The cells of a table reference, such as Runs[Mass] or [@Mass], in the row of the cell where it says so; undefined where it is not known. */
export function tableCellsReferred(text: string, { sheet, cell, tableOf }: Surroundings): Referred | undefined {
  const parsed = parseStructRef(text);
  const table = parsed === undefined ? undefined : tableOf(parsed.table ?? "");
  if (parsed === undefined || table === undefined) return undefined;
  const rows = rowsOf(parsed.sections ?? [], table, cell);
  const columns = parsed.columns ?? [];
  const places = columns.map((name) =>
    table.columns.findIndex((column) => [name, unescaped(name)].some((one) => column.toLowerCase() === one.toLowerCase())),
  );
  if (rows === undefined || places.includes(-1)) return undefined;
  const [first, last] = places.length === 0 ? [0, table.columns.length - 1] : [Math.min(...places), Math.max(...places)];
  if (rows.isOwn && table.sheet !== sheet) return undefined;
  return {
    sheet: table.sheet,
    area: { row: rows.first, rows: rows.last - rows.first + 1, column: table.area.column + first, columns: last - first + 1 },
    isWhole: false,
  };
}

const unescaped = (column: string): string => column.replace(/'(.)/g, "$1");

interface TableRows {
  readonly first: number;
  readonly last: number;
  readonly isOwn: boolean;
}

function rowsOf(
  sections: readonly string[],
  { area, headingRows, totalsRows }: { readonly area: CellArea; readonly headingRows: number; readonly totalsRows: number },
  cell: string,
): TableRows | undefined {
  const [top, bottom] = [area.row, area.row + area.rows - 1];
  const data = { first: top + headingRows, last: bottom - totalsRows };
  if (sections.includes("this row")) {
    const own = cellsReferred(cell, "")?.area.row ?? -1;
    return own >= data.first && own <= data.last ? { first: own, last: own, isOwn: true } : undefined;
  }
  if (sections.includes("all")) return { first: top, last: bottom, isOwn: false };
  if (sections.length === 0 || sections.includes("data")) {
    return { first: sections.includes("headers") ? top : data.first, last: sections.includes("totals") ? bottom : data.last, isOwn: false };
  }
  if (sections.includes("headers")) return { first: top, last: top + headingRows - 1, isOwn: false };
  return { first: bottom - totalsRows + 1, last: bottom, isOwn: false };
}

/** The text of a reference: 'My sheet'!$B$7 where the sheet is not the one that the formula stands on. */
export function referenceText(area: CellArea, sheet: string | undefined, home: string | undefined): string {
  return sheet === undefined || sheet === home ? rangeOf(area) : `${sheetText(sheet)}!${rangeOf(area)}`;
}

/** A sheet's name before an exclamation mark, in quotation marks where it needs them. */
export const sheetText = (sheet: string): string => (/^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !looksLikeCell(sheet) ? sheet : quotedSheet(sheet));

const looksLikeCell = (name: string): boolean => /^[A-Z]{1,3}\d+$|^R\d*C\d*$|^[RC]$/i.test(name);
