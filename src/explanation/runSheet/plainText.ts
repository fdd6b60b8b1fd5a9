import { inFigures } from "../../functions/inFigures";
import { plainNumber, quoted } from "../../problems/quoted";
import type { BlockCell } from "../../runsheet/blocks/Block";
import { valueText } from "../valueText";
import { isError, type Plain } from "./Plain";

const MINUTES_PER_DAY = 1440;
const MINUTES_PER_HOUR = 60;
// Days from the spreadsheet's first date, 1899-12-30, to 1970-01-01.
const BEFORE_1970 = 25_569;
const MILLISECONDS_PER_DAY = 86_400_000;

/** A value as the pane prints it, in the format of its cell: "32.53 g", "0.7146 (71.46 %)", "9:45", "blank". */
export function plainText(value: Plain, unit: string, planned: BlockCell | undefined): string {
  if (isError(value)) return `shows ${value.code}`;
  if (value === null || value === "") return "blank";
  if (typeof value !== "number") return quoted(value);
  const format = planned?.format ?? "";
  if (format.includes("%") || unit === "fraction") return valueText(value, "fraction");
  if (format === "hh:mm") return clockText(value);
  if (format.includes("yyyy")) return dateText(value);
  return `${inWorking(value)}${unit === "" ? "" : ` ${unit}`}`;
}

/** "9:45" of a time in days, with its date where it has one. */
export function clockText(days: number): string {
  const minutes = Math.round((days - Math.floor(days)) * MINUTES_PER_DAY);
  const time = `${Math.floor(minutes / MINUTES_PER_HOUR) % 24}:${String(minutes % MINUTES_PER_HOUR).padStart(2, "0")}`;
  return days < 1 ? time : `${dateText(days)} ${time}`;
}

const dateText = (days: number): string => new Date((Math.floor(days) - BEFORE_1970) * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);

// What a hand types is no longer than this; a longer number is a computed one.
const LONGEST_TYPED = 10;

/** A number as a line of working puts it in: as typed, or to the figures that working lines have. */
export function inWorking(value: number): string {
  const whole = plainNumber(value);
  return whole.length <= LONGEST_TYPED ? whole : inFigures(value);
}
