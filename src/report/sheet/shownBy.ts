import type { CellContent } from "../../workbook/Workbook";

const DAY_ZERO = Date.UTC(1899, 11, 30);
const MINUTES_OF_A_DAY = 1440;
const MILLISECONDS_OF_A_MINUTE = 60_000;
const IN_PERCENT = 100;
// What a spreadsheet shows of a number without a format.
const GENERAL_FIGURES = 11;

/**
 * What a cell shows of its value, by the formats that run sheets use: decimals, percent, hh:mm, yyyy-mm-dd. For readings of files, which
 * hold values and formats but not what is shown.
 */
export function shownBy(value: CellContent, format: string | undefined): string {
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  if (format === undefined || format === "General") return String(Number(value.toPrecision(GENERAL_FIGURES)));
  if (format === "hh:mm" || format === "yyyy-mm-dd") return moment(value, format);
  const [number = "", percent] = [format.replace("%", ""), format.endsWith("%")];
  const [least, most] = decimalsOf(number);
  return `${decimal(percent ? IN_PERCENT * value : value, least, most)}${percent ? "%" : ""}`;
}

function moment(days: number, format: "hh:mm" | "yyyy-mm-dd"): string {
  const minutes = Math.round(days * MINUTES_OF_A_DAY);
  const at = new Date(DAY_ZERO + minutes * MILLISECONDS_OF_A_MINUTE).toISOString();
  return format === "hh:mm" ? at.slice("yyyy-mm-ddT".length, "yyyy-mm-ddThh:mm".length) : at.slice(0, format.length);
}

/** "0.0##": at least one decimal, at most three. */
function decimalsOf(format: string): readonly [least: number, most: number] {
  const decimals = format.split(".")[1] ?? "";
  return [decimals.replaceAll("#", "").length, decimals.length];
}

function decimal(value: number, least: number, most: number): string {
  const full = value.toFixed(most);
  const spare = most - least;
  let end = full.length;
  while (end > full.length - spare && full[end - 1] === "0") end--;
  // A point that nothing follows stays, as in a spreadsheet's "0.##", only where a decimal is always shown; here it goes.
  return full.slice(0, full[end - 1] === "." ? end - 1 : end);
}
