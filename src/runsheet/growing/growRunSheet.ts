import {
  carriedOver,
  cellsInTheWay,
  columnsMoved,
  finishedGrowth,
  grew,
  grewWhenComplete,
  grownUnseen,
  growthBrokeOff,
  keptTyped,
  mendedCells,
  mostOnASheet,
  noPlaceOfFormulas,
  noRunSheet,
  noUseFor,
  notAllFormulas,
  nothingDone,
  olderRunSheet,
  rearrangedRunSheet,
  rearrangedWhileGrowing,
  stillTypedOver,
  typedIsElsewhere,
} from "../../problems/runsheet/growingProblems";
import { holdsTheSame } from "../../workbook/holdsTheSame";
import { isSameFormula, isSameShape, type Grown, type SheetGrowth } from "../../workbook/SheetGrowth";
import { WorkbookProblem, type RangeReading, type Workbook } from "../../workbook/Workbook";
import { buildRunSheet } from "../buildRunSheet";
import { optionBounds } from "../options/optionBounds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { movedAside, recordAside, type Aside } from "../reading/movedAside";
import { readRunSheet } from "../reading/readRunSheet";
import { columns } from "../sheet/Columns";
import { layout } from "../sheet/layout";
import { headWords } from "../words/headWords";
import { carryOver } from "./carryOver";
import { calledOn, hasUseFor, withOneMore, isAtLimit, type Growth } from "./growths";
import { planGrowth, type PlannedGrowth } from "./planGrowth";
import { isRecord, underWay, type UnderWay } from "./record";
import { rewordedSheet } from "./rewordedSheet";
import { rowsPutIn } from "./rowsPutIn";
import { stepsDone } from "./stepsDone";

/**
 * Adds a round, a firing or a sample to a run sheet. What broke off before is finished instead: it is said, and nothing is added to it.
 * @returns what was done, in a sentence
 * @throws WorkbookProblem that says why not, and whether anything was changed
 */
export async function growRunSheet(workbook: Workbook, sheet: string, growth: Growth): Promise<string> {
  const reading = await workbook.readUsed(sheet);
  const begun = underWay(reading);
  if (begun !== undefined) return finish(workbook, reading, begun, false);
  const from = optionsOf(reading);
  if (!hasUseFor(from, growth)) throw new WorkbookProblem(noUseFor(growth));
  if (isAtLimit(from, growth)) throw new WorkbookProblem(mostOnASheet(calledOn(from, growth), optionBounds[growth].atMost));
  const to = withOneMore(from, growth);
  if (columns(to).width !== columns(from).width) {
    const made = await workbook.addSheet(carryOver(reading, { from, to }));
    return carriedOver(sheet, made, to.replicates);
  }
  const planned = planGrowth(reading, { from, to }, false);
  const said = await carryOut(workbook, sheet, planned);
  const wasComplete = reading.rows[0]?.some(({ value }) => value === headWords.next.complete) === true;
  return `${grew(calledOn(from, growth), to[growth] ?? 0)}${wasComplete ? grewWhenComplete : ""}${said}`;
}

/** Puts back formulas that were typed over or lost, and the rules, looks and page with them; finishes what broke off. Never touches a box. */
export async function mendRunSheet(workbook: Workbook, sheet: string): Promise<string> {
  const reading = await workbook.readUsed(sheet);
  const begun = underWay(reading);
  if (begun !== undefined) return finish(workbook, reading, begun, true);
  const options = optionsOf(reading);
  const planned = planGrowth(reading, { from: options, to: options }, true);
  const said = await carryOut(workbook, sheet, planned);
  return `${mendedCells(planned.formulas)}${said}`;
}

async function finish(workbook: Workbook, reading: RangeReading, begun: UnderWay, mends: boolean): Promise<string> {
  const at = reading.rows[0]?.find(({ value }) => typeof value === "string" && isRecord({ content: value }))?.cell ?? "";
  refuseAside(recordAside(at, begun.from));
  const steps = rowsPutIn(layout(begun.from), layout(begun.to));
  const done = stepsDone(reading, buildRunSheet(begun.from), steps);
  if (done === undefined) throw new WorkbookProblem(rearrangedWhileGrowing);
  return `${finishedGrowth}${await carryOut(workbook, reading.sheet, planGrowth(reading, begun, mends, done))}`;
}

