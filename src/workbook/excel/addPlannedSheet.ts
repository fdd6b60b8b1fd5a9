import { checkSheetPlan } from "../checkSheetPlan";
import { freeSheetName } from "../freeSheetName";
import { withSheetRenamed } from "../renamedSheet";
import type { PlannedCell, SheetPlan } from "../SheetPlan";
import type { Attempt, SheetUnderWay } from "./unfinished/Attempt";
import { bytesOf } from "./bytesOf";
import { beginChart, finishChart } from "./writing/drawChart";
import { askForStrangers, unmarkDuplicates } from "./unfinished/duplicates";
import { isAlike, isFormula, type HeldCells } from "./reading/heldCells";
import { inExcel } from "./inExcel";
import { putMark, sheetsThere, takeMark } from "./unfinished/sheetMark";
import type { Ended } from "./unfinished/takeBack";
import { wholeOrNothing } from "./unfinished/wholeOrNothing";
import { writePlan } from "./writing/writePlan";

/**
 * Makes the planned sheet at the end of the workbook: one request for the names, one for the sheet, one to finish.
 * @returns the sheet's name at the end
 */
export async function addPlannedSheet(plan: SheetPlan): Promise<string> {
  checkSheetPlan(plan);
  const [made] = await wholeOrNothing(async (attempt) => {
    attempt.before = await inExcel(sheetsThere);
    const names = attempt.before.map(({ name }) => name);
    return inExcel((context) => makeSheet(context, freeSheetName(plan.name, names), plan, attempt), { oneUndoStep: attempt.oneUndoStep });
  });
  return made?.name ?? plan.name;
}

async function makeSheet(context: Excel.RequestContext, name: string, plan: SheetPlan, attempt: Attempt): Promise<Ended[]> {
  const { worksheet, mark } = beginSheet(context, name, plan, attempt);
  const charts = (plan.charts ?? []).map((planned) => ({ planned, chart: beginChart(worksheet, planned) }));
  await writePlan(context, worksheet, plan);
  attempt.finishing = true;
  worksheet.load("name");
  const strangers = askForStrangers(context, attempt);
  for (const { planned, chart } of charts) finishChart(worksheet, chart, planned);
  worksheet.activate();
  worksheet.getRange(plan.startAt).select();
  // Last of all: a sheet without the mark is whole.
  takeMark(worksheet, mark);
  await context.sync();
  await unmarkDuplicates(attempt, strangers());
  return [{ name: worksheet.name, held: new Map() }];
}

/**
 * Asks for a new sheet with a mark of the attempt on it.
 * @param renamed a sheet that gets another name before this one is finished: Excel renames it in formulas
 */
export function beginSheet(
  context: Excel.RequestContext,
  name: string,
  plan: SheetPlan,
  attempt: Attempt,
  renamed?: { readonly from: string; readonly to: string },
): SheetUnderWay {
  const worksheet = context.workbook.worksheets.add(name).load("id");
  const mark = attempt.nextMark();
  putMark(worksheet, mark);
  const written = new Map(plan.cells.flatMap((planned) => entryOf(planned)));
  const sheet: SheetUnderWay = {
    worksheet,
    mark,
    names: [name],
    namesNow: [name],
    anchors: [],
    bytes: bytesOf([...written.values()]),
    charts: (plan.charts ?? []).map(({ title }) => title),
    isOurs: (held) =>
      [...held].every(([cell, entry]) => {
        const own = written.get(cell);
        return isAlike(own, entry) || (renamed !== undefined && isFormula(own) && isAlike(withSheetRenamed(own, renamed.from, renamed.to), entry));
      }),
    isWhole: (held: HeldCells) => [...written.keys()].every((cell) => held.has(cell)),
  };
  attempt.sheets.push(sheet);
  return sheet;
}

function entryOf({ cell, content, formula }: PlannedCell): [string, string | number | boolean][] {
  const entry = formula ?? content;
  return entry === undefined || entry === "" ? [] : [[cell.replaceAll("$", ""), entry]];
}
