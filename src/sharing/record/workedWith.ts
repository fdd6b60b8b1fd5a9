import { tokenize, tokenTypes } from "@borgar/fx";
import { plainNumber, shortened } from "../../problems/quoted";
import { andMore, blanks } from "../../problems/sharing/recordWords";
import { cellArea, cellsOfArea } from "../../workbook/cellArea";
import type { CellContent, RangeReading } from "../../workbook/Workbook";

export type ValueAt = (cell: string) => CellContent;

/** What the cells of a sheet hold; an empty text counts as blank. */
export function valuesOf(rows: RangeReading["rows"]): ValueAt {
  const held = new Map<string, CellContent>();
  for (const row of rows) for (const { cell, value } of row) if (value !== "" && value !== null) held.set(cell, value);
  return (cell) => held.get(cell) ?? null;
}

// As many as a line or two hold.
const MOST_INPUTS = 16;
const MOST_OF_A_RANGE = 12;
const MOST_CELLS = 5000;

/** The ranges of its own sheet that a formula refers to, without dollar signs. */
export const rangesIn = (formula: string): readonly string[] =>
  tokenize(formula).flatMap(({ type, value }) => (type === tokenTypes.REF_RANGE && !value.includes("!") ? [value.replaceAll("$", "").toUpperCase()] : [])); // prettier-ignore

/** The numbers and texts that went into a formula, by the ranges that it refers to: "C12 = 262.85, C13:C19 = 258.92, 256.88 and 5 blank". */
export function workedWith(ranges: readonly string[], valueAt: ValueAt): string {
  const inputs = [...new Set(ranges)].flatMap((range) => {
    const area = cellArea(range);
    return area === undefined || area.rows * area.columns > MOST_CELLS ? [] : [`${range} ${held(cellsOfArea(area).flat().map(valueAt))}`];
  });
  return [...inputs.slice(0, MOST_INPUTS), ...(inputs.length > MOST_INPUTS ? [andMore(inputs.length - MOST_INPUTS)] : [])].join("; ");
}

function held(values: readonly CellContent[]): string {
  const filled = values.filter((value) => value !== null);
  if (filled.length === 0) return values.length === 1 ? "blank" : blanks(values.length);
  const more = filled.length - MOST_OF_A_RANGE;
  const empty = values.length - filled.length;
  return `= ${[...filled.slice(0, MOST_OF_A_RANGE).map(inWords), ...(more > 0 ? [andMore(more)] : []), ...(empty > 0 ? [blanks(empty)] : [])].join(", ")}`;
}

/** A value as a line of the record holds it. */
export function inWords(value: CellContent): string {
  if (typeof value === "number") return plainNumber(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value === null ? "blank" : `"${shortened(value)}"`;
}
