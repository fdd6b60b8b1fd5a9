import { changedWhileCopied, nameJustTaken, notPutBack, olderThanNeeded, typedIntoCopy } from "../../../problems/workbook/workbookProblems";
import { checkSheetPlan } from "../../checkSheetPlan";
import { freeSheetName, unfinishedCopyName } from "../../freeSheetName";
import { withSheetRenamed } from "../../renamedSheet";
import { WorkbookProblem, type CopyMade, type CopyWithValues } from "../../Workbook";
import { beginSheet } from "../addPlannedSheet";
import type { Attempt, SheetUnderWay } from "../unfinished/Attempt";
import { cellEntry } from "../writing/cellEntry";
import { askForStrangers, unmarkDuplicates } from "../unfinished/duplicates";
import { changeRules } from "./changeRules";
import { expectedCopy, type ExpectedCopy } from "./expectedCopy";
import { askForHeld, isFormula, readHeld } from "../reading/heldCells";
import { excelSupports } from "../excelReady";
import { HOST } from "../excelProblem";
import { inExcel } from "../inExcel";
import { askForMarks, putMark, sheetsThere, takeMark } from "../unfinished/sheetMark";
import type { Ended } from "../unfinished/takeBack";
import { wholeOrNothing } from "../unfinished/wholeOrNothing";
import { markFixed } from "../writing/markFixed";
import { unbox } from "../writing/unbox";
import { dress, writePlan } from "../writing/writePlan";

/**
 * Copies a sheet with values in place of cell formulas, and makes the sheet beside it. No part of this can be one step of
 * Excel's undo: copying and naming a sheet cannot be undone (Office Add-ins documentation, "Undo capabilities").
 */
export async function copyWithValues(sheet: string, wanted: CopyWithValues): Promise<CopyMade> {
  const { beside: first, further = [], formulas = [] } = wanted;
  for (const plan of [first, ...further]) checkSheetPlan(plan);
  // Older ones take one cell of a range, and set a formula over arrays in no other way.
  if (formulas.some(({ range }) => range.includes(":")) && !excelSupports("1.12")) throw new WorkbookProblem(olderThanNeeded(HOST));
  let expected = expectedCopy(wanted, unfinishedCopyName(sheet, []));
  const [copy, beside] = await wholeOrNothing(async (attempt) => {
    attempt.before = await inExcel(sheetsThere);
    const taken = attempt.before.map(({ name }) => name);
    for (const name of [wanted.name, ...[first, ...further].map(({ name: own }) => own)])
      if (freeSheetName(name, taken) !== name) throw new WorkbookProblem(nameJustTaken);
    const copyName = unfinishedCopyName(sheet, taken);
    expected = expectedCopy(wanted, copyName);
    return inExcel((context) => makeCopy(context, sheet, { ...wanted, copyName, expected }, attempt), { sheet });
  });
  const touched = copy === undefined || !expected.isAsMade(copy.held);
  return { copy: copy?.name ?? wanted.name, beside: beside?.name ?? wanted.beside.name, touched };
}

type CopyUnderWay = CopyWithValues & { readonly copyName: string; readonly expected: ExpectedCopy };

