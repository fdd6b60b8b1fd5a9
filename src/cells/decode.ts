import { BLANK, CellError, type CellValue } from "../inputs/CellValue";

/** What of a host's object can be looked at; any of it may be missing. */
interface RichValue {
  readonly type?: unknown;
  readonly code?: unknown;
  readonly basicValue?: unknown;
}

/**
 * One raw argument or array element, with the host's wrapping taken off: null is blank, rich values give their
 * basic value, an error object gives its code.
 */
export function decode(raw: unknown): CellValue {
  if (raw === null || raw === undefined || raw === "") return BLANK;
  if (typeof raw === "number" || typeof raw === "string" || typeof raw === "boolean") return raw;
  if (typeof raw !== "object") return BLANK;
  const rich: RichValue = raw;
  const code = rich.code ?? rich.basicValue;
  if ((rich.type === "Error" || rich.code !== undefined) && typeof code === "string") return new CellError(code);
  return decode(rich.basicValue);
}
