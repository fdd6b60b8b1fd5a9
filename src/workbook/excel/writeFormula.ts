import { cellNotBlank, formulaMayStand, formulaNotAccepted, notPutBack } from "../../problems/workbookProblems";
import { WorkbookProblem, type CellAddress } from "../Workbook";
import { cellEntry } from "./cellEntry";
import { excelCode, excelProblem } from "./excelProblem";
import { excelSupports } from "./excelReady";
import { inExcel } from "./inExcel";
import { withoutSheet } from "./readCells";

/**
 * Puts a cell formula into one blank cell. Excel has no write that depends on what is there, so the request that writes also
 * reads the cell just before; what came into it since the first look is put back.
 */
export async function writeFormula({ sheet, cell }: CellAddress, formula: string): Promise<void> {
  const look = await inExcel(
    async (context) => {
      const range = context.workbook.worksheets.getItem(sheet).getRange(cell).load("valueTypes");
      await context.sync();
      return range;
    },
    { sheet },
  );
  if (!isBlank(look)) throw new WorkbookProblem(cellNotBlank(cell));
  const before = await inExcel((context) => writeOver(context, { sheet, cell }, formula), { sheet }).catch((thrown: unknown) =>
    tellWhatStands({ sheet, cell }, formula, excelProblem(thrown)),
  );
  if (!isBlank(before)) await putBack({ sheet, cell }, before);
}

const isBlank = ({ valueTypes }: Pick<Excel.Range, "valueTypes">): boolean => valueTypes[0]?.[0] === Excel.RangeValueType.empty;

/** What the cell held just before the formula. */
interface Held extends Pick<Excel.Range, "valueTypes" | "numberFormat"> {
  /** What to write so that it stands there again: "" where another cell's formula had filled the cell. */
  readonly entry: string | number | boolean;
}

async function writeOver(context: Excel.RequestContext, { sheet, cell }: CellAddress, formula: string): Promise<Held> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const held = worksheet.getRange(cell).load("valueTypes,values,formulas,numberFormat");
  const parent = excelSupports("1.12") ? worksheet.getRange(cell).getSpillParentOrNullObject().load("address") : undefined;
  worksheet.getRange(cell).formulas = [[formula]];
  await context.sync();
  const { valueTypes, numberFormat } = held;
  const isFilled = parent !== undefined && !parent.isNullObject && withoutSheet(parent.address) !== cell;
  return { valueTypes, numberFormat, entry: isFilled ? "" : entryOf(held.formulas[0]?.[0], held.values[0]?.[0]) };
}

/** Excel gives text such as "=1+1" in place of a formula, too; only then is it the same as the value. */
const entryOf = (formula: unknown, value: unknown): string | number | boolean =>
  formula === value ? cellEntry(value as string | number | boolean) : (formula as string);

/** After a request that failed, and that may have written all the same. @throws WorkbookProblem */
async function tellWhatStands({ sheet, cell }: CellAddress, formula: string, problem: WorkbookProblem): Promise<never> {
  if (excelCode(problem) === "InvalidArgument") throw new WorkbookProblem(formulaNotAccepted(formula));
  const now = await inExcel(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(cell).load("formulas");
    await context.sync();
    return String(range.formulas[0]?.[0]);
  }).catch(() => undefined);
  throw now === undefined || now.startsWith("=") ? new WorkbookProblem(formulaMayStand(problem.message, cell)) : problem;
}

/** @throws WorkbookProblem that says the cell was not blank and, where it cannot be put back, what it held */
async function putBack({ sheet, cell }: CellAddress, { entry, numberFormat }: Held): Promise<never> {
  await inExcel(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(cell);
    range.numberFormat = numberFormat;
    range.formulas = [[entry]];
    await context.sync();
  }).catch(() => {
    throw new WorkbookProblem(notPutBack(cell, String(entry)));
  });
  throw new WorkbookProblem(cellNotBlank(cell));
}
