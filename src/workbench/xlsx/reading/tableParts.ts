import { parseStructRef, stringifyA1Ref, tokenize, tokenTypes } from "@borgar/fx";
import { covers } from "../../../workbook/cellArea";
import type { Table } from "../../../xlsx/parts/tablePart";

export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/**
 * A cell formula with the cells in place of what it names in tables; undefined where it names something that is not there.
 * @param formula as typed, with "="
 */
export function withoutTables(formula: string, at: Place, tables: readonly Table[]): string | undefined {
  const pieces = tokenize(formula).map(({ type, value }) => {
    if (type === tokenTypes.REF_STRUCT) return cellsOf(value, at, tables);
    const whole = type === tokenTypes.REF_NAMED && tables.some(({ name }) => isSame(name, value));
    return whole ? cellsOf(`${value}[]`, at, tables) : value;
  });
  return pieces.every((piece) => piece !== undefined) ? pieces.join("") : undefined;
}

const THIS_ROW = "this row";

function cellsOf(reference: string, at: Place, tables: readonly Table[]): string | undefined {
  const asked = parseStructRef(reference);
  if (asked === undefined || (asked.context ?? []).length > 0) return undefined;
  const isHere = ({ sheet, area }: Table): boolean => sheet === at.sheet && covers(area, at.row, at.column);
  const table = tables.find(({ name }) => isSame(name, asked.table ?? "")) ?? (asked.table ? undefined : tables.find(isHere));
  if (table === undefined) return undefined;
  const rows = rowsOf(table, asked.sections ?? [], at);
  const wanted = (asked.columns ?? []).map((name) => table.columns.findIndex((column) => isSame(column, name)));
  if (rows === undefined || wanted.includes(-1)) return undefined;
  const [first = 0, last = wanted.length === 0 ? table.columns.length - 1 : first] = wanted;
  const range = {
    ...{ top: rows.top, bottom: rows.bottom, left: table.area.column + Math.min(first, last), right: table.area.column + Math.max(first, last) },
    ...{ $top: true, $bottom: true, $left: true, $right: true },
  };
  return stringifyA1Ref({ context: table.sheet === at.sheet ? [] : [table.sheet], range });
}

/** The first and last row of the parts of a table that are asked for; its data where none are. */
function rowsOf({ area, headerRows, totalsRows }: Table, sections: readonly string[], at: Place): { top: number; bottom: number } | undefined {
  const end = area.row + area.rows - 1;
  const parts: Readonly<Record<string, readonly [number, number]>> = {
    all: [area.row, end],
    headers: [area.row, area.row + headerRows - 1],
    data: [area.row + headerRows, end - totalsRows],
    totals: [end - totalsRows + 1, end],
    [THIS_ROW]: [at.row, at.row],
  };
  const asked = (sections.length === 0 ? ["data"] : sections).map((section) => parts[section.toLowerCase()]);
  if (sections.includes(THIS_ROW) && !covers(area, at.row, area.column)) return undefined;
  if (!asked.every((part) => part !== undefined && part[0] <= part[1])) return undefined;
  const known = asked as (readonly [number, number])[];
  return { top: Math.min(...known.map(([top]) => top)), bottom: Math.max(...known.map(([, bottom]) => bottom)) };
}

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
