import {
  all,
  any,
  firstOf,
  isNumber,
  NOTHING,
  noNumber,
  notNumber,
  placeWhere,
  product,
  unlessError,
  when,
  type Condition,
} from "../../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { optionBounds } from "../../options/optionBounds";
import { APPARATUS } from "../../sheet/caughtRows";
import { CLOCK } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired, Weighed } from "../../sheet/Weighed";
import { headWords } from "../../words/headWords";
import { weighingWords } from "../../words/weighingWords";
import { hasClockForMinutes, timeText } from "../clock";
import { isAbsent } from "./absence";
import { isUnproven } from "../proving";
import { isFull } from "./rowSays";
import { block, isGapless, isNotDry } from "../weighings";

const words = headWords.next;
const { notYet, tooSoon, tooCoarse } = weighingWords.verdicts;
const STILL_LOSING = [notYet, tooSoon, tooCoarse];

/**
 * Rounds, or firings, down to the first that a sample under way has no weight in, whatever stands below it. A table that is full has its
 * total as that, where no weight stands.
 */
const roundsDone = (sheet: RunSheet, table: Weighed): Expression => {
  const lacking = sheet.samples.map((sample) => {
    const isUnderWay = is(fn("COUNT", sheet.vessel(sample), sheet.drying.boxes(sample)), ">", 0);
    return reckon(1, "-", product(notNumber(table.boxes(sample)), isUnderWay));
  });
  return reckon(placeWhere(reckon(1, "-", product(...lacking))), "-", 1);
};

/** The same where the next box stands in that table, by its row. */
const doneBefore = ({ working }: RunSheet, { box, rows }: Weighed): Expression => reckon(working.next, "-", fn("ROW", fixed(box(rows.first, 1))));

/** Whether a weight stands below one that is left out. */
const isLeftOut = ({ samples }: RunSheet, table: Weighed): Condition => any(...samples.map((sample) => is(isGapless(table, sample), "=", false)));

/** Samples under way: those with a vessel, or with any weight. */
export function samplesInUse({ samples, drying, vessel }: RunSheet): Expression {
  return samples
    .map((sample): Expression => when(is(fn("COUNT", vessel(sample), drying.boxes(sample)), ">", 0), 1, 0))
    .reduce((sum, one) => reckon(sum, "+", one));
}

const needsVessels = (sheet: RunSheet): Condition => {
  const { drying, across, vessel, options } = sheet;
  return all(is(fn("COUNT", block(sheet, drying)), "=", 0), is(fn("COUNT", across(vessel)), "<", options.replicates));
};

/** Samples with a weight and no vessel, and one that was added to a run under way, each with the box of its vessel. */
const withoutVessel = ({ samples, drying, vessel, columns, rows, options }: RunSheet): readonly (readonly [Condition, Cell])[] =>
  samples.map((sample) => [
    sample === options.addedSample ? noNumber(vessel(sample)) : all(noNumber(vessel(sample)), is(fn("COUNT", drying.boxes(sample)), ">", 0)),
    fixed(columns.box(rows.drying.vessel, sample)),
  ]);

const isDrying = (sheet: RunSheet): Condition => {
  const [first] = sheet.fired;
  return first === undefined ? isNotDry(sheet) : all(isNotDry(sheet), is(fn("COUNT", block(sheet, first)), "=", 0));
};

const isFiring = (sheet: RunSheet, table: Fired, after: Fired | undefined): Condition => {
  const isNotSteady = is(table.allSteady, "=", 0);
  return after === undefined ? isNotSteady : all(isNotSteady, is(fn("COUNT", block(sheet, after)), "=", 0));
};

const FIRST_RECEIVER = APPARATUS.length;

/** The steps that a run with liquids caught has besides: the apparatus weighed empty before the fire, and again after the last one. */
function caughtSteps(sheet: RunSheet): Readonly<Record<"before" | "after", { readonly due: Condition; readonly row: Expression }>> | undefined {
  const { caught, charring, across, working } = sheet;
  if (caught === undefined || charring === undefined) return undefined;
  const empty = across((sample) => caught.before(FIRST_RECEIVER, sample));
  const isUnfired = is(fn("COUNT", block(sheet, charring)), "=", 0);
  // What was weighed after the fire and never before it gives no gain, which its check tells: of the others one must lack its second weight.
  const every = (of: (sample: number) => Range): Range => range(of(1).from, of(sheet.options.replicates).to);
  const [befores, afters] = [fn("COUNT", every(caught.befores)), fn("COUNT", every(caught.afters))];
  const pairs = fn("SUM", across(caught.pairs));
  const isAfterDue = all(is(fn("COUNT", across(caught.liquids)), "<", working.inUse), any(is(befores, ">", pairs), is(afters, "=", pairs)));
  return {
    before: { due: all(isUnfired, is(fn("COUNT", empty), "<", working.inUse)), row: fn("ROW", caught.before(0, 1)) },
    after: { due: isAfterDue, row: fn("ROW", caught.after(0, 1)) },
  };
}

