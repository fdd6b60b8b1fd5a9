import { CellProblem } from "../../cells/CellProblem";

/** What a cell holds; null is a blank cell. */
export type Plain = number | string | boolean | null | CellProblem;
export type Table = readonly (readonly Plain[])[];

export const isTable = (value: Plain | Table): value is Table => Array.isArray(value);
export const isError = (value: Plain | undefined): value is CellProblem => value instanceof CellProblem;
export const error = (code: "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!"): CellProblem => new CellProblem(code, "");

/** A number in a text has up to 15 figures. */
export const textOf = (value: Plain): string =>
  typeof value === "number" ? String(Number(value.toPrecision(15))) : value === null ? "" : String(value);

export const number = (value: Plain): number | CellProblem => (typeof value === "string" || isError(value) ? error("#VALUE!") : Number(value));

/** Cell by cell; one value serves every cell. */
export function elementwise(one: Plain | Table, other: Plain | Table, of: (one: Plain, other: Plain) => Plain): Plain | Table {
  if (!isTable(one) && !isTable(other)) return of(one, other);
  const [first, second] = [one, other].map((value) => (row: number, column: number) => (isTable(value) ? (value[row]?.[column] ?? null) : value));
  const shape = isTable(one) ? one : (other as Table);
  return shape.map((row, index) => row.map((_, column) => of(first?.(index, column) ?? null, second?.(index, column) ?? null)));
}

/** Numbers come before texts, texts before TRUE and FALSE; a blank is 0 or "" as needed. */
export function compared(one: Plain, other: Plain): number {
  const [left, right] = [one ?? (typeof other === "string" ? "" : 0), other ?? (typeof one === "string" ? "" : 0)];
  const rank = (value: Plain): number => ["number", "string", "boolean"].indexOf(typeof value);
  if (rank(left) !== rank(right)) return rank(left) - rank(right);
  const [low, high] = [left, right].map((value) => (typeof value === "string" ? value.toLowerCase() : Number(value))) as [number, number];
  return low < high ? -1 : low > high ? 1 : 0;
}