/** @throws WorkbookProblem in words where the sheet cannot be grown */
function optionsOf(reading: RangeReading): CheckedOptions {
  const read = readRunSheet(reading);
  if (read.is === "whole" || read.is === "balance") return read.sheet.options;
  if (read.is === "rearranged" && read.stands !== undefined) refuseAside({ ...read, stands: read.stands });
  const reworded = read.is === "rearranged" ? rewordedSheet(reading) : undefined;
  if (reworded !== undefined) {
    refuseAside(movedAside(reading, reworded));
    return reworded;
  }
  if (read.is === "rearranged") throw new WorkbookProblem(rearrangedRunSheet(read.missing, read.cell));
  throw new WorkbookProblem(read.is === "older" ? olderRunSheet : noRunSheet);
}

/** @throws WorkbookProblem where something stands aside of its place */
function refuseAside(aside: Aside | undefined): void {
  if (aside !== undefined) throw new WorkbookProblem(nothingDone(columnsMoved(aside.missing, aside.cell, aside.stands)));
}

/** Grows the sheet and looks whether all that was typed stands and all formulas are there. @returns what is to be said besides */
async function carryOut(workbook: Workbook, sheet: string, planned: PlannedGrowth): Promise<string> {
  const { growth, typedOver, inTheWay, unlookedFor } = planned;
  if (unlookedFor.length > 0) throw new WorkbookProblem(noPlaceOfFormulas(unlookedFor));
  if (inTheWay.length > 0) throw new WorkbookProblem(cellsInTheWay(inTheWay));
  const { kept } = await workbook.growSheet(sheet, growth).catch((problem: unknown) => brokenOff(workbook, planned, problem));
  const seen = await workbook.readUsed(sheet).catch((problem: unknown) => Promise.reject(new WorkbookProblem(grownUnseen(wordsOf(problem)))));
  const after = new Map(seen.rows.flat().map((one) => [one.cell, one]));
  const gone = [...planned.stays].filter(([cell, typed]) => {
    const there = after.get(cell);
    if (typeof typed === "string" && typed.startsWith("=")) return there === undefined || !isSameShape(there.formula, typed);
    return there?.value !== typed;
  });
  if (gone.length > 0) throw new WorkbookProblem(typedIsElsewhere(gone.map(([cell]) => cell)));
  const missing = growth.written.filter(({ cell, formula }) => {
    return formula !== undefined && !kept.includes(cell) && !isSameFormula(after.get(cell)?.formula ?? "", formula);
  });
  if (missing.length > 0) throw new WorkbookProblem(notAllFormulas(missing.map(({ cell }) => cell)));
  return `${typedOver.length === 0 ? "" : stillTypedOver(typedOver)}${kept.length === 0 ? "" : keptTyped(kept)}`;
}

/** After a request that failed: where the sheet is as it was, that alone is said; where all of it was done, that. */
async function brokenOff(workbook: Workbook, { growth }: PlannedGrowth, problem: unknown): Promise<Grown> {
  const now = await workbook.readUsed(growth.read.sheet).catch(() => undefined);
  if (now !== undefined && holdsTheSame(growth.read, now)) throw problem;
  if (now !== undefined && growth.begun !== undefined && underWay(now) === undefined && isThere(growth, now)) return { kept: [] };
  throw new WorkbookProblem(growthBrokeOff(wordsOf(problem)));
}

const wordsOf = (problem: unknown): string => (problem instanceof Error ? problem.message : String(problem));

/** The record is written last of all. */
const isThere = ({ ended }: SheetGrowth, { rows }: RangeReading): boolean =>
  ended !== undefined && rows.flat().some(({ cell, value }) => cell === ended.cell && value === ended.content);
