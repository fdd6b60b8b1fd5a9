import { cellAt, COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET } from "../../../workbook/cellArea";
import type { Part } from "../formula/parts";
import { cellsReferred, tableCellsReferred, type Referred } from "../formula/reference";
import { heldValue, textIn, type Held, type Standing } from "./heldValue";

/**
 * What INDIRECT referred to as the workbook was read: cells, or the name that stands for them; undefined where that cannot be told.
 */
export function indirectly([told, isA1]: readonly Part[], standing: Standing): Referred | string | undefined {
  const text = textIn(heldValue(told, standing));
  const isLetters = isA1 === undefined || isA1 === null || isTrue(heldValue(isA1, standing));
  const place = text === undefined || isLetters ? text : byNumbers(text);
  if (place === undefined || place === "") return undefined;
  return cellsReferred(place, standing.place.sheet) ?? tableCellsReferred(place, standing.place) ?? place;
}

const isTrue = (value: Held | undefined): boolean => value === true || (typeof value === "number" && value !== 0);

/** "Tray!$B$4" of "Tray!R4C2"; undefined for what is counted from the cell, or is no single cell. */
function byNumbers(text: string): string | undefined {
  const [, sheet = "", row, column] = /^(.*!)?R(\d+)C(\d+)$/i.exec(text) ?? [];
  return row === undefined || column === undefined ? undefined : `${sheet}${cellAt(Number(row) - 1, Number(column) - 1)}`;
}

/** What OFFSET referred to; undefined where that cannot be told. */
export function offset([from, down, across, rows, columns]: readonly Part[], standing: Standing): Referred | undefined {
  const start = areaShown(from, standing);
  if (start === undefined || start.sheet === undefined || start.lastSheet !== undefined) return undefined;
  const number = (part: Part, otherwise: number): number | undefined => {
    const value = part === undefined || part === null ? otherwise : heldValue(part, standing);
    return typeof value === "number" ? Math.trunc(value) : value === "" ? 0 : undefined;
  };
  const [by, aside, high, wide] = [number(down, 0), number(across, 0), number(rows, start.area.rows), number(columns, start.area.columns)];
  if (by === undefined || aside === undefined || high === undefined || wide === undefined || high === 0 || wide === 0) return undefined;
  // A negative size goes up and to the left.
  const [row, column] = [start.area.row + by + Math.min(0, high + 1), start.area.column + aside + Math.min(0, wide + 1)];
  const area = { row, column, rows: Math.abs(high), columns: Math.abs(wide) };
  const isOnSheet = row >= 0 && column >= 0 && row + area.rows <= ROWS_OF_A_SHEET && column + area.columns <= COLUMNS_OF_A_SHEET;
  return isOnSheet ? { sheet: start.sheet, area, isWhole: false } : undefined;
}

/** The cells of a reference, be it a name or a table's column. */
export function areaShown(part: Part, { tree, place }: Standing): Referred | undefined {
  if (part?.type !== "ReferenceIdentifier") return undefined;
  const text = tree.textOf(part);
  if (part.kind === "table") return tableCellsReferred(text, place);
  return cellsReferred(part.kind === "name" ? (place.nameOf(text, place.sheet) ?? "").replace(/^=/, "") : text, place.sheet);
}
