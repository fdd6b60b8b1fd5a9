import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import { plainNumber } from "../../problems/quoted";
import { valueAt, type Cells } from "./Cells";

type Operation = (...values: readonly CellValue[]) => CellValue;

const NOT_A_NUMBER = new CellError("#VALUE!");
/** Where one block of cells reaches further than the other. */
export const NO_SUCH_CELL = new CellError("#N/A");
const PERCENT = 100;

/** The operators worked out here, as a spreadsheet works them: blank counts as 0, errors pass through. */
export const BINARY: Readonly<Record<string, Operation>> = {
  "+": arithmetic((a, b) => a + b),
  "-": arithmetic((a, b) => a - b),
  "*": arithmetic((a, b) => a * b),
  "/": arithmetic((a, b) => (b === 0 ? new CellError("#DIV/0!") : a / b)),
  "^": arithmetic((a, b) => (a === 0 && b === 0 ? new CellError("#NUM!") : a ** b)),
  "&": (a, b) => firstError(a, b) ?? textOf(a) + textOf(b),
};

export const UNARY: Readonly<Record<string, Operation>> = {
  "-": arithmetic((a) => -a),
  "+": (a) => a ?? BLANK,
  "%": arithmetic((a) => a / PERCENT),
};

/** Applies an operation cell by cell; a single cell, row or column serves every row or column of the other. */
export function cellByCell(operation: Operation, operands: readonly Cells[]): Cells {
  const rows = Math.max(...operands.map((cells) => cells.length));
  const columns = Math.max(...operands.map((cells) => cells[0]?.length ?? 1));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => operation(...operands.map((cells) => valueAt(cells, { row, column }) ?? NO_SUCH_CELL))),
  );
}

function arithmetic(compute: (a: number, b: number) => number | CellError): Operation {
  return (...values) => {
    const error = firstError(...values);
    if (error !== undefined) return error;
    const [a, b = 0] = values.map(numberOf);
    if (a === undefined || Number.isNaN(a) || Number.isNaN(b)) return NOT_A_NUMBER;
    const answer = compute(a, b);
    return answer instanceof CellError || Number.isFinite(answer) ? answer : new CellError("#NUM!");
  };
}

const firstError = (...values: readonly (CellValue | undefined)[]): CellError | undefined => values.find((value) => value instanceof CellError);

/** NaN where a spreadsheet would refuse to calculate. */
function numberOf(value: CellValue): number {
  if (value === BLANK) return 0;
  if (typeof value === "string") return value.trim() === "" ? NaN : Number(value);
  return typeof value === "number" || typeof value === "boolean" ? Number(value) : NaN;
}

function textOf(value: CellValue | undefined): string {
  if (typeof value === "number") return plainNumber(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "string" ? value : "";
}
