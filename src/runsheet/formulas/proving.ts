import { all, any, anyWhere, isNumber, product, sum, unlessError, when, type Condition } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { degreesApart } from "../options/degrees";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired, FireColumn } from "../sheet/Weighed";
import { countOf } from "./weighings";

/*
 * That nothing left in a firing proves that nothing more leaves only where it was about as hot as what went before, and held. What of it was
 * not noted is not known, and nothing is said of it.
 */

// Colder than an earlier firing by more than this, °C, is another firing. A set-point beside a temperature at the sample lies off by more
// than that of itself, and only far off counts. Common practice, no source.
const AS_HOT_CELSIUS = 20;
const FAR_CELSIUS = 100;
// Held for less than a quarter of the longest hold before it proves nothing, unless that was an hour. Common practice, no source: standards
// heat again for a quarter of an hour to an hour.
const LEAST_PART = 4;
const LONG_MINUTES = 60;

const NEVER = is(1, "=", 0);

const fireRow = (table: Fired, row: number): number => table.rows.fire.first + row - table.rows.first;

/** What was noted of the firings before one. */
const before = (table: Fired, row: number, name: FireColumn): Range =>
  range(fixed(table.fire(table.rows.fire.first)[name]), fixed(table.fire(fireRow(table, row) - 1)[name]));

/** Firing by firing before one, 1 where it was hotter by more than so many °C. */
const isHotter = ({ options }: RunSheet, earlier: Range, here: Cell, celsius: number): Expression =>
  product(fn("ISNUMBER", here), fn("ISNUMBER", earlier), is(earlier, ">", sum(fn("N", here), degreesApart(celsius, options.degrees))));

/** Whether a firing was colder than one before it. Each is held against what is known of both: measured, else set. */
export function isColder(sheet: RunSheet, table: Fired, row: number): Condition {
  if (row === table.rows.first) return NEVER;
  const { set, measured } = table.fire(fireRow(table, row));
  const [sets, measures] = [before(table, row, "set"), before(table, row, "measured")];
  const areMeasured = product(fn("ISNUMBER", measured), fn("ISNUMBER", measures));
  const areSet = product(fn("ISNUMBER", set), fn("ISNUMBER", sets));
  // Of one the set-point alone is known, of the other only what was measured.
  const across = sum(isHotter(sheet, sets, measured, FAR_CELSIUS), isHotter(sheet, measures, set, FAR_CELSIUS));
  const bySets = sum(isHotter(sheet, sets, set, AS_HOT_CELSIUS), product(reckon(1, "-", areSet), across));
  return unlessError(anyWhere(sum(isHotter(sheet, measures, measured, AS_HOT_CELSIUS), product(reckon(1, "-", areMeasured), bySets))));
}

/** Whether a stage held again was colder at the sample than one before it that was set alike. */
export function isColderStage(sheet: RunSheet, table: Fired, row: number): Condition {
  if (row === table.rows.first) return NEVER;
  const { set, measured } = table.fire(fireRow(table, row));
  return unlessError(
    anyWhere(product(isHotter(sheet, before(table, row, "measured"), measured, AS_HOT_CELSIUS), is(before(table, row, "set"), "=", set))),
  );
}

/** Whether a firing was not held, or far shorter than one before it; a stage, than one before it that was set alike. */
export function isShort(table: Fired, row: number, ofAll: "firings" | "alike"): Condition {
  const { held, set } = table.fire(fireRow(table, row));
  const minutes = fn("N", held);
  const isNone = is(minutes, "<=", 0);
  if (row === table.rows.first) return unlessError(all(isNumber(held), isNone));
  const earlier = before(table, row, "held");
  const counts = ofAll === "firings" ? [] : [is(before(table, row, "set"), "=", set)];
  const isFarShorter = product(fn("ISNUMBER", earlier), is(earlier, ">", reckon(LEAST_PART, "*", minutes)), ...counts);
  return unlessError(all(isNumber(held), any(isNone, all(is(minutes, "<", LONG_MINUTES), anyWhere(isFarShorter)))));
}

/** The firings that prove, each by its bit, as one number: 2 for the first, 4 for the second. */
export function provingFirings(sheet: RunSheet, table: Fired): Expression {
  const { first, last } = table.rows;
  const rows = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return sum(...rows.map((row, index) => when(any(isColder(sheet, table, row), isShort(table, row, "firings")), 0, 2 ** (index + 1))));
}

/** 1 where a sample is steady by firings alone that prove nothing: no bit from the one it is steady since to its latest; else 0. */
export function unprovenSample(table: Fired, sample: number): Expression {
  const since = table.steady(sample);
  const upToLatest = fn("MOD", table.proving, reckon(2, "^", reckon(countOf(table, sample), "+", 1)));
  return when(isNumber(since), when(is(upToLatest, "<", reckon(2, "^", fn("N", since))), 1, 0), 0);
}

/** How many samples are. */
export const unproven = ({ samples }: RunSheet, table: Fired): Expression => sum(...samples.map((sample) => unprovenSample(table, sample)));

/** Whether every sample under way is steady, and one of them by what proves nothing. */
export const isUnproven = ({ working, across }: RunSheet, table: Fired): Condition =>
  unlessError(all(is(working.inUse, ">", 0), is(fn("COUNT", across(table.steady)), "=", working.inUse), is(table.allSteady, "=", 0)));