/** Whether a sample's empty vessel is still to be weighed again: of each, since what is found is taken off its own sample alone. */
const areVesselsLacking = ({ across, working }: RunSheet, end: NonNullable<RunSheet["end"]>): Condition =>
  is(fn("COUNT", across(end.vessel)), "<", fn("MAX", 1, working.inUse));

/** The row of the next box; 0 when all is weighed, and where a table is full. */
export function nextRow(sheet: RunSheet): Expression {
  const { drying, charring, ashing, stages, heating, end, rows, columns } = sheet;
  const steps = caughtSteps(sheet);
  const row = (table: Weighed): Expression =>
    when(isFull(sheet, table), 0, reckon(fn("ROW", fixed(table.box(table.rows.first, 1))), "+", roundsDone(sheet, table)));
  const ended = end === undefined ? 0 : when(areVesselsLacking(sheet, end), fn("ROW", end.vessel(1)), 0);
  return firstOf(
    [
      [needsVessels(sheet), fn("ROW", fixed(columns.box(rows.drying.vessel, 1)))],
      [isAbsent(sheet), 0],
      [any(...withoutVessel(sheet).map(([isMissing]) => isMissing)), fn("ROW", fixed(columns.box(rows.drying.vessel, 1)))],
      [isDrying(sheet), row(drying)],
      ...(steps === undefined ? [] : ([[steps.before.due, steps.before.row]] as const)),
      ...(charring === undefined ? [] : ([[isFiring(sheet, charring, ashing), row(charring)]] as const)),
      ...(ashing === undefined ? [] : ([[isFiring(sheet, ashing, undefined), row(ashing)]] as const)),
      ...(stages === undefined ? [] : ([[isFiring(sheet, stages, undefined), row(stages)]] as const)),
      ...(heating === undefined ? [] : ([[isFiring(sheet, heating, undefined), row(heating)]] as const)),
      ...(steps === undefined ? [] : ([[steps.after.due, steps.after.row]] as const)),
    ],
    ended,
  );
}

/**
 * The next step in words, with about when a round is due.
 * @param cannotBe whether weights contradict one another, so that they are put right before anything is heated on
 */
