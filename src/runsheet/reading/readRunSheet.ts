import { cellArea } from "../../workbook/cellArea";
import type { CellContent, RangeReading } from "../../workbook/Workbook";
import { balanceBlocks } from "../blocks/balance/planBalanceSheet";
import { everyBlock } from "../buildRunSheet";
import { checkOptions } from "../options/checkOptions";
import { optionBounds } from "../options/optionBounds";
import type { CheckedOptions, RunSheetOptions } from "../options/RunSheetOptions";
import { balanceSheet, type BalanceSheet } from "../sheet/BalanceSheet";
import { LABEL } from "../sheet/Columns";
import { runSheet, type RunSheet } from "../sheet/RunSheet";
import { olderSheets, saysLabel } from "../words/olderSheets";
import { setupWords } from "../words/setupWords";
import { sheetWords } from "../words/sheetWords";
import { movedAside, recordAside, type Aside } from "./movedAside";

/** What a sheet of the workbook is. */
export type ReadRunSheet =
  | { readonly is: "whole"; readonly sheet: RunSheet }
  | { readonly is: "balance"; readonly sheet: BalanceSheet }
  /** A run sheet of an earlier version, which says nowhere what it was made with. */
  | { readonly is: "older" }
  /**
   * A run sheet whose blocks do not stand where they were made; `missing` is the first heading that is not found, in `cell`. Where columns
   * or cells were put in, taken out or moved, it `stands` elsewhere; "" is missing where it is the formula of `cell` that does.
   */
  | ({ readonly is: "rearranged" } & (Omit<Aside, "stands"> & Partial<Pick<Aside, "stands">>))
  | { readonly is: "other" };

/**
 * The run sheet that stands on a sheet, as it is now: rows that were put into its tables by hand count as rounds and firings.
 * @param reading all cells of the sheet that hold anything, or its printed columns with the first row whole
 */
export function readRunSheet(reading: RangeReading): ReadRunSheet {
  const texts = textsOf(reading);
  const record = recordIn(reading);
  if (record === undefined)
    return { is: [...texts.values()].some((text) => text === setupWords.legend || text === olderSheets.legend) ? "older" : "other" };
  const options = optionsIn(record.text);
  if (options === undefined) return { is: "rearranged", missing: sheetWords.workings.madeWith.trim(), cell: "" };
  const outOfPlace = recordAside(record.at, options);
  if (outOfPlace !== undefined) return { is: "rearranged", ...outOfPlace };
  const besideA = headingsBesideA(marked(options), texts);
  if (besideA !== undefined) return { is: "rearranged", ...besideA };
  const { options: now, marks } = withRowsPutIn(options, texts);
  const lost = marks.find(({ at, content }) => !saysLabel(texts.get(at), content));
  if (lost !== undefined) return { is: "rearranged", missing: lost.content, cell: lost.at };
  const aside = movedAside(reading, now);
  if (aside !== undefined) return { is: "rearranged", ...aside };
  return now.kind === "balance" ? { is: "balance", sheet: balanceSheet(now) } : { is: "whole", sheet: runSheet(now) };
}

/** What is held, by cell. */
function textsOf({ range, rows }: RangeReading): ReadonlyMap<string, CellContent> {
  return new Map(cellArea(range) === undefined ? [] : rows.flatMap((row) => row.map(({ cell, value }) => [cell, value] as const)));
}

/** The record, and where it stands: a row put in above the sheet moves it down. */
function recordIn({ range, rows }: RangeReading): { readonly text: string; readonly at: string } | undefined {
  if (cellArea(range) === undefined) return undefined;
  const { madeWith } = sheetWords.workings;
  for (const row of rows)
    for (const { cell, value } of row)
      if (typeof value === "string" && value.startsWith(madeWith)) return { text: value.slice(madeWith.length), at: cell };
  return undefined;
}

/** Undefined where the record was changed so that no sheet comes of it. */
function optionsIn(record: string): CheckedOptions | undefined {
  try {
    // The record is JSON that a sheet of ours was made with; checkOptions refuses what is none.
    return checkOptions(JSON.parse(record) as RunSheetOptions);
  } catch {
    return undefined;
  }
}

/** The first heading, where not one stands in column A any more and it stands in another column of its row. */
function headingsBesideA({ marks }: Marked, texts: ReadonlyMap<string, CellContent>): Aside | undefined {
  const [first] = marks;
  if (first === undefined || marks.some(({ at, content }) => saysLabel(texts.get(at), content))) return undefined;
  const stands = [...texts].find(([cell, value]) => value === first.content && cell.replace(/\D/g, "") === String(first.row))?.[0];
  return stands === undefined ? undefined : { missing: first.content, cell: first.at, stands };
}

/** Counts of rows that a table can grow by. */
const COUNTS = ["weighIns", "charFirings", "ashFirings", "stages", "receivers"] as const satisfies readonly (keyof CheckedOptions &
  keyof typeof optionBounds)[];

interface Marked {
  readonly options: CheckedOptions;
  readonly marks: readonly Landmark[];
}

/** The record with as many rounds and firings as bring each heading, from the top on, to where it is. */
function withRowsPutIn(options: CheckedOptions, texts: ReadonlyMap<string, CellContent>): Marked {
  // Those further down may stand right by chance: as many rows put in elsewhere move them as far.
  const found = ({ marks }: Marked): number => {
    const lost = marks.findIndex(({ at, content }) => !saysLabel(texts.get(at), content));
    return lost === -1 ? marks.length : lost;
  };
  let best = marked(options);
  for (const count of COUNTS) {
    if (found(best) === best.marks.length) break;
    const now = best.options[count];
    // Not every kind of run has receivers or stages.
    if (now === undefined) continue;
    for (let more = now + 1; more <= optionBounds[count].atMost; more++) {
      const tried = marked({ ...best.options, [count]: more });
      if (found(tried) > found(best)) best = tried;
    }
  }
  return best;
}

const LANDMARKS = ["runBand", "runLightBand", "runTotal"];

interface Landmark {
  readonly row: number;
  readonly at: string;
  readonly content: string;
}

/** Options with the headings and totals that a sheet for them has in its first column. */
function marked(options: CheckedOptions): Marked {
  const { cells } = options.kind === "balance" ? balanceBlocks(balanceSheet(options)) : everyBlock(runSheet(options));
  const marks = cells
    .flatMap(({ at, content, style }) =>
      at.column === LABEL && typeof content === "string" && LANDMARKS.includes(style) ? [{ row: at.row, at: `A${at.row}`, content }] : [],
    )
    .sort((one, other) => one.row - other.row);
  return { options, marks };
}
