import { WorkbookProblem, type CellAddress } from "../../Workbook";
import { cellEntry } from "./cellEntry";
import { excelSupports } from "../excelReady";
import { inExcel } from "../inExcel";
import { withoutSheet } from "../reading/readCells";

/** What is said where a cell turns out to hold something else than it did a moment before. */
export interface WriteWords {
  /** What came in between stands in the cell as it did. */
  refused(cell: string): string;
  newerStands(cell: string, held: readonly string[]): string;
  notPutBack(cell: string, held: string): string;
}

export const isBlank = ({ valueTypes }: Pick<Excel.Range, "valueTypes">): boolean => valueTypes[0]?.[0] === Excel.RangeValueType.empty;

/** What a write took the place of, and what stands there since. */
export interface Written extends Pick<Excel.Range, "valueTypes" | "numberFormat"> {
  /** What to write so that the former stands there again: "" where another cell's formula had filled the cell. */
  readonly entry: Entry;
  /** The former, as Excel reads it out. */
  readonly raw: Entry;
  /** Whether the former was text, "" of a formula too. */
  readonly isText: boolean;
  /** The latter, as Excel reads it out. */
  readonly stands: Entry;
}

export type Entry = string | number | boolean;

/** Reads a cell and writes into it, in one request. */
export async function writeOver(
  context: Excel.RequestContext,
  address: CellAddress,
  entry: Entry,
  format?: Written["numberFormat"],
): Promise<Written> {
  const written = askToWriteOver(context, address, entry, format);
  await context.sync();
  return written();
}

/** Asks for the same in a request that does more. @returns what it took the place of, once the request has been answered */
export function askToWriteOver(
  context: Excel.RequestContext,
  { sheet, cell }: CellAddress,
  entry: Entry,
  format?: Written["numberFormat"],
): () => Written {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const held = worksheet.getRange(cell).load("valueTypes,values,formulas,numberFormat");
  const parent = excelSupports("1.12") ? worksheet.getRange(cell).getSpillParentOrNullObject().load("address") : undefined;
  if (format !== undefined) worksheet.getRange(cell).numberFormat = format;
  worksheet.getRange(cell).formulas = [[entry]];
  const written = worksheet.getRange(cell).load("formulas");
  return () => {
    const raw = held.formulas[0]?.[0] as Entry;
    const isFilled = parent !== undefined && !parent.isNullObject && withoutSheet(parent.address) !== cell;
    return {
      valueTypes: held.valueTypes,
      numberFormat: held.numberFormat,
      entry: isFilled ? "" : entryOf(raw, held.values[0]?.[0]),
      raw,
      isText: held.valueTypes[0]?.[0] === Excel.RangeValueType.string,
      stands: written.formulas[0]?.[0] as Entry,
    };
  };
}

/** Excel gives text such as "=1+1" in place of a formula, too; only then is it the same as the value. */
const entryOf = (formula: unknown, value: unknown): Entry => (formula === value ? cellEntry(value as Entry) : (formula as string));

// Somebody may go on typing into the cell; after this many tries the user is told.
const MOST_TRIES = 3;

/**
 * Gives the cell back what our entry took the place of, but only as long as our entry stands there: whatever is newer stays.
 * Each write reads the cell just before, in the same request; something newer that it took the place of is put back in its turn.
 * @throws WorkbookProblem that says why nothing was written and names what does not stand there any more
 */
export async function putBack(address: CellAddress, before: Written, words: WriteWords): Promise<never> {
  const { cell } = address;
  const displaced = [before];
  let last = before;
  for (let tries = 1; tries <= MOST_TRIES; tries++) {
    const over = await writeBack(address, last).catch(() => undefined);
    const missing = displaced.map(({ entry }) => String(entry));
    if (over === undefined) break;
    if (over === "newer stands") throw new WorkbookProblem(words.newerStands(cell, missing));
    if (over.raw === last.stands) throw new WorkbookProblem(tries === 1 ? words.refused(cell) : words.newerStands(cell, missing.slice(0, -1)));
    displaced.push(over);
    last = over;
  }
  throw new WorkbookProblem(words.notPutBack(cell, String(last.entry)));
}

/** @param last what to put back, as long as that stands there which took its place */
async function writeBack({ sheet, cell }: CellAddress, last: Written): Promise<Written | "newer stands"> {
  return inExcel(async (context) => {
    const now = context.workbook.worksheets.getItem(sheet).getRange(cell).load("formulas");
    await context.sync();
    return now.formulas[0]?.[0] === last.stands ? writeOver(context, { sheet, cell }, last.entry, last.numberFormat) : "newer stands";
  });
}
