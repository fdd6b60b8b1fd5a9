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
export function underWay({ rows }: RangeReading): UnderWay | undefined {
  const held = rows[0]?.find(({ value }) => typeof value === "string" && value.startsWith(madeWith))?.value;
  if (typeof held !== "string") return undefined;
  try {
    const { becoming, ...from } = JSON.parse(held.slice(madeWith.length)) as RunSheetOptions & { readonly becoming?: RunSheetOptions };
    return becoming === undefined ? undefined : { from: checkOptions(from), to: checkOptions(becoming) };
  } catch {
    return undefined;
  }
}

/** The cell, or what it holds, that says what a sheet was made with. */
export const isRecord = ({ content }: Pick<PlannedCell, "content">): boolean => typeof content === "string" && content.startsWith(madeWith);
