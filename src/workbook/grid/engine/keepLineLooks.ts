import { CellValueType, getNumfmtParseValueFilter, isTextFormat, type ICellData, type Injector, type IStyleData } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { lineLook, overLine } from "../reading/lineLook";

// Before boxes, and before the engine's own reading of number formats.
const FIRST = 150;

/**
 * Gives what is typed into a cell without a look of its own that of its row, or else its column, number format and all: engine 0.25.1 draws such a look
 * and does not heed it, so that 008 in a column of texts became 8, and a date or percentage a format of its own.
 */
export function keepLineLooks(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (typed, { row, col, worksheet }, next) => {
      const line = lineLook(worksheet, row, col);
      if (!typed || line === undefined || !holdsAnything(typed)) return next(typed);
      const own = worksheet.getCellRaw(row, col)?.s;
      // Set anew, a look would lose what it says is blank.
      if (own) return next(typed.s === own ? withoutLook(typed) : typed);
      const s = overLine(typeof typed.s === "object" ? typed.s : undefined, line);
      const text = typed.f || typed.v;
      if (isTextFormat(pattern(line)) && !typed.p) return { ...typed, f: null, si: null, v: String(text), t: CellValueType.STRING, s };
      const read =
        pattern(line) === "" || typeof typed.v !== "string" || typed.t === CellValueType.FORCE_STRING ? null : getNumfmtParseValueFilter(typed.v);
      return next(read?.z ? { ...typed, s, v: Number(read.v), t: CellValueType.NUMBER } : { ...typed, s });
    },
  });
}

function withoutLook(typed: ICellData): ICellData {
  const others = { ...typed };
  delete others.s;
  return others;
}

const pattern = ({ n }: IStyleData): string => n?.pattern ?? "";

const holdsAnything = ({ f, p, v }: ICellData): boolean => Boolean(f) || Boolean(p) || (v !== undefined && v !== null && v !== "");
