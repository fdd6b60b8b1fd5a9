import { all, any, anyWhere, firstOf, lacksNumber, NOTHING, noNumber, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { explainedBy, isExplainedKnown } from "../explained";
import type { RunSheet } from "../../sheet/RunSheet";
import { CLOCK } from "../../sheet/Columns";
import { decimalsOf } from "../../sheet/massFormats";
import type { Fired, Weighed } from "../../sheet/Weighed";
import { saltWords } from "../../words/saltWords";
import { weighingWords } from "../../words/weighingWords";
import { isTruthHeld } from "../truths";
import { isAbsent } from "./absence";
import { roundsToCome } from "../curves/curves";
import { isColder, isShort } from "../proving";
import { isMoreThanScale } from "../vesselAgain";
import { block, isNotDry } from "../weighings";

const { says, total: totals, unjudged, verdicts, end: endWords } = weighingWords;

/** Grams in a sentence, as the balance shows them. */
export const grams = ({ options }: RunSheet, mass: Expression): Expression => fn("FIXED", mass, decimalsOf(options.readability), true);

/** What was lost since the weighing above, g. @param above what counts there, in the boxes or the workings */
export const lostSince = (above: Cell, here: Cell): Expression => when(lacksNumber(above, here), NOTHING, reckon(above, "-", here));

const rowOf = ({ across }: RunSheet, table: Weighed, row: number): Range => across((sample) => table.box(row, sample));
const lostIn = ({ across }: RunSheet, table: Weighed, row: number): Range => across((sample) => table.lost(row, sample));

/** How many rows down from the first of a table, from 1, whatever is put in above. */
const place = (table: Weighed, row: number): Expression => fn("ROWS", range(fixed(table.box(table.rows.first, 1)), table.box(row, 1)));

const isNext = ({ working }: RunSheet, at: Cell): Condition => is(working.next, "=", fn("ROW", at));

/** The verdict of the newest round where it says that the round cannot tell. */
const newestSays = ({ across }: RunSheet, table: Weighed, words: string): Condition => is(fn("COUNTIF", across(table.steady), words), ">", 0);

/** Whether no row below holds a weight, where all samples are weighed in every row. */
const isLatestIn = (sheet: RunSheet, table: Weighed, row: number): Condition =>
  is(fn("COUNT", block(sheet, table)), "<=", reckon(sheet.working.inUse, "*", place(table, row)));

/** Why a sample may not be judged although its row is whole: of the others alone no loss and no constancy is told for all. */
const notJudged = [unjudged.vesselMissing, unjudged.rowMissing, unjudged.clockMissing, unjudged.timesWrong, unjudged.settingsMissing];
const notJudgedFired = [unjudged.notDry, unjudged.rowMissing, unjudged.heldMissing, unjudged.settingsMissing];

/** What the sheet says of a round while drying. */
export function roundSays(sheet: RunSheet, row: number): Expression {
  const { drying, working } = sheet;
  const [boxes, lost, clock] = [rowOf(sheet, drying, row), lostIn(sheet, drying, row), cell(row, CLOCK)];
  const wholeRow = range(clock, drying.box(row, sheet.options.replicates));
  const isLatest = isLatestIn(sheet, drying, row);
  const begun = [
    [is(fn("COUNTA", wholeRow), "=", 0), when(isNext(sheet, drying.box(row, 1)), says.next, NOTHING)],
    [anyWhere(fn("ISTEXT", boxes)), says.notANumber],
    [is(fn("COUNT", boxes), "<", working.inUse), says.oneToWeigh],
    [noNumber(clock), says.clock],
  ] as const;
  const minutes = reckon(cell(row, sheet.columns.elapsed), "-", cell(row - 1, sheet.columns.elapsed));
  if (row === drying.rows.first) return firstOf(begun, sheet.salt === undefined ? says.allIn : saltWords.allIn);
  return firstOf(
    [
      ...begun,
      [isTruthHeld(sheet), NOTHING],
      [is(fn("COUNT", lost), "<", working.inUse), says.rowAbove],
      [is(fn("MIN", lost), "<", reckon(0, "-", fn("N", working.explained))), says.gained(grams(sheet, reckon(0, "-", fn("MIN", lost))))],
      [all(is(drying.allSteady, ">", 0), is(place(drying, row), ">=", drying.allSteady)), says.nothing],
      [isAbsent(sheet), says.lost(grams(sheet, fn("MAX", lost)))],
      ...notJudged.map((why) => [all(isLatest, newestSays(sheet, drying, why)), says.notJudged(why)] as const),
      [any(...notJudged.map((why) => newestSays(sheet, drying, why))), says.lost(grams(sheet, fn("MAX", lost)))],
      [all(isLatest, newestSays(sheet, drying, verdicts.tooSoon)), says.tooSoon],
      [all(isLatest, newestSays(sheet, drying, verdicts.tooCoarse)), says.tooCoarse],
      // Held against the latest round at least the planned minutes before, which is not the one whose loss stands here.
      [is(minutes, "<", fn("N", sheet.settings.interval)), says.lostIn(grams(sheet, fn("MAX", lost)), fn("ROUND", minutes, 0))],
    ],
    says.losing(grams(sheet, fn("MAX", lost))),
  );
}

/** What the sheet says of the weighing after a firing. */
export function firingSays(sheet: RunSheet, table: Fired, row: number): Expression {
  const { working } = sheet;
  const [boxes, lost] = [rowOf(sheet, table, row), lostIn(sheet, table, row)];
  return firstOf(
    [
      [is(fn("COUNTA", boxes), "=", 0), when(isNext(sheet, table.box(row, 1)), says.next, NOTHING)],
      [anyWhere(fn("ISTEXT", boxes)), says.notANumber],
      [is(fn("COUNT", boxes), "<", working.inUse), says.oneToWeigh],
      [isTruthHeld(sheet), NOTHING],
      [is(fn("COUNT", lost), "<", working.inUse), row === table.rows.first ? NOTHING : says.rowAbove],
      [is(fn("MIN", lost), "<", reckon(0, "-", fn("N", working.explained))), says.gained(grams(sheet, reckon(0, "-", fn("MIN", lost))))],
      [all(is(table.allSteady, ">", 0), is(place(table, row), ">=", table.allSteady)), says.nothing],
      [isAbsent(sheet), says.lost(grams(sheet, fn("MAX", lost)))],
      ...notJudgedFired.map((why) => [all(isLatestIn(sheet, table, row), newestSays(sheet, table, why)), says.notJudged(why)] as const),
      [any(...notJudgedFired.map((why) => newestSays(sheet, table, why))), says.lost(grams(sheet, fn("MAX", lost)))],
      [newestSays(sheet, table, verdicts.tooCoarse), says.tooCoarse],
      [all(isLatestIn(sheet, table, row), isColder(sheet, table, row)), says.colder],
      [all(isLatestIn(sheet, table, row), isShort(table, row, "firings")), says.short],
    ],
    says.fireAgain(grams(sheet, fn("MAX", lost))),
  );
}

/** Whether every row of a table is filled. */
export const isFull = (sheet: RunSheet, table: Weighed): Condition => {
  const { first, total } = table.rows;
  const rows = reckon(fn("ROWS", range(fixed(table.box(first, 1)), fixed(table.box(total, 1)))), "-", 1);
  return all(is(sheet.working.inUse, ">", 0), is(fn("COUNT", block(sheet, table)), ">=", reckon(sheet.working.inUse, "*", rows)));
};

export function drySays(sheet: RunSheet): Expression {
  const { drying, working, caught, salt } = sheet;
  const { isFor, rounds } = roundsToCome(sheet);
  return firstOf(
    [
      [is(fn("COUNT", block(sheet, drying)), "=", 0), NOTHING],
      [isAbsent(sheet), totals.absent],
      [is(drying.allSteady, ">", 0), totals.dry(drying.allSteady)],
      ...(caught === undefined ? [] : ([[is(isNotDry(sheet), "=", false), totals.fedMoist]] as const)),
      ...(salt === undefined ? [] : ([[is(isNotDry(sheet), "=", false), saltWords.asWeighed]] as const)),
      [isFull(sheet, drying), totals.full],
      [all(is(working.inUse, ">", 0), isFor(working.inUse)), totals.more(rounds)],
    ],
    totals.notDry,
  );
}

export const firedSays = (sheet: RunSheet, table: Fired): Expression =>
  firstOf(
    [
      [is(fn("COUNT", block(sheet, table)), "=", 0), NOTHING],
      [isAbsent(sheet), totals.absent],
      [is(table.allSteady, ">", 0), totals.steady(table.allSteady)],
    ],
    totals.notFinished,
  );

/** What the empty vessels weigh more than before, and what the sheet makes of it. */
export function vesselSays(sheet: RunSheet, end: NonNullable<RunSheet["end"]>): Expression {
  const gains = sheet.across(end.gain);
  const explained = explainedBy(sheet);
  return firstOf(
    [
      [is(fn("COUNT", gains), "=", 0), when(isNext(sheet, end.vessel(1)), says.next, NOTHING)],
      [is(fn("MIN", gains), "<", reckon(0, "-", explained)), endWords.lighter],
      [any(...sheet.samples.map((sample) => isMoreThanScale(sheet, end, sample))), endWords.moreThanScale],
      [is(fn("MAX", gains), ">", explained), endWords.scale],
    ],
    when(isExplainedKnown(sheet), endWords.unchanged, NOTHING),
  );
}