export function nextSays(sheet: RunSheet, cannotBe: Condition): Expression {
  const { drying, charring, ashing, stages, heating, end, working } = sheet;
  const { options } = sheet;
  const [heated] = sheet.fired;
  const steps = caughtSteps(sheet);
  const roundsFull = options.weighIns >= optionBounds.weighIns.atMost ? words.roundsAtLimit : words.roundsFull(lastRow(drying));
  const fire = (table: Fired, what: string, firings: number, most: number): Expression => {
    const done = doneBefore(sheet, table);
    const fireRow = reckon(fn("ROW", fixed(table.fire(table.rows.fire.first).lit)), "+", done);
    const said = words.fire(what, reckon(done, "+", 1), fireRow, working.next);
    const full = firings >= most ? words.firingsAtLimit : words.firingsFull;
    // Of a full table only what still loses is fired again, till its vessel is emptied; a gain, or what cannot be judged, is put right first.
    const isStillLosing = any(...STILL_LOSING.map((word) => is(fn("COUNTIF", sheet.across(table.steady), word), ">", 0)), isUnproven(sheet, table));
    const isInVessel = end && noNumber(sheet.across(end.vessel));
    const isOfStages = stages !== undefined && table.rows === stages.rows;
    return when(
      isFull(sheet, table),
      isOfStages ? full : when(isInVessel === undefined ? isStillLosing : all(isStillLosing, isInVessel), full, words.mend),
      said,
    );
  };
  const complete =
    charring === undefined || ashing === undefined ? words.complete : when(is(charring.allSteady, "=", 0), words.charUnproven, words.complete);
  const ended = end === undefined ? complete : when(areVesselsLacking(sheet, end), words.vesselAgain(working.next), complete);
  return firstOf(
    [
      [needsVessels(sheet), words.vessels(working.next)],
      [isAbsent(sheet), words.absent],
      [cannotBe, words.mend],
      ...withoutVessel(sheet).map(([isMissing, box]) => [isMissing, words.vesselMissing(nameOf(box))] as const),
      ...(heated === undefined ? [] : ([[all(isNotDry(sheet), is(fn("COUNT", block(sheet, heated)), ">", 0)), words.mend]] as const)),
      ...(options.replicates === 1 ? [] : sheet.fired.filter((table) => table !== stages).map((table) => leftBehind(sheet, table))),
      [all(isDrying(sheet), isFull(sheet, drying)), roundsFull],
      [all(isDrying(sheet), isLeftOut(sheet, drying)), words.leftOut(working.next)],
      [all(isDrying(sheet), isHalfWeighed(sheet, drying)), words.finishRound(reckon(doneBefore(sheet, drying), "+", 1), working.next)],
      [isDrying(sheet), words.round(reckon(doneBefore(sheet, drying), "+", 1), due(sheet), working.next)],
      ...(steps === undefined ? [] : ([[steps.before.due, words.receivers(working.next)]] as const)),
      ...(charring === undefined
        ? []
        : ([[isFiring(sheet, charring, ashing), fire(charring, words.charring, options.charFirings, optionBounds.charFirings.atMost)]] as const)),
      ...(ashing === undefined
        ? []
        : ([[isFiring(sheet, ashing, undefined), fire(ashing, words.ashing, options.ashFirings, optionBounds.ashFirings.atMost)]] as const)),
      ...(stages === undefined
        ? []
        : ([[isFiring(sheet, stages, undefined), fire(stages, words.stage, options.stages ?? 0, optionBounds.stages.atMost)]] as const)),
      ...(heating === undefined
        ? []
        : ([[isFiring(sheet, heating, undefined), fire(heating, words.heating, options.charFirings, optionBounds.charFirings.atMost)]] as const)),
      ...(steps === undefined ? [] : ([[steps.after.due, words.caught(working.next)]] as const)),
    ],
    ended,
  );
}

/**
 * Of a table in which all samples are steady but one that has fewer weights: broken perhaps, and then the run would wait for it without end. Steady
 * since firing k the others have k weights or more, so that fewer than k for each of all are its own.
 */
function leftBehind(sheet: RunSheet, table: Fired): readonly [Condition, Expression] {
  const { working, across, drying } = sheet;
  const [steady, dry] = [across(table.steady), across(drying.net)];
  const isOneOpen = all(
    is(working.inUse, ">", 1),
    is(reckon(fn("COUNT", steady), "+", 1), "=", working.inUse),
    is(fn("COUNT", block(sheet, table)), "<", reckon(working.inUse, "*", fn("MAX", steady))),
  );
  // Of samples that cannot be judged nobody knows which waits.
  return [unlessError(isOneOpen), words.leftBehind(placeWhere(product(fn("ISNUMBER", dry), notNumber(steady))))];
}

/** The last row of a table, rows that were put in above its total among them. */
const lastRow = ({ box, rows }: Weighed): Expression => reckon(fn("ROW", fixed(box(rows.total, 1))), "-", 1);

const isHalfWeighed = (sheet: RunSheet, table: Weighed): Condition => is(fn("MOD", fn("COUNT", block(sheet, table)), sheet.working.inUse), ">", 0);

const MINUTES_PER_DAY = 1440;

/** When the next round is due: the clock of the last one and the planned minutes between. */
function due(sheet: RunSheet): Expression {
  const { drying, settings, options, columns } = sheet;
  const { first, total } = drying.rows;
  const clocks = range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)));
  const done = roundsDone(sheet, drying);
  const last = fn("INDEX", clocks, done);
  const canTell = all(is(done, ">", 0), isNumber(settings.interval));
  if (options.timing === "minutes") {
    const minutes = fn("INDEX", range(fixed(cell(first, columns.elapsed)), fixed(cell(total, columns.elapsed))), done);
    return when(
      all(canTell, is(hasClockForMinutes(sheet), "=", false)),
      when(isNumber(minutes), words.minute(reckon(minutes, "+", settings.interval)), NOTHING),
      NOTHING,
    );
  }
  const time = fn("MOD", reckon(last, "+", reckon(settings.interval, "/", MINUTES_PER_DAY)), 1);
  // Half a minute, so that 9:59:59.99 of binary rounding is 10:00.
  const rounded = reckon(fn("ROUND", reckon(time, "*", MINUTES_PER_DAY), 0), "/", MINUTES_PER_DAY);
  return when(canTell, when(isNumber(last), words.about(timeText(rounded)), NOTHING), NOTHING);
}
