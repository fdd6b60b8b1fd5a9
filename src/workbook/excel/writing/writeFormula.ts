import { cellNotBlank, formulaMayStand, formulaNotAccepted, newerStands, notPutBack } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem, type CellAddress } from "../../Workbook";
import { excelCode, excelProblem } from "../excelProblem";
import { inExcel } from "../inExcel";
import { isBlank, putBack, writeOver, type WriteWords } from "./writeOver";

const WORDS: WriteWords = { refused: cellNotBlank, notPutBack, newerStands };

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
  if (!isBlank(before)) await putBack({ sheet, cell }, before, WORDS);
}

/** After a request that failed, and that may have written all the same. @throws WorkbookProblem */
async function tellWhatStands({ sheet, cell }: CellAddress, formula: string, problem: WorkbookProblem): Promise<never> {
  if (excelCode(problem) === "InvalidArgument") throw new WorkbookProblem(formulaNotAccepted(formula));
  const now = await inExcel(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(cell).load("formulas");
    await context.sync();
    return String(range.formulas[0]?.[0]);
  }).catch(() => undefined);
  throw now === "" ? problem : new WorkbookProblem(formulaMayStand(problem.message, cell));
}
