import { all, firstOf, isNumber, NOTHING, onceNumbers, square, sum, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Call, type Expression } from "../expressions/Expression";
import { STAGE_SHARES, type StageShare } from "../sheet/sharesOf";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired } from "../sheet/Weighed";
import { resultWords } from "../words/resultWords";
import { isTared } from "./ledger";
import { correctionFor } from "./strip";
import { gainVariance } from "./vesselAgain";
import { offByDrying } from "./yetToDry";
import { block, countOf, isGapless, latest } from "./weighings";

/** A stage's place, from 1, whatever is put in above. */
const placeOf = (table: Fired, row: number): Call => fn("ROWS", range(fixed(table.box(table.rows.first, 1)), table.box(row, 1)));

/**
 * What is left after a stage, a fraction of the dry sample; carried on where a stage is not weighed, so that a line drawn through all
 * of them ends at the last. Scale on the vessel, as weighed at the end, is taken to have grown evenly from stage to stage.
 */
export function leftAfter(sheet: RunSheet, table: Fired, row: number, sample: number): Expression {
  const { drying, vessel, end, columns } = sheet;
  const { strip, first } = table.rows;
  const [box, dry] = [table.box(row, sample), drying.net(sample)];
  const correction = correctionFor(sheet, strip, row - first);
  const weighed = correction === undefined ? box : reckon(box, "-", fn("N", correction));
  const scale = end === undefined ? 0 : reckon(reckon(fn("N", end.gain(sample)), "*", placeOf(table, row)), "/", countOf(table, sample));
  const left = reckon(reckon(reckon(weighed, "-", vessel(sample)), "-", scale), "/", dry);
  return when(all(isNumber(box), isNumber(dry)), left, columns.working(row - 1, sample));
}

/** The same as it is printed: nothing where it was not weighed. */
export const leftShown = ({ drying, columns }: RunSheet, table: Fired, row: number, sample: number): Expression =>
  onceNumbers([table.box(row, sample), drying.net(sample)], columns.working(row, sample));

/** What is left after the latest stage, g. */
export const leftNet = ({ drying }: RunSheet, table: Fired, sample: number): Expression =>
  when(
    all(isGapless(table, sample), is(countOf(table, sample), ">", 0), isNumber(drying.net(sample))),
    reckon(latest(table, sample, 1), "*", drying.net(sample)),
    NOTHING,
  );

/** What was lost from a stage to the one before, g; 0 where either is not weighed. */
export const lostInStage = ({ drying, columns }: RunSheet, row: number, sample: number): Expression =>
  reckon(reckon(columns.working(row - 1, sample), "-", columns.working(row, sample)), "*", fn("N", drying.net(sample)));

// Where the oven's temperature is not given, a curve begins at that of a room, °C and °F.
const ROOM = { C: 20, F: 68 } as const;

/** Where a curve begins: at the oven's temperature, at which nothing was left to lose. */
export const startTemperature = ({ settings, options }: RunSheet): Expression => when(isNumber(settings.oven), settings.oven, ROOM[options.degrees]);

/** The temperature of a stage: measured at the sample, else what was set, else that of the stage before. */
export function stageTemperature(sheet: RunSheet, table: Fired, row: number): Expression {
  const { measured, set } = table.fire(table.rows.fire.first + row - table.rows.first);
  return when(isNumber(measured), measured, when(isNumber(set), set, cell(row - 1, sheet.columns.elapsed)));
}

/** Whether a stage was set to the same temperature as the one before: the same stage held again. */
export function isRepeated(table: Fired, row: number): Condition {
  const { fire, first } = table.rows;
  if (row === first) return is(1, "=", 0);
  const at = fire.first + row - first;
  const [here, before] = [table.fire(at).set, table.fire(at - 1).set];
  return all(is(fn("COUNT", here, before), "=", 2), is(here, "=", before));
}

/** Whether the run is over: every stage weighed, or the empty vessel weighed again; then how many stages there were, else 0. */
export function stagesDone(sheet: RunSheet, table: Fired, isFull: Condition): Expression {
  const { end, across, working } = sheet;
  const weighed = fn("COUNT", block(sheet, table));
  const whole = all(is(weighed, ">", 0), is(working.inUse, ">", 0), is(fn("MOD", weighed, fn("MAX", 1, working.inUse)), "=", 0));
  const isOver = end === undefined ? isFull : fn("OR", isFull, all(whole, is(fn("COUNT", across(end.vessel)), ">", 0)));
  return when(isOver, reckon(weighed, "/", working.inUse), 0);
}

const rowOf = (table: Fired, name: StageShare): number => table.rows.first + STAGE_SHARES.indexOf(name);

/** What a stage lost, of the dry sample. */
export function stageShare({ drying, columns }: RunSheet, table: Fired, name: StageShare, sample: number): Expression {
  const row = rowOf(table, name);
  const needed = [table.box(row, sample), drying.net(sample), ...(row === table.rows.first ? [] : [table.box(row - 1, sample)])];
  return onceNumbers(needed, reckon(columns.working(row - 1, sample), "-", columns.working(row, sample)));
}

/**
 * ± 95 % of what a stage lost by weighing alone: 2 u(r), r = (before - after) / dry. The two readings of a later stage are its own,
 * u(r) = u / dry sqrt(2 + 2 r^2), the last term from the dry sample's two; the first stage shares a reading with the dry sample,
 * u / dry sqrt((1 - r)^2 + 1 + r^2); on a tared balance no vessel reading comes in, which halves the last term of the one and drops
 * that of the other. A vessel weighed again gives each of k stages gain / k, whose two readings add 2 / k^2; where in the run it grew is
 * not known, which adds its own variance (gainVariance) (GUM, JCGM 100:2008, 5.1.2).
 */
export function stagePlusMinus(sheet: RunSheet, table: Fired, name: StageShare, sample: number): Expression {
  const { u } = sheet.working;
  const [r, row] = [sheet.share(name, sample), rowOf(table, name)];
  const vessel = when(isTared(sheet, sample), 0, square(r));
  const ofReadings = row === table.rows.first ? sum(square(reckon(1, "-", r)), 1, vessel) : sum(2, square(r), vessel);
  const { end } = sheet;
  const again = end && when(isNumber(end.vessel(sample)), reckon(2, "/", square(countOf(table, sample))), 0);
  const scale = end && gainVariance(sheet, sample, { share: reckon(1, "/", countOf(table, sample)) });
  const variance = sum(reckon(square(u), "*", again === undefined ? ofReadings : sum(ofReadings, again)), ...(scale === undefined ? [] : [scale]));
  const ofWeighing = reckon(reckon(2, "*", fn("SQRT", variance)), "/", sheet.drying.net(sample));
  return onceNumbers([r, u], sum(ofWeighing, offByDrying(sheet, name, sample)));
}

/** What a stage is called: its number, and what the person says left in it, or the temperature it was heated to. */
export function stageName(table: Fired, name: StageShare, unit: "C" | "F"): Expression {
  const at = table.rows.fire.first + STAGE_SHARES.indexOf(name);
  const { seen, set, measured } = table.fire(at);
  const called = firstOf(
    [
      [is(fn("COUNTA", seen), ">", 0), seen],
      [isNumber(measured), resultWords.toTemperature(measured, unit)],
      [isNumber(set), resultWords.toTemperature(set, unit)],
    ],
    resultWords.unnamedStage,
  );
  return resultWords.stage(resultWords.shares[name], called);
}
