import type { RangeReading } from "../workbook/Workbook";
import { circularFormulas } from "./plain/change/circularFormulas";
import { FilledDownFormulas } from "./plain/FilledDownFormulas";
import type { PlainReading } from "./plain/reading/PlainReading";
import { namesOf, ReadSheets } from "./plain/reading/ReadSheets";
import { WorkingsSheet } from "./plain/WorkingsSheet";

/** A cell, and its sheet. */
export interface CellInCircle {
  readonly sheet: string;
  readonly cell: string;
}

/**
 * Formula cells that are calculated from themselves, at whatever distance. Spreadsheets show 0 for them, or whatever came of it last, and no
 * error. A branch that is not taken counts like one that is.
 */
export function circles(sheets: readonly RangeReading[], around: Omit<PlainReading, "sheets"> = {}): readonly CellInCircle[] {
  const read = new ReadSheets({ sheets, ...around });
  const formulas = new FilledDownFormulas(read, {}, new WorkingsSheet(""));
  const nameOf = namesOf(around.names ?? []);
  const sources = read.formulas.map((formula) => formulas.sourcesOf(formula, nameOf));
  const found = circularFormulas(read, sources).flat().sort((one, other) => one.id - other.id); // prettier-ignore
  return found.map(({ sheet, reading: { cell } }) => ({ sheet, cell }));
}
