import { CellValueType, getNumfmtParseValueFilter, numfmt, type ICellData, type Injector } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";

// After what the boxes and the engine's own reading of number formats make of it, at 0, and before the end of the line, at -1.
const LAST = -0.5;
/** The engine cuts at 16 digits; a double has up to 17. */
const CUT = 1e-14;

/**
 * Mends a defect of engine 0.25.1: of a time or day that is typed it keeps 16 digits, so that every fourth second of a day is not the number that
 * other spreadsheets have for it.
 */
export function keepTimes(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: LAST,
    handler: (written, { origin }, next) => {
      const exact = origin ? timeIn(textOf(origin)) : undefined;
      if (!written || exact === undefined || written.t !== CellValueType.NUMBER || typeof written.v !== "number") return next(written);
      return next(Math.abs(written.v - exact) <= CUT * exact ? { ...written, v: exact } : written);
    },
  });
}

/** As the cell editor hands it over, or as a text alone. */
const textOf = ({ f, p, v }: ICellData): string => (f ? "" : p?.body ? p.body.dataStream.replace(/\r\n$/, "") : typeof v === "string" ? v : "");

function timeIn(text: string): number | undefined {
  const read = text === "" ? null : getNumfmtParseValueFilter(text);
  return read?.z && typeof read.v === "number" && numfmt.getFormatInfo(read.z).isDate ? read.v : undefined;
}
