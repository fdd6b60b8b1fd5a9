import type { CellArea } from "../../../workbook/cellArea";

/** A formula as it stands in a row far down, so that what is made of it there can be moved to any row that it was filled down to. */
export interface RelativeFormula {
  readonly formula: string;
  /** The row, counted from 1. */
  readonly row: number;
}

// Rows hardly anybody uses, within those of a sheet; a formula that refers to one of them itself is not moved.
const FIRST = 980_001;
const HERE = 990_000;
const LAST = 999_999;

const REFERENCE = /(?<![\w.$])(\$?[A-Z]{1,3})(\d+)(?![\w.(!])/gi;
const FAR_DOWN = /(?<![\w.])(\$?[A-Z]{1,3})(9[89]\d{4})(?!\d)/g;
// Quoted names, texts with digits, lists, tables, spills, sheets from one to another, and names with a backslash or letters of other alphabets may hold
// what looks like a cell.
const UNCLEAR = /['[\]{}#@\\]|:\w+!|[^\n\r\t -~][A-Z]{1,3}\d|\d[^\n\r\t -~]/i;
const isUnclear = (formula: string): boolean =>
  UNCLEAR.test(formula) || (formula.includes('"') && formula.split('"').some((text, index) => index % 2 === 1 && /\d/.test(text)));

/** The formula of a cell with its rows counted from the cell's own; undefined where what looks like a cell may be none. */
export function relativeFormula(formula: string, row: number): RelativeFormula | undefined {
  if (isUnclear(formula)) return undefined;
  let isFar = false;
  const moved = formula.replace(REFERENCE, (whole, column: string, number: string) => {
    const offset = Number(number) - row;
    // No cell's row begins with 0.
    if (number.startsWith("0") || Number(number) >= FIRST || Math.abs(offset) > LAST - HERE) isFar = true;
    return isFar ? whole : `${column.toUpperCase()}${HERE + offset}`;
  });
  return isFar ? undefined : { formula: moved, row: HERE };
}

/** What was made of a relative formula, for any row: the text is looked through once. */
export function textInRows(text: string): (row: number) => string {
  const [texts, offsets]: [string[], number[]] = [[], []];
  let from = 0;
  for (const found of text.matchAll(FAR_DOWN)) {
    const [whole, column = "", number] = found;
    texts.push(`${text.slice(from, found.index)}${column}`);
    offsets.push(Number(number) - HERE);
    from = found.index + whole.length;
  }
  const rest = text.slice(from);
  return (row) => {
    let written = "";
    for (let index = 0; index < texts.length; index++) written += `${texts[index]}${(offsets[index] as number) + row}`;
    return written + rest;
  };
}

const isRelative = (index: number): boolean => index + 1 >= FIRST && index + 1 <= LAST;

/** Cells that a relative formula refers to, as it refers to them from a row. */
export function areaInRow({ row: first, rows, column, columns }: CellArea, row: number): CellArea {
  const from = isRelative(first) ? first - HERE + row : first;
  const last = first + rows - 1;
  return { row: from, column, rows: (isRelative(last) ? last - HERE + row : last) - from + 1, columns };
}
