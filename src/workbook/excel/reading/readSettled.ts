import { areaNamed } from "../../areaNamed";
import type { RangeReading, SettledReading } from "../../Workbook";
import { askForCalculation } from "./lookAtCell";
import { readCells, withoutSheet } from "./readCells";

/**
 * Reads a sheet twice: a request for where things stand and whether anything calculates, one for the first reading, and one for the
 * second with the same questions once more. Spills and very large sheets take more.
 */
export async function readSettled(context: Excel.RequestContext, sheet: string, asShown: boolean): Promise<SettledReading> {
  const isFinal = ({ state }: SettledReading["calculation"]): boolean => asShown || state === "done";
  const asked = askForUsed(context, sheet);
  await context.sync();
  const before = asked();
  if (!isFinal(before.calculation)) return { calculation: before.calculation };
  const first = await readAll(context, sheet, before.range);
  let askedAgain = asked;
  const second = await readAll(context, sheet, before.range, () => (askedAgain = askForUsed(context, sheet)));
  const after = askedAgain();
  const isSame = after.range === before.range && JSON.stringify(first) === JSON.stringify(second);
  return { calculation: after.calculation, ...(isSame && isFinal(after.calculation) ? { reading: second } : {}) };
}

interface Seen extends Pick<SettledReading, "calculation"> {
  /** The used range, "" where the sheet is empty. */
  readonly range: string;
}

function askForUsed(context: Excel.RequestContext, sheet: string): () => Seen {
  const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true).load("address");
  const calculation = askForCalculation(context);
  return () => ({ range: used.isNullObject ? "" : withoutSheet(used.address), calculation: calculation() });
}

/** @param besides called as the last of the cells are asked for, to ask for more in the same request */
async function readAll(context: Excel.RequestContext, sheet: string, range: string, besides = (): unknown => undefined): Promise<RangeReading> {
  if (range !== "") return readCells(context, sheet, areaNamed(range), besides);
  besides();
  await context.sync();
  return { sheet, range, rows: [] };
}
