import { all, anyWhere, isNumber, notNumber, placeWhere, product, sum, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, joined, range, reckon, type Expression, type Range } from "../expressions/Expression";
import { nameBelow, nameOf } from "../expressions/formulaText";
import { lastCellWhere, lastRowWhere } from "../formulas/cellsNamed";
import { FIRST_DATE, hasClockForMinutes, isClockForMinutes, timeText } from "../formulas/clock";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.times;

const MINUTES_PER_HOUR = 60;
const DAY_MINUTES = 24 * MINUTES_PER_HOUR;
const MONTH_MINUTES = 31 * DAY_MINUTES;
// A bare time so many minutes after the one before is questioned: four intervals and an hour, at most half a day, where it may be
// the other half of the clock; own bounds, no source.
const INTERVALS = 4;
const HALF_A_DAY = 720;
const QUARTER_MORE = 4;
// A hundredth of a day is no time that people weigh at, but for the quarters; 0.30 typed for 0:30 is 7:12.
const TYPED_DECIMALS = 100;
const QUARTERS = 4;
// Between 0.59 and 0.60, the first that cannot be minutes.
const MOST_DECIMALS = reckon(595, "/", 1000);
const ROUNDING_PER_MILLION = 1_000_000;

/** Whether the times of the rounds follow one another as planned; what is no time in a clock box is told before (boxesFirst). */
export function timesCheck(sheet: RunSheet): Check {
  const { first, total } = sheet.drying.rows;
  const clocks = down(CLOCK, first, total);
  return { silentWhile: is(fn("COUNTA", clocks), "=", 0), steps: sheet.options.timing === "minutes" ? ofMinutes(sheet) : ofClock(sheet) };
}

const down = (column: number, from: number, to: number): Range => range(fixed(cell(from, column)), fixed(cell(to, column)));

/** A day without a time of day: what a spreadsheet makes of 9-10 or 9/30. ROUND stands for INT, which takes no range everywhere. */
export const isWholeDay = (of: Range): Expression => product(fn("ISNUMBER", of), is(of, ">=", FIRST_DATE), is(fn("ROUND", of, 0), "=", of));

const wholeDay = (clocks: Range): Step => step(anyWhere(isWholeDay(clocks)), words.wholeDay(lastNameWhere(isWholeDay(clocks), clocks)));

/** A column of its own needs only the row, so that the formula fits a cell with every table of a sheet in it. */
function lastNameWhere(holds: Expression, clocks: Range): Expression {
  if (clocks.from.column !== clocks.to.column) return lastCellWhere(holds, clocks);
  return nameBelow(clocks.from, reckon(lastRowWhere(holds, clocks), "-", fn("ROW", clocks.from)));
}

function ofMinutes(sheet: RunSheet): Step[] {
  const { first, total } = sheet.drying.rows;
  const later = down(CLOCK, first + 1, total + 1);
  const clocks = down(CLOCK, first, total);
  const notAfter = product(areTimed(later, clocks), is(gaps(sheet), "<=", 0));
  // Of several within the first minute the last is named.
  const isClockOrFirst = reckon(is(sum(isClockForMinutes(clocks), product(is(clocks, ">", 0), is(clocks, "<", 1))), ">", 0), "*", 1);
  return [
    step(hasClockForMinutes(sheet), words.clockForMinutes(lastNameWhere(isClockOrFirst, clocks))),
    step(anyWhere(notAfter), words.minutesNotAfter(nameBelow(cell(first + 1, CLOCK), before(placeWhere(notAfter))))),
    // Round 1 is the zero of all minutes; another number there is one of a clock more often than of minutes.
    step(is(fn("N", clocks.from), ">", 0), words.firstMinute(nameOf(cell(first, CLOCK)))),
    tooSoon(sheet),
    farInMinutes(sheet),
  ];
}

/** From how many minutes between rounds on a slip is asked about. */
const farFrom = (planned: Expression): Expression =>
  fn("MAX", fn("MIN", sum(reckon(INTERVALS, "*", planned), MINUTES_PER_HOUR), HALF_A_DAY), sum(planned, reckon(planned, "/", QUARTER_MORE)));

/** Far more minutes after the round before than planned, as seconds are. One that is followed by a round as planned was a pause. */
function farInMinutes(sheet: RunSheet): Step {
  const { first, total } = sheet.drying.rows;
  const [later, earlier, next] = [down(CLOCK, first + 1, total + 1), down(CLOCK, first, total), down(CLOCK, first + 2, total + 2)];
  const [gap, planned] = [gaps(sheet), fn("N", sheet.settings.interval)];
  const far = product(areTimed(later, earlier), is(gap, ">", farFrom(planned)), notNumber(next));
  const minutes = reckon(fn("INDEX", later, placeWhere(far)), "-", fn("INDEX", earlier, placeWhere(far)));
  return step(anyWhere(far), words.farInMinutes(nameBelow(cell(first + 1, CLOCK), before(placeWhere(far))), minutes, planned));
}

/** Round by round, 1 where both it and the one before have a time: one that is left out stands where it was planned, and tells of no other. */
const areTimed = (later: Range, earlier: Range): Expression => product(fn("ISNUMBER", later), fn("ISNUMBER", earlier));

