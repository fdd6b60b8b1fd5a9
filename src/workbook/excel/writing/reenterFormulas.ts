import { changedSince, newerThanValue, reentryBrokeOff, valueNotPutBack, workbookProtected } from "../../../problems/workbook/workbookProblems";
import { WorkbookProblem, type Reentered, type Reentry } from "../../Workbook";
import { excelCode, excelProblem } from "../excelProblem";
import { inExcel } from "../inExcel";
import { inRequests, QUESTIONS_A_REQUEST } from "../inRequests";
import { askToWriteOver, putBack, type Written, type WriteWords } from "./writeOver";

const WORDS: WriteWords = { refused: changedSince, newerStands: newerThanValue, notPutBack: valueNotPutBack };

// Each cell is read, written and read again; a request may hold 5 MB on the web.
const CELLS_A_REQUEST = 300;

/**
 * Enters formulas again. A first look leaves out every cell that holds something else by now; the request that writes reads each cell just before,
 * and what came in between goes back. Formulas stay in their cells whatever breaks off, so that the rest can be entered by another press.
 * @throws WorkbookProblem that says how far it came, where Excel stops answering, or that names what could not be put back
 */
export async function reenterFormulas(sheet: string, cells: readonly Reentry[]): Promise<Reentered> {
  const there = await inExcel((context) => standing(context, sheet, cells), { sheet });
  const ready = cells.filter((_, index) => there[index]);
  const entered: string[] = [];
  const changed = cells.filter((_, index) => !there[index]).map(({ cell }) => cell);
  for (let at = 0; at < ready.length; at += CELLS_A_REQUEST) {
    const batch = ready.slice(at, at + CELLS_A_REQUEST);
    const before = await enter(sheet, batch).catch((thrown: unknown) => {
      throw new WorkbookProblem(reentryBrokeOff(excelProblem(thrown).message, entered.length));
    });
    for (const [index, { cell, held }] of batch.entries()) {
      const was = before[index];
      if (was === undefined || was.raw === held) entered.push(cell);
      else if (await goesBack({ sheet, cell }, was)) changed.push(cell);
    }
  }
  return { entered, changed };
}

/** Whether each cell still holds what was read of it. @throws WorkbookProblem where the sheet is protected */
async function standing(context: Excel.RequestContext, sheet: string, cells: readonly Reentry[]): Promise<readonly boolean[]> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const protection = worksheet.protection.load("protected");
  const ranges = await inRequests(context, cells, { limit: QUESTIONS_A_REQUEST, weigh: () => 1 }, ({ cell }) =>
    worksheet.getRange(cell).load("formulas"),
  );
  if (cells.length === 0) return [];
  if (protection.protected) throw new WorkbookProblem(workbookProtected);
  return ranges.map(({ formulas }, index) => formulas[0]?.[0] === cells[index]?.held);
}

/** As one step of undo, where Excel groups such a step. */
async function enter(sheet: string, batch: readonly Reentry[], oneUndoStep = true): Promise<readonly Written[]> {
  try {
    return await inExcel(
      async (context) => {
        const written = batch.map(({ cell, formula }) => askToWriteOver(context, { sheet, cell }, formula));
        await context.sync();
        return written.map((tell) => tell());
      },
      { sheet, oneUndoStep },
    );
  } catch (thrown) {
    const problem = excelProblem(thrown, sheet);
    // Refused before anything was written.
    if (oneUndoStep && excelCode(problem) === "UndoNotSupported") return enter(sheet, batch, false);
    throw problem;
  }
}

/** Puts back what a formula took the place of; true where it stands again. @throws WorkbookProblem that names what does not */
async function goesBack(address: { readonly sheet: string; readonly cell: string }, was: Written): Promise<boolean> {
  try {
    return await putBack(address, was, WORDS);
  } catch (problem) {
    if (problem instanceof WorkbookProblem && problem.message === changedSince(address.cell)) return true;
    throw problem;
  }
}
