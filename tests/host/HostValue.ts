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

const DECIMALS = /^0(?:\.(0+)(#*))?(%)?$/;
const GENERAL = ["General", "@"];
const HUNDRED = 100;

/** As the sheet shows it. Only General, text, decimals and percentages are modelled for numbers. */
export function shownText(value: HostValue, format: string): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return String(wireValue(value));
  if (GENERAL.includes(format)) return String(value);
  const [whole, decimals = "", optional = "", percent] = DECIMALS.exec(format) ?? [];
  if (whole === undefined) throw unmodelled(`the number format ${format}`);
  const every = (percent ? value * HUNDRED : value).toFixed(decimals.length + optional.length);
  // Decimals that a format leaves open are shown as far as they are not 0.
  const open = every.slice(every.length - optional.length).replace(/0+$/, "");
  return `${every.slice(0, every.length - optional.length)}${open}${percent ?? ""}`;
}