async function makeCopy(context: Excel.RequestContext, sheet: string, wanted: CopyUnderWay, attempt: Attempt): Promise<Ended[]> {
  const { expected, goOn = () => undefined } = wanted;
  const copy = await beginCopy(context, sheet, wanted, attempt);
  goOn();
  const ask = () => (expected.isSmall ? askForHeld(copy.worksheet) : undefined);
  let before = ask();
  const beside = beginSheet(context, wanted.beside.name, wanted.beside, attempt);
  // All of the sheet: rules stand on blank cells too.
  if (wanted.keepsRules !== true) copy.worksheet.getRange(EVERYWHERE).dataValidation.clear();
  await changeRules(context, copy.worksheet, wanted.rules ?? [], { sheet, copyName: wanted.copyName, lastName: wanted.name });
  unbox(copy.worksheet, wanted.unboxed ?? []);
  if (wanted.banner !== undefined) dress(copy.worksheet, [{ cell: wanted.banner, style: "caution" }]);
  const further = (wanted.further ?? []).map((plan) => {
    const cells = plan.cells.map((one) =>
      one.formula === undefined ? one : { ...one, formula: withSheetRenamed(one.formula, wanted.name, wanted.copyName) },
    );
    const asWritten = { ...plan, cells };
    return { plan: asWritten, made: beginSheet(context, plan.name, asWritten, attempt, { from: wanted.copyName, to: wanted.name }) };
  });
  for (const { plan, made } of further) {
    if (plan.isHidden === true) made.worksheet.visibility = Excel.SheetVisibility.hidden;
    await writePlan(context, made.worksheet, plan);
    goOn();
    // What was typed by now is not written over; what comes later is seen in the request that writes.
    if (before !== undefined && expected.typedWhereValuesGo(before()).length > 0) throw new WorkbookProblem(typedIntoCopy);
    before = ask();
  }
  const lookAtTyped = async (): Promise<void> => putBackTyped(context, copy, before === undefined ? [] : expected.typedWhereValuesGo(before()));
  const writes = [...expected.writes(copy.worksheet), ...markFixed(copy.worksheet, wanted.fixed ?? [])];
  await writePlan(context, beside.worksheet, wanted.beside, writes).catch(async (thrown: unknown) => {
    // Where the answer was lost, so is what stood there.
    await lookAtTyped().catch((problem: unknown) => {
      if (problem instanceof WorkbookProblem) throw problem;
    });
    throw thrown;
  });
  await lookAtTyped();
  goOn();
  // What stands on a very large copy is looked at before, for a look that fails afterwards would leave everything in doubt.
  const large = expected.isSmall ? undefined : await readHeld(context, copy.worksheet, expected.extentMade, expected.bytes);
  attempt.finishing = true;
  copy.namesNow = [wanted.copyName, wanted.name];
  beside.worksheet.load("name");
  const strangers = askForStrangers(context, attempt);
  const held = large === undefined ? askForHeld(copy.worksheet) : () => large;
  // Only now may the copy say that it holds values. The marks go last: a sheet without one is whole.
  copy.worksheet.name = wanted.name;
  takeMark(copy.worksheet, copy.mark);
  takeMark(beside.worksheet, beside.mark);
  for (const { made } of further) takeMark(made.worksheet, made.mark);
  await context.sync();
  await unmarkDuplicates(attempt, strangers());
  return [
    { name: wanted.name, held: held() },
    { name: beside.worksheet.name, held: new Map() },
    ...further.map(({ plan }) => ({ name: plan.name, held: new Map() })),
  ];
}

const EVERYWHERE = "A:XFD";

/** Somebody typed into the copy where a value has just been written: it goes back, and the copy is theirs. */
async function putBackTyped(
  context: Excel.RequestContext,
  copy: SheetUnderWay,
  typed: ReturnType<ExpectedCopy["typedWhereValuesGo"]>,
): Promise<void> {
  const [first] = typed;
  if (first === undefined) return;
  for (const [cell, entry] of typed) copy.worksheet.getRange(cell).formulas = [[isFormula(entry) ? entry : cellEntry(entry)]];
  await context.sync().catch(() => {
    throw new WorkbookProblem(notPutBack(first[0], typed.map(([, entry]) => String(entry)).join(", ")));
  });
  throw new WorkbookProblem(typedIntoCopy);
}

/** Copies the sheet as it is. @throws WorkbookProblem where something else stands there by now than was read */
async function beginCopy(context: Excel.RequestContext, sheet: string, wanted: CopyUnderWay, attempt: Attempt): Promise<SheetUnderWay> {
  const { expected, copyName } = wanted;
  const source = context.workbook.worksheets.getItem(sheet);
  const held = expected.isSmall ? askForHeld(source) : undefined;
  const worksheet = source.copy(Excel.WorksheetPositionType.end).load("id");
  const mark = attempt.nextMark();
  worksheet.name = copyName;
  putMark(worksheet, mark);
  const marks = askForMarks(worksheet);
  const asExcelNamesIt = freeSheetName(sheet, attempt.before.map(({ name }) => name)); // prettier-ignore
  const namesNow = [asExcelNamesIt, copyName];
  const copy: SheetUnderWay = { worksheet, mark, names: [...namesNow, wanted.name], namesNow, charts: [], ...expected };
  attempt.sheets.push(copy);
  await context.sync();
  copy.namesNow = [copyName];
  // Those of the sheet itself, where somebody shares one that was begun and never finished, do not hold for its copy.
  for (const inherited of marks()) if (inherited !== mark) takeMark(worksheet, inherited);
  const now = held?.() ?? (await readHeld(context, source, expected.extent, expected.bytesRead));
  copy.isOurs = (cells, blocked) => expected.isOurs(cells, blocked, now);
  if (!expected.wasReadFrom(now)) throw new WorkbookProblem(changedWhileCopied(sheet));
  return copy;
}
