import type { HeldCells } from "../reading/heldCells";
import { markOf, newToken, type SheetThere } from "./sheetMark";

/** A sheet that an attempt has asked for, and what it would be like if nobody else touched it. */
export interface SheetUnderWay {
  readonly worksheet: Excel.Worksheet;
  /** Its own mark, from the request that makes it to the very last request. */
  readonly mark: string;
  /** The names that it has one after the other; under another one it has been renamed by somebody. */
  readonly names: readonly string[];
  /** Those of them that it may have now. */
  namesNow: readonly string[];
  /** Cells with formulas that may fill other cells. */
  readonly anchors: readonly string[];
  /** Bytes of what is to stand on it. */
  readonly bytes: number;
  /** The names that its charts get last of all. */
  readonly charts: readonly string[];
  /** True where nothing stands on it but what was put there. @param blocked anchors that could not fill their cells */
  isOurs(held: HeldCells, blocked: ReadonlySet<string>): boolean;
  /** True where everything stands on it that was to be put there, also if more does. */
  isWhole(held: HeldCells, name: string): boolean;
}

/** One try at making sheets. */
export class Attempt {
  private readonly token = newToken();
  readonly sheets: SheetUnderWay[] = [];
  /** Sheets that were there before. */
  before: readonly SheetThere[] = [];
  /** True from the last request on. */
  finishing = false;

  constructor(readonly oneUndoStep: boolean) {}

  /** A mark for the next sheet. */
  nextMark(): string {
    return markOf(this.token, this.sheets.length + 1);
  }

  /** The names under which sheets may stand that have been asked for. */
  get names(): readonly string[] {
    return this.sheets.flatMap(({ namesNow }) => namesNow);
  }
}

/** The id that Excel gave the sheet, as far as it has told: also a request that failed half-way tells what it made. */
export function idOf({ worksheet }: SheetUnderWay): string | undefined {
  try {
    return worksheet.id;
  } catch {
    return undefined;
  }
}

// What this pane is making, and what it has made or could not take back.
const attempts = new Set<Attempt>();
const begun = new Map<string, SheetUnderWay>();

export const isUnderWayHere = (mark: string): boolean => [...attempts].some(({ sheets }) => sheets.some((sheet) => sheet.mark === mark));

/** A sheet that this pane has begun at some time. */
export const begunHere = (mark: string): SheetUnderWay | undefined => begun.get(mark);

/** While the work goes on, the sheets of the attempt are nobody's to remove. */
export async function keepingTrack<T>(attempt: Attempt, work: () => Promise<T>): Promise<T> {
  attempts.add(attempt);
  try {
    return await work();
  } finally {
    attempts.delete(attempt);
    for (const sheet of attempt.sheets) begun.set(sheet.mark, sheet);
  }
}
