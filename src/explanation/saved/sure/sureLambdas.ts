import { ROWS_OF_A_SHEET } from "../../../workbook/cellArea";
import { BLANK } from "../../../inputs/CellValue";
import { oneCell, valueAt, type Cells, onlyValue } from "../../formula/Cells";
import { each } from "../../formula/workedOut";
import type { Certain } from "./certain";

type Apply = (...given: readonly Cells[]) => Certain<Cells>;

const columnsOf = (cells: Cells): readonly Cells[] => (cells[0] ?? []).map((_, column) => cells.map((row) => [row[column] ?? BLANK]));
const places = (rows: number, columns: number): readonly (readonly [number, number])[][] =>
  Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column): [number, number] => [row, column]));

/** Step by step from a first value on, over every cell of an array, row by row. */
function inTurn([first, array, ...further]: readonly Cells[], apply: Apply): Certain<readonly Cells[]> {
  if (first === undefined || array === undefined || further.length > 0) return undefined;
  let last: Cells = first;
  return each(array.flat(), (value) => {
    const next = apply(last, oneCell(value));
    if (next !== undefined) last = next;
    return next;
  });
}

/** Functions that call what they are given behind their arrays. */
export const LAMBDA_HELPERS: Readonly<Record<string, (arrays: readonly Cells[], apply: Apply) => Certain<Cells>>> = {
  MAP: (arrays, apply) => {
    const [first] = arrays;
    const isAlike = arrays.every((cells) => cells.length === first?.length && cells[0]?.length === first[0]?.length);
    if (first === undefined || !isAlike) return undefined;
    return each(places(first.length, first[0]?.length ?? 0), (line) =>
      each(line, ([row, column]) => onlyValue(apply(...arrays.map((cells) => oneCell(valueAt(cells, { row, column }) ?? BLANK))))),
    );
  },
  BYROW: ([array, ...further], apply) => {
    if (array === undefined || further.length > 0) return undefined;
    const given = each(array, (row) => onlyValue(apply([row])));
    return given?.map((value) => [value]);
  },
  BYCOL: ([array, ...further], apply) => {
    const given = array === undefined || further.length > 0 ? undefined : each(columnsOf(array), (column) => onlyValue(apply(column)));
    return given && [given];
  },
  REDUCE: (given, apply) => inTurn(given, apply)?.at(-1),
  SCAN: (given, apply) => {
    const [, array] = given;
    const values = each(inTurn(given, apply) ?? [undefined], onlyValue);
    const columns = array?.[0]?.length ?? 1;
    return values && array?.map((_, row) => values.slice(row * columns, (row + 1) * columns));
  },
  MAKEARRAY: ([down, across, ...further], apply) => {
    const [rows, columns] = [onlyValue(down), onlyValue(across)];
    if (typeof rows !== "number" || typeof columns !== "number" || further.length > 0) return undefined;
    if (!(rows >= 1 && columns >= 1 && rows * columns <= ROWS_OF_A_SHEET)) return undefined;
    return each(places(Math.trunc(rows), Math.trunc(columns)), (line) =>
      each(line, ([row, column]) => onlyValue(apply(oneCell(row + 1), oneCell(column + 1)))),
    );
  },
};
