import { cameMeanwhile, keptForItsChanges, removedMeanwhile, sheetsMayBeLeft } from "../../../problems/workbook/workbookProblems";
import type { CellArea } from "../../cellArea";
import { WorkbookProblem } from "../../Workbook";
import { idOf, type Attempt, type SheetUnderWay } from "./Attempt";
import { askForStrangers, unmarkDuplicates } from "./duplicates";
import { excelCode } from "../excelProblem";
import { askForExtent, askForHeld, fitsOneAnswer, readHeld, type HeldCells } from "../reading/heldCells";
import { inExcel } from "../inExcel";
import { askForMarks, sheetsThere, takeMark, type SheetThere } from "./sheetMark";

/** How a sheet ended up. */
export interface Ended {
  readonly name: string;
  readonly held: HeldCells;
}

interface MarkedSheet extends SheetThere {
  readonly worksheet: Excel.Worksheet;
  readonly marks: readonly string[];
  readonly extent: CellArea | undefined;
}

/** A sheet of the attempt, with what stands on it now. */
interface Found extends MarkedSheet {
  readonly of: SheetUnderWay;
  readonly held: HeldCells;
  readonly blocked: ReadonlySet<string>;
  readonly charts: readonly string[];
}

interface Outcome {
  /** How the sheets ended up, where all of them are whole. */
  readonly finished?: readonly Ended[];
  /** What to say, where something stays. */
  readonly left?: WorkbookProblem;
}

// A sheet may go between the look and the removal; after this many looks the user is told.
const MOST_LOOKS = 3;

/**
 * Takes away what an attempt has made, unless it turns out to be finished: only the answer to its last request was lost then.
 * Excel has no removal that depends on what stands in cells, so the look is in the request just before the removal.
 */
export async function takeBack(attempt: Attempt, problem: WorkbookProblem): Promise<Outcome> {
  for (let looks = 1; ; looks++) {
    const outcome = await inExcel((context) => lookAndRemove(context, attempt, problem)).catch((thrown: WorkbookProblem) => thrown);
    if (!(outcome instanceof Error)) return outcome;
    if (excelCode(outcome) !== "ItemNotFound" || looks === MOST_LOOKS)
      return { left: new WorkbookProblem(sheetsMayBeLeft(problem.message, attempt.names)) };
  }
}

async function lookAndRemove(context: Excel.RequestContext, attempt: Attempt, problem: WorkbookProblem): Promise<Outcome> {
  const fresh = await freshSheets(context, attempt);
  const owned = attempt.sheets.map((of) => ({ of, ...whichIsIt(of, fresh) }));
  const strays = mayHaveLostOne(owned, problem) ? fresh.filter((sheet) => sheet.marks.length === 0 && !owned.some(({ own }) => own === sheet)) : [];
  const { found, strayCells, strangersThen } = await lookAtAll(context, attempt, owned, strays, fresh);
  const marked = owned.flatMap(({ of, others, own }) => others.map((sheet) => ({ ...sheet, of, isDuplicate: own !== undefined })));
  const duplicates = marked.filter(({ isDuplicate }) => isDuplicate);
  if (attempt.finishing && found.length === attempt.sheets.length && found.every(isWhole)) {
    await unmarkDuplicates(attempt, [...duplicates.map(({ id }) => id), ...strangersThen]);
    return { finished: found };
  }
  const kept = [...found.filter((sheet) => !isUntouched(sheet)), ...marked.filter(({ isDuplicate }) => !isDuplicate)];
  const strangers = askForStrangers(context, attempt, fresh);
  for (const { worksheet, of, marks } of [...duplicates, ...kept]) if (marks.includes(of.mark)) takeMark(worksheet, of.mark);
  for (const { worksheet } of found.filter(isUntouched)) worksheet.delete();
  await context.sync();
  await unmarkDuplicates(attempt, strangers());
  const maybeOurs = strays.filter((_, index) => attempt.sheets.some(({ isOurs }) => isOurs(strayCells[index] ?? new Map(), new Set())));
  return whatIsLeft(kept, maybeOurs, isGone(owned, problem), problem);
}

const isWhole = ({ of, marks, held, name, charts }: Found): boolean =>
  !marks.includes(of.mark) && of.isWhole(held, name) && of.charts.every((chart) => charts.includes(chart));

const isUntouched = ({ of, held, blocked, name }: Found): boolean => of.names.includes(name) && of.isOurs(held, blocked);

interface Owned {
  readonly of: SheetUnderWay;
  /** The sheet itself, where it is there and can be told from its duplicates. */
  readonly own: MarkedSheet | undefined;
  /** What carries its mark besides. */
  readonly others: readonly MarkedSheet[];
}

