import { all, any, countWhere, isNumber, NOTHING, product, sum, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, joined, range, reckon, type Call, type Cell, type Expression, type Range } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { CLOCK } from "../sheet/Columns";

// 2000-01-01: what lies between a clock time, below 1, and a date of our days is a bare number such as 9.30 or 900.
export const FIRST_DATE = 36_526;
const MINUTES_PER_DAY = 1440;
// Clocks are read to the second at best, so hundredths of a minute are enough.
const DECIMALS_OF_A_MINUTE = 2;

/**
 * Whether a cell holds a clock time, a fraction of a day from 0 to below 1, or a date with one. A whole day is a date without a time, which
 * spreadsheets make of 9-10 and 9/30; midnight of a day is typed as 0:01.
 */
export const isClock = (at: Cell): Call =>
  when(isNumber(at), when(is(at, "<", 1), is(at, ">=", 0), all(is(at, ">=", FIRST_DATE), is(fn("MOD", at, 1), ">", 0))), false);

/** When round 1 was, in days: with its date where it carries one or the sheet's date is given; nothing without any date. */
export function startOfClock({ drying, setup }: RunSheet): Expression {
  const first = cell(drying.rows.first, CLOCK);
  const dated = when(is(first, ">=", FIRST_DATE), first, when(isNumber(setup.date), reckon(fn("INT", setup.date), "+", first), NOTHING));
  return when(isClock(first), dated, NOTHING);
}

/**
 * Minutes since round 1; a row without a time stands where it is planned, so that the times rise and a chart has no gap. A date with a time counts straight from the
 * dated round 1; a bare clock time counts on from the round before: t = t(so far) + ((t(clock) - t(so far)) mod 1440), past midnight.
 * Where round 1 has no date and a later round does, the days between are not known, and the time stands still rather than lose them.
 */
export function elapsed(sheet: RunSheet, row: number): Expression {
  const { first } = sheet.drying.rows;
  const [start, clock, above] = [fixed(cell(first, CLOCK)), cell(row, CLOCK), cell(row - 1, sheet.columns.elapsed)];
  const before = row < first + 2 ? above : when(isNumber(cell(row - 1, CLOCK)), above, latestAbove(sheet, row));
  const planned = reckon(above, "+", fn("MAX", 1, fn("N", sheet.settings.interval)));
  const begun = fixed(cell(first, sheet.columns.elapsed));
  if (sheet.options.timing === "minutes") {
    if (row === first) return when(isNumber(clock), 0, NOTHING);
    return when(isNumber(begun), when(isNumber(clock), reckon(clock, "-", start), planned), NOTHING);
  }
  if (row === first) return when(isClock(clock), 0, NOTHING);
  const rounded = (value: Expression): Call => fn("ROUND", value, DECIMALS_OF_A_MINUTE);
  const minutes = (from: Expression): Expression => reckon(reckon(clock, "-", from), "*", MINUTES_PER_DAY);
  const onward = reckon(before, "+", fn("MOD", rounded(reckon(minutes(start), "-", before)), MINUTES_PER_DAY));
  const dated = when(isNumber(sheet.working.start), rounded(minutes(sheet.working.start)), before);
  return when(isNumber(begun), when(isClock(clock), when(is(clock, "<", 1), onward, dated), planned), NOTHING);
}

/** The latest of the times above that was noted, where the row just above is left out and stands where it was planned. */
function latestAbove({ drying, columns }: RunSheet, row: number): Expression {
  const down = (column: number): Range => range(fixed(cell(drying.rows.first, column)), cell(row - 1, column));
  return fn("SUMPRODUCT", fn("MAX", product(fn("ISNUMBER", down(CLOCK)), down(columns.elapsed))));
}

const HUNDREDTHS = 100;
const PER_THOUSAND = 1000;

/**
 * Cell by cell, 1 where a number of minutes is a clock time that was typed in their place: a fraction of a day that comes to whole minutes and
 * is no decimal such as 0.25, or a day with a time.
 */
export function isClockForMinutes(of: Cell | Range): Expression {
  const off = (per: number): Expression =>
    reckon(fn("ABS", reckon(reckon(of, "*", per), "-", fn("ROUND", reckon(of, "*", per), 0))), "*", PER_THOUSAND);
  const bare = product(is(of, ">", 0), is(of, "<", 1), is(off(MINUTES_PER_DAY), "<", 1), is(off(HUNDREDTHS), ">", 1));
  return sum(bare, product(is(of, ">=", FIRST_DATE), is(off(1), ">", 1)));
}

/** Whether the rounds of a run in minutes hold a clock time: one that can be nothing else, or several within the first minute. */
export function hasClockForMinutes({ drying: { rows } }: RunSheet): Condition {
  const clocks = range(fixed(cell(rows.first, CLOCK)), fixed(cell(rows.total, CLOCK)));
  const within = all(is(fn("COUNT", clocks), ">", 1), is(fn("IFERROR", fn("MAX", clocks), 1), "<", 1));
  // A text among them is an error in arithmetic, and told by itself.
  return any(within, is(fn("IFERROR", countWhere(isClockForMinutes(clocks)), 0), ">", 0));
}

/** "9:05" of a time in days, whatever the language of the spreadsheet. */
export const timeText = (time: Expression): Expression => joined(fn("HOUR", time), ":", fn("RIGHT", joined("0", fn("MINUTE", time)), 2));
