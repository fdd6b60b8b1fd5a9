import { badArgument } from "./HostError";
import { ErrorValue, type HostValue } from "./HostValue";
import { isErrorCode } from "../../src/workbook/excel/reading/errorCodes";

/** What becomes of something written into a cell: Excel reads it as if it had been typed. */
export interface Entered {
  readonly formula?: string;
  readonly value: HostValue;
  /** The number format that such an entry gives a General cell. */
  readonly format?: string;
}

const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const PERCENTAGE = /^[+-]?\d+(\.\d*)?%$/;
const DATE = /^\d{1,4}[/-]\d{1,2}([/-]\d{1,4})?$|^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[ -]\d{1,4}$/i;
// Which day does not matter here, only that text written bare has become a number.
const SOME_DAY = 45_000;
const HUNDRED = 100;

export function entered(written: number | string | boolean): Entered {
  if (typeof written !== "string") return { value: written };
  if (written === "") return { value: null };
  if (written.startsWith("'")) return { value: written.slice(1) };
  if (NUMBER.test(written)) return { value: Number(written) };
  if (PERCENTAGE.test(written)) return { value: Number(written.slice(0, -1)) / HUNDRED, format: "0%" };
  if (DATE.test(written)) return { value: SOME_DAY, format: "d-mmm" };
  if (/^(true|false)$/i.test(written)) return { value: written.toLowerCase() === "true" };
  if (isErrorCode(written)) return { value: new ErrorValue(written) };
  if (/^[=+\-@]./.test(written)) return { formula: formula(written), value: null };
  return { value: written };
}

/** A formula whose brackets or quotation marks are not closed is refused. */
function formula(written: string): string {
  const outsideText = written.replace(/"[^"]*"/g, "");
  const open = outsideText.split("(").length;
  if (outsideText.includes('"') || open !== outsideText.split(")").length) throw badArgument(written);
  return written.startsWith("=") ? written : `=${written}`;
}