/** The sheets that were not there before the attempt: no other can be one of its own. */
async function freshSheets(context: Excel.RequestContext, { before }: Attempt): Promise<readonly MarkedSheet[]> {
  const known = new Set(before.map(({ id }) => id));
  const asked = (await sheetsThere(context))
    .filter(({ id }) => !known.has(id))
    .map((sheet) => {
      const worksheet = context.workbook.worksheets.getItem(sheet.id);
      return { ...sheet, worksheet, marks: askForMarks(worksheet), extent: askForExtent(worksheet) };
    });
  if (asked.length > 0) await context.sync();
  return asked.map((sheet) => ({ ...sheet, marks: sheet.marks(), extent: sheet.extent() }));
}

/** By its id; by its mark, which duplicates carry too, only where Excel never told the id. */
function whichIsIt(of: SheetUnderWay, fresh: readonly MarkedSheet[]): Pick<Owned, "own" | "others"> {
  const marked = fresh.filter(({ marks }) => marks.includes(of.mark));
  const id = idOf(of);
  const own = id === undefined ? (marked.length === 1 ? marked[0] : undefined) : fresh.find((sheet) => sheet.id === id);
  return { own, others: marked.filter((sheet) => sheet !== own) };
}

// Excel answers with these before it has made anything.
const REFUSALS = ["ItemAlreadyExists", "UndoNotSupported"];

/** True where a request may have broken off between a sheet and its mark, and its answer was lost. */
const mayHaveLostOne = (owned: readonly Owned[], problem: WorkbookProblem): boolean =>
  !REFUSALS.includes(excelCode(problem)) && owned.some(({ of, own, others }) => idOf(of) === undefined && own === undefined && others.length === 0);

const isGone = (owned: readonly Owned[], problem: WorkbookProblem): boolean =>
  excelCode(problem) === "ItemNotFound" && owned.some(({ of, own }) => idOf(of) !== undefined && own === undefined);

/** The last look: names, contents and all that tells whether somebody has used a sheet, in one request unless one is very large. */
async function lookAtAll(
  context: Excel.RequestContext,
  attempt: Attempt,
  owned: readonly Owned[],
  strays: readonly MarkedSheet[],
  fresh: readonly MarkedSheet[],
): Promise<{ found: readonly Found[]; strayCells: readonly HeldCells[]; strangersThen: readonly string[] }> {
  const heldByLarge = new Map<MarkedSheet, HeldCells>();
  for (const { sheet, bytes } of tooLargeTogether(owned, strays))
    heldByLarge.set(sheet, await readHeld(context, sheet.worksheet, sheet.extent, bytes));
  const askForCells = (sheet: MarkedSheet): (() => HeldCells) => {
    const read = heldByLarge.get(sheet);
    return read === undefined ? askForHeld(sheet.worksheet) : () => read;
  };
  const asked = owned.flatMap(({ of, own }) => {
    if (own === undefined) return [];
    const worksheet = own.worksheet.load("name");
    const anchors = of.anchors.map((cell) => ({ cell, range: worksheet.getRange(cell).load("values") }));
    return [{ ...own, of, anchors, held: askForCells(own), charts: of.charts.length === 0 ? undefined : worksheet.charts.load("items/name") }];
  });
  const askedOfStrays = strays.map(askForCells);
  const strangers = askForStrangers(context, attempt, fresh);
  await context.sync();
  const found = asked.map(({ anchors, charts, held, ...sheet }) => ({
    ...sheet,
    name: sheet.worksheet.name,
    held: held(),
    blocked: new Set(anchors.filter(({ range }) => range.values[0]?.[0] === "#SPILL!").map(({ cell }) => cell)),
    charts: charts?.items.map(({ name }) => name) ?? [],
  }));
  return { found, strayCells: askedOfStrays.map((held) => held()), strangersThen: strangers() };
}

interface Weighed {
  readonly sheet: MarkedSheet;
  readonly bytes: number;
}

/** Sheets that do not fit the one answer that tells of all the others. */
function tooLargeTogether(owned: readonly Owned[], strays: readonly MarkedSheet[]): Weighed[] {
  const weighed = [
    ...owned.flatMap(({ own, of }): Weighed[] => (own === undefined ? [] : [{ sheet: own, bytes: of.bytes }])),
    ...strays.map((sheet): Weighed => ({ sheet, bytes: Math.max(0, ...owned.map(({ of }) => of.bytes)) })),
  ];
  let together = 0;
  return weighed.filter(({ sheet: { extent }, bytes }) => {
    if (extent === undefined) return false;
    const fits = fitsOneAnswer(extent, together + bytes);
    if (fits) together += bytes;
    return !fits;
  });
}

function whatIsLeft(kept: readonly SheetThere[], maybeOurs: readonly SheetThere[], isOneGone: boolean, { message }: WorkbookProblem): Outcome {
  const names = (sheets: readonly SheetThere[]): string[] => sheets.map(({ name }) => name);
  const because = isOneGone ? removedMeanwhile : message;
  if (kept.length > 0) return { left: new WorkbookProblem(keptForItsChanges(because, names(kept))) };
  if (maybeOurs.length > 0) return { left: new WorkbookProblem(cameMeanwhile(because, names(maybeOurs))) };
  return isOneGone ? { left: new WorkbookProblem(removedMeanwhile) } : {};
}
