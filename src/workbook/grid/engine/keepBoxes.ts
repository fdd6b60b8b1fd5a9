import { CellValueType, DataValidationType, getNumfmtParseValueFilter, type ICellData, type Injector, type Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { SheetDataValidationModel } from "@univerjs/sheets-data-validation";

// Before the engine's own reading of number formats, which has none.
const FIRST = 100;

// How clock boxes show their times.
const CLOCK_PATTERN = "hh:mm";
// The end of a time whose minutes have one figure, with a date before it or without.
const ONE_FIGURE = /(?:^|\s)\d{1,2}\s?:\s?\d(?:\s?[ap]\.?m\.?)?$/i;

/**
 * Mends three things of engine 0.25.1 for what is typed into a box with an entry rule. A date or percentage typed there, by a slip or not, changed
 * the format of the box, so that the next number was shown as a date or a percentage; the first letters of a word of a list were refused as
 * no word of it; and 9:3 typed for 9:30 was taken as 9:03, where it stays a text now, which the rule of a clock box refuses.
 */
export function keepBoxes(injector: Injector): void {
  const rules = injector.get(SheetDataValidationModel);
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (typed, { unitId, subUnitId, row, col, worksheet }, next) => {
      const rule = rules.getRuleByLocation(unitId, subUnitId, row, col);
      const text = typed ? plainText(typed) : undefined;
      if (rule === undefined || rule === null || !typed || text === undefined) return next(typed);
      if (rule.type === DataValidationType.LIST) return next({ ...typed, v: wordMeant(text, rule.formula1 ?? "") });
      const pattern = worksheet.getComposedCellStyle(row, col).n?.pattern;
      if (rule.type === DataValidationType.CUSTOM && pattern === CLOCK_PATTERN && ONE_FIGURE.test(text.trim()))
        return { ...typed, t: CellValueType.STRING };
      const hasOwnFormat = rule.type === DataValidationType.DECIMAL || Boolean(pattern);
      const isOfNumbers = rule.type === DataValidationType.DECIMAL || rule.type === DataValidationType.CUSTOM;
      return next(isOfNumbers && hasOwnFormat ? withoutFormat(typed, text) : typed);
    },
  });
}

/** What was typed, where it is neither a formula nor kept as text. */
const plainText = ({ f, p, v, t }: ICellData): string | undefined =>
  f || p || t === CellValueType.FORCE_STRING || typeof v !== "string" ? undefined : v;

/** The number of a text that stands for one and brings a format along: 9:30, 21 Nov, 50 %. */
function withoutFormat(typed: ICellData, text: string): Nullable<ICellData> {
  const read = getNumfmtParseValueFilter(text);
  return read?.z ? { ...typed, v: Number(read.v), t: CellValueType.NUMBER } : typed;
}

/** The word of a list that a text is, or begins alone, in whatever case; else the text as it was typed. */
function wordMeant(text: string, list: string): string {
  if (list.startsWith("=") || text.trim() === "") return text;
  const words = list.split(",");
  const low = text.trim().toLowerCase();
  const same = words.find((word) => word.toLowerCase() === low);
  const [first, ...others] = words.filter((word) => word.toLowerCase().startsWith(low));
  return same ?? (first !== undefined && others.length === 0 ? first : text);
}
