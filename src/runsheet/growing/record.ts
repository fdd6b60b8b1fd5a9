import type { PlannedCell } from "../../workbook/SheetPlan";
import type { RangeReading } from "../../workbook/Workbook";
import { checkOptions } from "../options/checkOptions";
import type { CheckedOptions, RunSheetOptions } from "../options/RunSheetOptions";
import { sheetWords } from "../words/sheetWords";

/** A growth that was begun: what the sheet was made with, and what it is to become. */
export interface UnderWay {
  readonly from: CheckedOptions;
  readonly to: CheckedOptions;
}

const { madeWith } = sheetWords.workings;

/** The record of a sheet whose growth is under way: what it was, by which it is still read, and what it becomes. */
export const recordUnderWay = ({ from, to }: UnderWay): string => `${madeWith}${JSON.stringify({ ...from, becoming: to })}`;

/** Whether a growth was begun on the sheet and not ended. */
export function underWay(reading: RangeReading): UnderWay | undefined {
  const { becoming, ...from } = recordIn(reading) ?? {};
  return becoming === undefined ? undefined : asChecked(() => ({ from: checkOptions(from as RunSheetOptions), to: checkOptions(becoming) }));
}

/** What the sheet was made with; rows put in by hand are not counted. */
export function recorded(reading: RangeReading): CheckedOptions | undefined {
  const options = recordIn(reading);
  return options && asChecked(() => checkOptions(options as RunSheetOptions));
}

function recordIn({ rows }: RangeReading): (Partial<RunSheetOptions> & { readonly becoming?: RunSheetOptions }) | undefined {
  const held = rows[0]?.find(({ value }) => isRecord(value === null ? {} : { content: value }))?.value;
  return typeof held === "string" ? asChecked(() => JSON.parse(held.slice(madeWith.length)) as RunSheetOptions) : undefined;
}

/** Undefined where the record was changed so that no sheet comes of it. */
function asChecked<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}

/** The cell, or what it holds, that says what a sheet was made with. */
export const isRecord = ({ content }: Pick<PlannedCell, "content">): boolean => typeof content === "string" && content.startsWith(madeWith);
