import { all, any, anyWhere, notNumber, product, sum, when } from "../../expressions/choices";
import { cell, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { lastRowWhere } from "../../formulas/cellsNamed";
import { CLOCK } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired, FireColumn } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { isWholeDay } from "../timesCheck";
import { step, type Step } from "../Check";

const words = checkWords.times;
const MINUTES_PER_DAY = 1440;
// Of two bare times farther apart the later is rather meant to be the earlier; own bound, as between rounds.
const HALF_A_DAY = reckon(1, "/", 2);

/**
 * Whether the times of the fires follow one another and the rounds before them. A bare clock time up to half a day after a bare one, past midnight
 * too, follows it; any other may be of the next day, so it is questioned till its date is typed. A date is held against a date, and against the
 * rounds where theirs is known.
 */
export const fireOrder = (sheet: RunSheet): Step[] => [
  ...sheet.fired.flatMap((table, index) => {
    const before = index === 0 ? lastRound(sheet) : lastOpened(sheet.fired[index - 1]);
    return [dayAlone(table), ...(before === undefined ? [] : [firstFire(table, before)]), ...laterFires(table)];
  }),
  withinFirings(sheet.fired),
  ...sheet.fired.map(held),
];

/** The boxes of one column of a fire table; references that are not fixed are shorter, and a cell holds so many characters. */
export const column = ({ rows: { fire }, fire: inRow }: Fired, name: FireColumn, from = fire.first, to = fire.last): Range =>
  range(inRow(from)[name], inRow(to)[name]);

interface Before {
  readonly time: Expression;
  /** A bare time with the date that it has by other cells, 0 where that is not known; undefined where no other cell has it. */
  readonly dated?: Expression;
}

function lastRound({ drying, columns, options, working }: RunSheet): Before | undefined {
  if (options.timing === "minutes") return undefined;
  const { first, total } = drying.rows;
  const down = (at: number): Range => range(cell(first, at), cell(total, at));
  const clocks = down(CLOCK);
  const count = fn("MAX", 1, fn("COUNT", clocks));
  const dated = reckon(working.start, "+", reckon(fn("INDEX", down(columns.elapsed), count), "/", MINUTES_PER_DAY));
  return { time: fn("INDEX", clocks, count), dated: fn("IFERROR", dated, 0) };
}

function lastOpened(table: Fired | undefined): Before | undefined {
  if (table === undefined) return undefined;
  const opened = column(table, "opened");
  const place = fn("MAX", 1, reckon(lastRowWhere(fn("ISNUMBER", opened), opened), "-", reckon(fn("ROW", opened.from), "-", 1)));
  return { time: fn("INDEX", opened, place) };
}

/** The first firing lit against what was done before it. */
function firstFire(table: Fired, { time, dated }: Before): Step {
  const { lit } = table.fire(table.rows.fire.first);
  // Of times with dates any earlier one is before; of a bare lit and a time with its date neither can be told.
  const within = (reach: Expression): Expression => all(is(lit, "<", time), is(time, "<", sum(lit, reach)));
  const isBare = is(lit, "<", 1);
  const isBefore =
    dated === undefined ? within(when(isBare, HALF_A_DAY, lit)) : when(isBare, within(HALF_A_DAY), is(lit, "<", when(is(time, "<", 1), dated, time)));
  return step(when(is(fn("COUNT", lit, time), "=", 2), isBefore, false), words.firedBefore(fn("ROW", lit)));
}

/** Each firing lit against the opening of the one above; where that is not noted, against when it went quiet. */
function laterFires(table: Fired): Step[] {
  const { first, last } = table.rows.fire;
  if (last === first) return [];
  const lit = column(table, "lit", first + 1, last);
  const [opened, quiet] = (["opened", "quiet"] as const).map((name) => column(table, name, first, last - 1)) as [Range, Range];
  // A bare time after a dated one may be of any day, and is farther from it than half a day in numbers.
  const isBefore = (one: Range): Expression =>
    product(fn("ISNUMBER", one), is(lit, "<", one), sum(is(one, "<", sum(lit, HALF_A_DAY)), is(lit, ">=", 1)));
  const holds = product(fn("ISNUMBER", lit), sum(isBefore(opened), product(notNumber(opened), isBefore(quiet))));
  return [step(anyWhere(holds), words.litBefore(lastRowWhere(is(holds, ">", 0), lit)))];
}

// More minutes than lie between any two times, dates among them.
const ALL_MINUTES = 100_000_000;

/** Lit, quiet and opened of each firing one after another, as far as their days are known. */
function withinFirings(tables: readonly Fired[]): Step {
  const rows = tables.map((table) => lastRowWhere(is(isCrossed(table), ">", 0), column(table, "lit")));
  return step(any(...tables.map((table) => anyWhere(isCrossed(table)))), checkWords.opened.notInOrder(fn("MAX", ...rows)));
}

/**
 * Firing by firing, above 0 where the times contradict one another. A date is held against a date. A bare time may be of any day, but a bare quiet
 * lies between two dates, and of quiet and opened, both bare, that of quiet comes first after lit. Whole minutes, since a date leaves a time fewer
 * decimals.
 */
function isCrossed(table: Fired): Expression {
  const [lit, quiet, opened] = (["lit", "quiet", "opened"] as const).map((name) => column(table, name)) as [Range, Range, Range];
  const isDated = (of: Range): Expression => is(of, ">=", 1);
  const minutesTo = (of: Range): Expression => fn("ROUND", reckon(reckon(of, "-", lit), "*", MINUTES_PER_DAY), 0);
  const areDatedBack = sum(product(isDated(quiet), is(quiet, "<", lit)), product(isDated(opened), sum(is(opened, "<", quiet), is(opened, "<", lit))));
  const toOpened = fn("MOD", minutesTo(opened), sum(MINUTES_PER_DAY, product(ALL_MINUTES, isDated(opened))));
  const isQuietLater = is(fn("MOD", minutesTo(quiet), MINUTES_PER_DAY), ">", toOpened);
  const areThere = [lit, quiet, opened].map((of) => fn("ISNUMBER", of));
  return sum(areDatedBack, product(...areThere, is(quiet, "<", 1), isQuietLater));
}

/** Held no longer than from lit to opened, on the same day or the next, or by their dates. */
function held(table: Fired): Step {
  const [lit, opened, atHeat] = [column(table, "lit"), column(table, "opened"), column(table, "held")];
  const days = sum(reckon(opened, "-", lit), is(opened, "<", lit));
  // A minute more, since clocks are read to the minute.
  const isLonger = is(atHeat, ">", sum(reckon(days, "*", MINUTES_PER_DAY), 1));
  // What is blank there is held for 0 minutes, and what is no number is told before.
  const holds = product(fn("ISNUMBER", lit), fn("ISNUMBER", opened), areAlike(lit, opened), isLonger);
  return step(anyWhere(holds), words.heldLonger(lastRowWhere(holds, atHeat)));
}

/** 1 where both have a date or neither, else 0; by a sum, since Gnumeric compares no two blocks of TRUE and FALSE cell by cell. */
export const areAlike = (one: Range, other: Range): Expression => fn("ABS", reckon(sum(is(one, "<", 1), is(other, "<", 1)), "-", 1));

/** Temperatures and minutes held stand between the clocks, and lie far below any date. */
function dayAlone(table: Fired): Step {
  const noted = range(column(table, "lit").from, column(table, "opened").to);
  return step(anyWhere(isWholeDay(noted)), words.dayAlone(lastRowWhere(isWholeDay(noted), noted)));
}