/** The last round sooner after the one before than half of what was planned. One that is followed by another counts for nothing. */
function tooSoon(sheet: RunSheet): Step {
  const { first, total } = sheet.drying.rows;
  const [later, earlier, next] = [down(CLOCK, first + 1, total + 1), down(CLOCK, first, total), down(CLOCK, first + 2, total + 2)];
  const [gap, planned] = [gaps(sheet), fn("N", sheet.settings.interval)];
  const soon = product(areTimed(later, earlier), is(gap, ">", 0), is(reckon(2, "*", gap), "<", planned), notNumber(next));
  const { elapsed } = sheet.columns;
  const [here, above] = [down(elapsed, first + 1, total + 1), down(elapsed, first, total)].map((of) => fn("INDEX", of, placeWhere(soon)));
  const minutes = fn("ROUND", reckon(here ?? 0, "-", above ?? 0), 0);
  return step(anyWhere(soon), words.tooSoon(nameBelow(cell(first + 1, CLOCK), before(placeWhere(soon))), minutes, planned));
}

/** Minutes from each round to the next; text while round 1 has no time. */
const gaps = ({ drying: { rows }, columns }: RunSheet): Expression =>
  reckon(down(columns.elapsed, rows.first + 1, rows.total + 1), "-", down(columns.elapsed, rows.first, rows.total));

const placeOrNone = (holds: Expression): Expression => fn("IFERROR", placeWhere(holds), 0);

const before = (place: Expression): Expression => reckon(place, "-", 1);

function ofClock(sheet: RunSheet): Step[] {
  const { drying, setup, working, settings, columns } = sheet;
  const { first, total } = drying.rows;
  const [start, later, every] = [cell(first, CLOCK), down(CLOCK, first + 1, total + 1), down(CLOCK, first, total)];
  const next = down(CLOCK, first + 2, total + 2);
  const gap = gaps(sheet);
  const bare = is(later, "<", 1);
  const timed = areTimed(later, every);
  const planned = fn("N", settings.interval);
  const typedAsDecimal = (of: Expression): Condition => {
    const apart = (per: number): Expression => fn("ABS", reckon(reckon(of, "*", per), "-", fn("ROUND", reckon(of, "*", per), 0)));
    const millionths = (per: number): Expression => reckon(apart(per), "*", ROUNDING_PER_MILLION);
    return all(is(of, ">", 0), is(of, "<", 1), is(millionths(TYPED_DECIMALS), "<", 1), is(millionths(QUARTERS), ">", 1));
  };
  const far = farFrom(planned);
  const second = cell(first + 1, CLOCK);
  const offPlan = is(fn("ABS", reckon(gap, "-", planned)), ">", reckon(planned, "/", 2));
  const at = (holds: Expression): Expression => nameBelow(second, before(placeWhere(holds)));
  const valueAt = (of: Range, holds: Expression): Expression => fn("INDEX", of, placeWhere(holds));
  const minutesAt = (holds: Expression): Expression =>
    reckon(
      fn("INDEX", down(columns.elapsed, first + 1, total + 1), placeWhere(holds)),
      "-",
      fn("INDEX", down(columns.elapsed, first, total), placeWhere(holds)),
    );
  const decimal = (name: Expression, value: Expression): Expression => {
    const typed = fn("FIXED", value, 2, true);
    return words.decimal(name, timeText(value), typed, meantBy(value));
  };
  const holds = {
    undated: product(fn("ISNUMBER", later), is(later, ">=", FIRST_DATE)),
    offPlan: product(timed, bare, offPlan),
    notAfter: product(timed, is(gap, "<=", 0)),
    far: product(timed, bare, is(gap, ">", far)),
    longAfter: product(timed, is(gap, ">", MONTH_MINUTES)),
    // By their dates far apart, and no round after it: one as planned shows that it was no slip of the date, or makes it count for nothing.
    dated: product(timed, is(later, ">=", 1), is(gap, ">", sum(reckon(INTERVALS, "*", planned), DAY_MINUTES)), notNumber(next)),
  };
  const isUndated: Condition = all(isNumber(start), is(fn("COUNT", working.start), "=", 0), anyWhere(holds.undated));
  // Asked of the one row found, since a text among the boxes below would be an error in arithmetic over all of them.
  const isDecimalAt = (found: Expression): Condition => when(anyWhere(found), typedAsDecimal(valueAt(later, found)), false);
  const isFirstDecimal = all(isNumber(start), typedAsDecimal(fn("N", start)), is(placeOrNone(holds.offPlan), "=", 1));
  return [
    wholeDay(every),
    step(is(fn("COUNTA", start), "=", 0), words.firstMissing(nameOf(start))),
    step(isUndated, words.dateMissing(at(holds.undated), nameOf(setup.date), nameOf(start))),
    step(isDecimalAt(holds.offPlan), decimal(at(holds.offPlan), valueAt(later, holds.offPlan))),
    step(isFirstDecimal, decimal(nameOf(start), start)),
    step(anyWhere(holds.notAfter), words.notAfter(at(holds.notAfter))),
    tooSoon(sheet),
    step(anyWhere(holds.far), farOff(at(holds.far), minutesAt(holds.far), planned)),
    step(anyWhere(holds.longAfter), words.longAfter(at(holds.longAfter))),
    step(anyWhere(holds.dated), words.daysAfter(at(holds.dated), fn("INT", reckon(minutesAt(holds.dated), "/", MINUTES_PER_HOUR)), planned)),
  ];
}

const farOff = (name: Expression, minutes: Expression, planned: Expression): Expression =>
  words.farOff(name, fn("INT", reckon(minutes, "/", MINUTES_PER_HOUR)), fn("ROUND", fn("MOD", minutes, MINUTES_PER_HOUR), 0), planned);

/** "0:30" of 0.30: what the decimals mean when they are read as minutes of the first hour; no time for 0.90, which has none. */
const meantBy = (value: Expression): Expression =>
  when(is(value, "<", MOST_DECIMALS), joined("0:", fn("RIGHT", fn("FIXED", value, 2, true), 2)), words.theTime);
