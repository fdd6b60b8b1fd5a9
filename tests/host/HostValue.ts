import { unmodelled } from "./HostError";

export class ErrorValue {
  constructor(readonly code: string) {}
}

/** What a cell can hold; null is blank. */
export type HostValue = number | string | boolean | ErrorValue | null;

export const valueType = (value: HostValue): string => {
  if (value === null) return "Empty";
  if (value instanceof ErrorValue) return "Error";
  return typeof value === "number" ? "Double" : typeof value === "boolean" ? "Boolean" : "String";
};

/** As the wire carries it: "" for a blank cell, the code for an error. */
export const wireValue = (value: HostValue): number | string | boolean => (value === null ? "" : value instanceof ErrorValue ? value.code : value);

const DECIMALS = /^\+?0(?:\.(0*)(#*))?(%)?(?:;.*)?$/;
const GENERAL = ["General", "@"];
const HUNDRED = 100;
const DAY_MS = 86_400_000;
/** Day 0 of the sheet's count of days, after 1900-02-28. */
const DAY_0 = Date.UTC(1899, 11, 30);

/** As the sheet shows it. Only General, text, decimals, percentages, a clock time and a date are modelled for numbers. */
export function shownText(value: HostValue, format: string): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return String(wireValue(value));
  if (GENERAL.includes(format)) return String(value);
  const moment = new Date(DAY_0 + Math.round(value * DAY_MS)).toISOString();
  if (format === "hh:mm") return moment.slice(11, 16);
  if (format === "yyyy-mm-dd") return moment.slice(0, 10);
  const [whole, always = "", ifAny = "", percent] = DECIMALS.exec(format) ?? [];
  if (whole === undefined) throw unmodelled(`the number format ${format}`);
  const digits = (percent ? value * HUNDRED : value).toFixed(always.length + ifAny.length);
  const shown = ifAny === "" ? digits : digits.replace(new RegExp(`0{0,${ifAny.length}}$`), "").replace(/\.$/, "");
  return percent ? `${shown}%` : shown;
}
