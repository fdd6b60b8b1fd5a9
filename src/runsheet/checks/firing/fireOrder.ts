import { all, anyWhere, firstOf, isNumber, notNumber, product, sum, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow, nameOf } from "../../expressions/formulaText";
import { lastCellWhere, lastRowWhere } from "../../formulas/cellsNamed";
import { CLOCK } from "../../sheet/Columns";
import type { Fired, FireColumn, RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Step } from "../Check";

const words = checkWords.times;
const MINUTES_PER_DAY = 1440;

/**
 * Whether the times of the fires follow one another and the rounds before them. A bare clock time before a bare one may be of the next day,
 * so it is questioned till its date is typed; a date is held against a date, and against the rounds where theirs is known.
 */
export const fireOrder = (sheet: RunSheet): Step[] =>
  sheet.fired.flatMap((table, index) => {
    const before = index === 0 ? lastRound(sheet) : lastOpened(sheet.fired[index - 1]);
    return [...(before === undefined ? [] : [firstFire(table, before)]), ...laterFires(table), held(table)];
  });

const column = ({ rows: { fire }, fire: inRow }: Fired, name: FireColumn, from = fire.first, to = fire.last): Range =>
  range(fixed(inRow(from)[name]), fixed(inRow(to)[name]));

interface Before {
  readonly time: Expression;
  /** With its date, nothing where that is not known. */
  readonly dated: Expression;
  readonly name: Expression;
}

function lastRound({ drying, columns, options, working }: RunSheet): Before | undefined {
  if (options.timing === "minutes") return undefined;
  const { first, total } = drying.rows;
  const down = (at: number): Range => range(fixed(cell(first, at)), fixed(cell(total, at)));
  const clocks = down(CLOCK);
  const count = fn("MAX", 1, fn("COUNT", clocks));
  const dated = reckon(working.start, "+", reckon(fn("INDEX", down(columns.elapsed), count), "/", MINUTES_PER_DAY));
  return { time: fn("INDEX", clocks, count), dated: fn("IFERROR", dated, 0), name: nameBelow(cell(first, CLOCK), reckon(count, "-", 1)) };
}

function lastOpened(table: Fired | undefined): Before | undefined {
  if (table === undefined) return undefined;
  const opened = column(table, "opened");
  const place = fn("MAX", 1, reckon(lastRowWhere(fn("ISNUMBER", opened), opened), "-", reckon(fn("ROW", opened.from), "-", 1)));
  const time = fn("INDEX", opened, place);
  return { time, dated: time, name: nameBelow(table.fire(table.rows.fire.first).opened, reckon(place, "-", 1)) };
}

/** The first time noted of a firing against what was done before it. */
function firstFire(table: Fired, { time, dated, name }: Before): Step {
  const { lit, quiet, opened } = table.fire(table.rows.fire.first);
  const places: readonly Cell[] = [lit, quiet, opened];
  const known = firstOf(
    places.slice(0, -1).map((at) => [isNumber(at), at] as const),
    opened,
  );
  const called = firstOf(
    places.slice(0, -1).map((at) => [isNumber(at), nameOf(at)] as const),
    nameOf(opened),
  );
  const isBefore = when(
    is(known, ">=", 1),
    is(known, "<", when(is(time, ">=", 1), time, dated)),
    when(is(time, ">=", 1), false, is(known, "<", time)),
  );
  const isKnown: Condition = all(is(fn("COUNT", ...places), ">", 0), isNumber(time));
  return step(when(isKnown, isBefore, false), words.firedBefore(called, name));
}

/** Each firing lit against the opening of the one above; where that is not noted, against when it went quiet, or was lit. */
function laterFires(table: Fired): Step[] {
  const { first, last } = table.rows.fire;
  if (last === first) return [];
  const lit = column(table, "lit", first + 1, last);
  const above = (name: FireColumn): Range => column(table, name, first, last - 1);
  const [opened, quiet, litAbove] = [above("opened"), above("quiet"), above("lit")];
  // A bare time after a dated one may be of any day.
  const isBefore = (one: Range): Expression =>
    product(fn("ISNUMBER", one), fn("ISNUMBER", lit), is(lit, "<", one), reckon(1, "-", product(is(one, ">=", 1), is(lit, "<", 1))));
  const holds = sum(isBefore(opened), product(notNumber(opened), isBefore(quiet)), product(notNumber(opened), notNumber(quiet), isBefore(litAbove)));
  return [step(anyWhere(holds), words.litBefore(lastCellWhere(holds, lit)))];
}

/** Held no longer than from lit to opened, on the same day or the next, or by their dates. */
function held(table: Fired): Step {
  const [lit, opened, minutes] = [column(table, "lit"), column(table, "opened"), column(table, "held")];
  const days = sum(reckon(opened, "-", lit), is(opened, "<", lit));
  const areAlike = is(is(lit, "<", 1), "=", is(opened, "<", 1));
  // A minute more, since clocks are read to the minute.
  const isLonger = is(minutes, ">", sum(reckon(days, "*", MINUTES_PER_DAY), 1));
  const holds = product(...[lit, opened, minutes].map((of) => fn("ISNUMBER", of)), areAlike, isLonger);
  return step(anyWhere(holds), words.heldLonger(lastCellWhere(holds, minutes)));
}
