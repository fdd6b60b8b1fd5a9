import { newerThanValue, valueMayStand, valueNotPutBack } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem, type CellAddress, type CellContent } from "../../Workbook";
import { cellEntry } from "./cellEntry";
import { excelProblem } from "../excelProblem";
import { isAlike } from "../reading/heldCells";
import { inExcel } from "../inExcel";
import { putBack, writeOver, type Entry } from "./writeOver";

/**
 * Puts a value into one cell in place of exactly what it held. Excel has no write that depends on what is there, so the request that
 * writes also reads the cell just before; whatever else came into it since the first look is put back.
 * @param refused what is said where the cell holds anything else
 */
export async function replaceValue(
  { sheet, cell }: CellAddress,
  held: CellContent,
  content: CellContent,
  refused: (cell: string) => string,
): Promise<void> {
  const there = await inExcel((context) => entryOf(context, { sheet, cell }), { sheet });
  if (!isHeld(there, held)) throw new WorkbookProblem(refused(cell));
  const entry = content === null ? "" : cellEntry(content);
  const before = await inExcel((context) => writeOver(context, { sheet, cell }, entry), { sheet }).catch(async (thrown: unknown) => {
    const problem = excelProblem(thrown);
    const now = await inExcel((context) => entryOf(context, { sheet, cell })).catch(() => undefined);
    throw now !== undefined && isHeld(now, held) ? problem : new WorkbookProblem(valueMayStand(problem.message, cell));
  });
  if (!isHeld({ entry: before.raw, isText: before.isText }, held))
    await putBack({ sheet, cell }, before, { refused, newerStands: newerThanValue, notPutBack: valueNotPutBack });
}

interface There {
  readonly entry: Entry;
  readonly isText: boolean;
}

async function entryOf(context: Excel.RequestContext, { sheet, cell }: CellAddress): Promise<There> {
  const range = context.workbook.worksheets.getItem(sheet).getRange(cell).load("formulas,valueTypes");
  await context.sync();
  return { entry: range.formulas[0]?.[0] as Entry, isText: range.valueTypes[0]?.[0] === Excel.RangeValueType.string };
}

/** A formula is nothing that was put there; a blank cell and a formula that gives "" are told apart. */
const isHeld = ({ entry, isText }: There, held: CellContent): boolean => {
  if (held === null) return entry === "" && !isText;
  if (typeof held === "string" && !isText) return false;
  return isAlike(held, entry);
};
