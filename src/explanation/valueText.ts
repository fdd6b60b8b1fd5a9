import { inFigures } from "../functions/inFigures";
import { BLANK, CellError, type CellValue } from "../inputs/CellValue";
import { plainNumber, quoted } from "../problems/quoted";
import type { Cells } from "./formula/Cells";

const PERCENT = 100;
// Past what a bench balance resolves in ten grams; the fraction before it has more.
const PERCENT_DIGITS = 4;
// A column is shown by its first values and its last; the sheet itself shows the rest.
const VALUES_SHOWN = 4;

/** One value as the pane prints it: "35 g", "0.35 (35 %)", "blank". */
export function valueText(value: CellValue, unit: string): string {
  if (value === BLANK || value === "") return "blank";
  if (value instanceof CellError) return `shows ${value.code}`;
  if (typeof value !== "number") return quoted(value);
  if (unit === "fraction") return `${inFigures(value)} (${plainNumber(value * PERCENT, PERCENT_DIGITS)} %)`;
  return unit === "" ? inFigures(value) : `${inFigures(value)} ${unit}`;
}

/** A whole column as the pane prints it: "12 filled, 2 blank: 35, 33.1, 32.4 … 31.2 g". */
export function columnText(cells: Cells, unit: string): string {
  const values = cells.flat();
  const bare = (value: CellValue): string => (typeof value === "number" ? inFigures(value) : valueText(value, ""));
  const filled = values.filter((value) => value !== BLANK && value !== "");
  if (filled.length === 0) return `${values.length} cells, all blank`;
  const first = filled
    .slice(0, filled.length > VALUES_SHOWN ? VALUES_SHOWN - 1 : VALUES_SHOWN)
    .map(bare)
    .join(", ");
  const last = filled.length > VALUES_SHOWN ? ` … ${filled.slice(-1).map(bare).join("")}` : "";
  const blanks = values.length > filled.length ? `, ${values.length - filled.length} blank` : "";
  return `${filled.length} filled${blanks}: ${first}${last}${unit === "" ? "" : ` ${unit}`}`;
}
