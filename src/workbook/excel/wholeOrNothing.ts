import { keptForWhatWasTyped, sheetsMayBeLeft } from "../../problems/workbookProblems";
import { cellArea, cellAt } from "../cellArea";
import type { SheetPlan } from "../SheetPlan";
import { WorkbookProblem } from "../Workbook";
import { excelCode, excelProblem } from "./excelProblem";
import { inExcel } from "./inExcel";
import { withoutSheet } from "./readCells";
import { newToken, sheetsWithMarks, type MarkedSheet } from "./sheetMark";

/** One try at making sheets. Every sheet carries the token as its mark from the request that makes it to the very last request. */
export class Attempt {
  readonly token = newToken();
  /** The names under which sheets may stand once the first of them has been asked for. */
  names: readonly string[] = [];
  /** Ids of the sheets made, as far as Excel has told them. */
  readonly made: string[] = [];
  /** What was written, under the sheet's name; a sheet without a plan is a copy. */
  readonly plans = new Map<string, SheetPlan>();

  constructor(readonly oneUndoStep: boolean) {}
}

// Somebody else may take the name again and again; after this many tries the user is told.
const MOST_TRIES = 3;

/**
 * Makes sheets that are there whole, or not at all. What an attempt that fails has made is found by its mark and taken away by
 * its id, never by a name: a name may have become somebody else's meanwhile.
 * @returns the attempt that made them
 * @throws WorkbookProblem that names what may be left, when Excel does not answer any more or something was typed into a sheet
 */
export async function wholeOrNothing(make: (attempt: Attempt) => Promise<void>): Promise<Attempt> {
  let tries = 1;
  let oneUndoStep = true;
  for (;;) {
    const attempt = new Attempt(oneUndoStep);
    try {
      await make(attempt);
      return attempt;
    } catch (thrown) {
      const problem = excelProblem(thrown);
      if (attempt.names.length === 0) throw problem;
      const left = await takeBack(attempt, problem);
      if (left === "finished") return attempt;
      if (left !== "nothing") throw left;
      if (oneUndoStep && excelCode(problem) === "UndoNotSupported") oneUndoStep = false;
      else if (excelCode(problem) !== "ItemAlreadyExists" || tries++ === MOST_TRIES) throw problem;
    }
  }
}

/** @returns what there is to say of what stays; "finished" where only the last answer was lost */
async function takeBack(attempt: Attempt, { message }: WorkbookProblem): Promise<"finished" | "nothing" | WorkbookProblem> {
  try {
    return await inExcel(async (context) => {
      const sheets = await sheetsWithMarks(context);
      const isMade = ({ id }: MarkedSheet): boolean => attempt.made.includes(id);
      const isMarked = ({ token }: MarkedSheet): boolean => token === attempt.token;
      if (!sheets.some(isMarked)) return sheets.some(isMade) ? "finished" : "nothing";
      const ours = sheets.filter((sheet) => isMade(sheet) || isMarked(sheet));
      const typedInto = await sheetsTypedInto(context, ours, attempt.plans);
      for (const { id } of ours) if (!typedInto.has(id)) context.workbook.worksheets.getItem(id).delete();
      await context.sync();
      const [kept] = typedInto.values();
      return kept === undefined ? "nothing" : new WorkbookProblem(keptForWhatWasTyped(message, kept));
    });
  } catch {
    return new WorkbookProblem(sheetsMayBeLeft(message, attempt.names));
  }
}

/** The planned sheets that hold something in a cell that was to stay blank: somebody has begun to fill them in. Id to name. */
async function sheetsTypedInto(
  context: Excel.RequestContext,
  sheets: readonly MarkedSheet[],
  plans: ReadonlyMap<string, SheetPlan>,
): Promise<ReadonlyMap<string, string>> {
  const looks = sheets.flatMap(({ id, name }) => {
    const plan = plans.get(name);
    const used = context.workbook.worksheets.getItem(id).getUsedRangeOrNullObject(true);
    return plan === undefined ? [] : [{ id, name, plan, used: used.load("address,formulas") }];
  });
  await context.sync();
  return new Map(looks.filter(({ plan, used }) => !used.isNullObject && holdsMore(used, plan)).map(({ id, name }) => [id, name]));
}

function holdsMore({ address, formulas }: Excel.Range, { cells }: SheetPlan): boolean {
  const planned = new Set(cells.filter(({ content, formula }) => (content ?? formula) !== undefined).map(({ cell }) => cell));
  const { row = 0, column = 0 } = cellArea(withoutSheet(address)) ?? {};
  return formulas.some((line: readonly unknown[], down) =>
    line.some((held, across) => held !== "" && !planned.has(cellAt(row + down, column + across))),
  );
}
