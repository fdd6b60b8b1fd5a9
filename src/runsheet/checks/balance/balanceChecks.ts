import { all, any, anyWhere, isNumber, noNumber, notNumber, product, sum, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, joined, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow, nameOf } from "../../expressions/formulaText";
import { gap, hasGap, lastCellWhere } from "../../formulas/cellsNamed";
import { FIRST_DATE } from "../../formulas/clock";
import { centresDiffer, climb, hasCentre, isBeyond, isClimbing, isOtherLoad, isOtherWeight } from "../../formulas/balance/history";
import { grams, offBy } from "../../formulas/balance/roundSays";
import { PLACES, type BalanceCheck } from "../../sheet/balanceRows";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { balanceCheckWords as words } from "../../words/balance/balanceCheckWords";
import { checkWords } from "../../words/checkWords";
import { balanceWords } from "../../words/balance/balanceWords";
import { numberWanted } from "../boxesFirst";
import { step, type Check } from "../Check";
import { typedOverCheck } from "../typedOverCheck";

/** Each check of a balance check. */
export const BALANCE_CHECKED: Readonly<Record<BalanceCheck, (sheet: BalanceSheet) => Check>> = {
  given: givenCheck,
  dates: datesCheck,
  rows: roundsCheck,
  slip: slipCheck,
  newest: newestCheck,
  bias: biasCheck,
  zero: zeroCheck,
  corners: cornersCheck,
  typedOver: typedOverCheck,
};

/** The same rows of another column, and shifted by one: down to the row of the total or past it, which are empty. */
const shifted = (of: Range, by: number): Range => range(fixed({ ...of.from, row: of.from.row + by }), fixed({ ...of.to, row: of.to.row + by }));

const nothingWeighed = ({ readings }: BalanceSheet) => noNumber(readings);

// A weight known no better than so many times the scatter of the readings cannot tell whether they are right; own bound, no source.
const TIMES_THE_SCATTER = 5;

const refusals = balanceWords.setup;

function givenCheck(sheet: BalanceSheet): Check {
  const { setup, working } = sheet;
  const most = reckon(TIMES_THE_SCATTER, "*", fn("MAX", fn("N", working.scatter), fn("N", setup.step)));
  return {
    first: [
      numberWanted([setup.date], "0", refusals.date.refusal),
      numberWanted([setup.value], "above 0", refusals.value.refusal),
      numberWanted([setup.known], "0", refusals.known.refusal),
      numberWanted([setup.step], "above 0", refusals.step.refusal),
    ],
    silentWhile: nothingWeighed(sheet),
    steps: [
      step(is(fn("COUNT", setup.value), "=", 0), words.given.value(nameOf(setup.value))),
      step(is(fn("COUNT", setup.step), "=", 0), words.given.step(nameOf(setup.step))),
      step(all(isNumber(setup.known), isNumber(working.scatter), is(fn("N", setup.known), ">", most)), words.given.coarse(nameOf(setup.known))),
    ],
  };
}

// A check weight is taken out at least so often; a year typed wrong is off by more. Own bound, days.
const THREE_YEARS = 1100;

function datesCheck({ dates, readings, setup }: BalanceSheet): Check {
  const later = shifted(dates, 1);
  const isNone = sum(reckon(fn("ISTEXT", dates), "*", 1), product(fn("ISNUMBER", dates), is(dates, "<", FIRST_DATE)));
  const isBefore = product(fn("ISNUMBER", later), fn("ISNUMBER", dates), is(later, "<", dates));
  const isBegun = isNumber(setup.date);
  const beforeBegun = product(fn("ISNUMBER", dates), is(fn("INT", fn("N", setup.date)), ">", dates));
  const isFarOff = product(fn("ISNUMBER", later), fn("ISNUMBER", dates), is(later, ">", reckon(dates, "+", THREE_YEARS)));
  const firstFarOff = all(isBegun, isNumber(dates.from), is(fn("N", dates.from), ">", reckon(fn("N", setup.date), "+", THREE_YEARS)));
  const undated = reckon(fn("ISNUMBER", readings), "*", notNumber(dates));
  const isText = reckon(fn("ISTEXT", dates), "*", 1);
  return {
    first: [step(anyWhere(isText), words.dates.noDate(lastCellWhere(isText, dates))), numberWanted([dates], "0", balanceWords.rounds.date.refusal)],
    silentWhile: all(is(fn("COUNTA", dates), "=", 0), noNumber(readings)),
    steps: [
      step(anyWhere(isNone), words.dates.noDate(lastCellWhere(isNone, dates))),
      step(anyWhere(isBefore), words.dates.before(lastCellWhere(isBefore, later), lastCellWhere(isBefore, dates))),
      step(when(isBegun, anyWhere(beforeBegun), false), words.dates.begun(lastCellWhere(beforeBegun, dates), nameOf(setup.date))),
      step(firstFarOff, words.dates.farOff(nameOf(dates.from))),
      step(anyWhere(isFarOff), words.dates.farOff(lastCellWhere(isFarOff, later))),
      step(anyWhere(undated), words.dates.missing(lastCellWhere(undated, dates))),
    ],
  };
}

function roundsCheck({ readings, zeros }: BalanceSheet): Check {
  const isWrong = (name: "ISERROR" | "ISTEXT", of: Range): Expression => reckon(fn(name, of), "*", 1);
  const below = shifted(readings, 1);
  return {
    first: [
      ...[readings, zeros].flatMap((of) => [
        step(anyWhere(isWrong("ISERROR", of)), checkWords.rows.error(lastCellWhere(isWrong("ISERROR", of), of))),
        step(anyWhere(isWrong("ISTEXT", of)), checkWords.rows.isText(lastCellWhere(isWrong("ISTEXT", of), of))),
      ]),
      numberWanted([readings], "0", checkWords.wanted.weight),
      // A zero may lie below 0.
      numberWanted([zeros], "any", checkWords.wanted.zero),
    ],
    silentWhile: is(fn("COUNTA", readings), "=", 0),
    steps: [step(hasGap(below, readings), checkWords.rows.gap(lastCellWhere(gap(below, readings), readings)))],
  };
}

// The same weight never reads so many times more or less; kilograms for grams do. Own bound.
const TOO_FAR = 100;
const isFar = (light: Expression, heavy: Expression): Condition => is(heavy, ">", reckon(TOO_FAR, "*", light));

function slipCheck(sheet: BalanceSheet): Check {
  const { readings, setup } = sheet;
  // A reading that is text is told by the check of the rows; N takes only the first of several cells, so the test is of each.
  const numbers = fn("COUNT", readings);
  const isOther = product(fn("ISNUMBER", readings), isOtherWeight(sheet, reckon(readings, "-", setup.value)));
  const at = lastCellWhere(isOther, readings);
  const [least, most] = [fn("MIN", readings), fn("MAX", readings)];
  const largest = fn("MAX", fn("ABS", reckon(fn("MAX", readings), "-", setup.value)), fn("ABS", reckon(fn("MIN", readings), "-", setup.value)));
  return {
    silentWhile: any(is(numbers, "=", 0), is(fn("COUNT", setup.value), "=", 0), is(fn("COUNTA", readings), ">", numbers)),
    steps: [
      step(isFar(least, setup.value), words.slip.units(lastCellWhere(is(readings, "=", least), readings), nameOf(setup.value))),
      step(isFar(setup.value, most), words.slip.units(lastCellWhere(is(readings, "=", most), readings), nameOf(setup.value))),
      step(anyWhere(isOther), words.slip.other(at, grams(sheet, largest), nameOf(setup.value))),
    ],
  };
}

/** What stands in the row of the newest round. */
const newestOf = ({ rows, working }: BalanceSheet, column: number): Expression =>
  fn("INDEX", range(fixed(cell(rows.rounds.first, column)), fixed(cell(rows.rounds.total, column))), fn("MAX", 1, working.count));

function newestCheck(sheet: BalanceSheet): Check {
  const { rows, working, round } = sheet;
  const first = round(rows.rounds.first);
  const [apart, expected] = [newestOf(sheet, first.apart.column), newestOf(sheet, first.expected.column)];
  const { warning, action } = isBeyond(sheet, apart, expected, reckon(working.count, "-", 1));
  const at = nameBelow(first.reading, reckon(working.count, "-", 1));
  const off = offBy(sheet, fn("N", apart), 1);
  const climbed = climb(sheet);
  return {
    silentWhile: is(when(is(working.count, ">", 0), isNumber(apart), false), "=", false),
    steps: [
      step(is(working.apart, ">", 0), words.newest.apart(nameBelow(first.reading, reckon(working.apart, "-", fn("ROW", first.reading))))),
      step(action, words.newest.action(at, off)),
      step(
        isClimbing(sheet),
        words.newest.climbs(
          joined(when(is(climbed, ">", 0), words.newest.climb, words.newest.fall), " ", grams(sheet, fn("ABS", climbed), 1)),
          working.count,
        ),
      ),
      step(warning, words.newest.warning(at, off)),
    ],
  };
}

function biasCheck(sheet: BalanceSheet): Check {
  const { value, plusMinus } = sheet.finding("bias");
  const off = offBy(sheet, fn("N", value), 1);
  return {
    silentWhile: is(fn("COUNT", value, plusMinus), "<", 2),
    steps: [step(is(fn("ABS", fn("N", value)), ">", plusMinus), words.bias.off(off, grams(sheet, fn("N", plusMinus), 1)))],
  };
}

function zeroCheck(sheet: BalanceSheet): Check {
  const { zeros, rows, round, working } = sheet;
  const first = round(rows.rounds.first);
  const zero = newestOf(sheet, first.zero.column);
  const at = nameBelow(first.zero, reckon(working.count, "-", 1));
  return {
    silentWhile: noNumber(zeros),
    steps: [step(all(isNumber(zero), is(fn("ABS", fn("N", zero)), ">", working.explained)), words.zero.off(at, grams(sheet, fn("N", zero))))],
  };
}

function cornersCheck(sheet: BalanceSheet): Check {
  const { corner, largestOff, working } = sheet;
  const [first, last] = [PLACES[0], PLACES[PLACES.length - 1] ?? PLACES[0]];
  const boxes = range(corner(first).box, corner(last).box);
  const offs = range(corner(first).off, corner(last).off);
  const isLargest = product(fn("ISNUMBER", offs), is(offs, "=", largestOff));
  return {
    first: [
      step(anyWhere(reckon(fn("ISTEXT", boxes), "*", 1)), checkWords.rows.isText(lastCellWhere(reckon(fn("ISTEXT", boxes), "*", 1), boxes))),
      numberWanted([boxes], "0", checkWords.wanted.weight),
    ],
    silentWhile: noNumber(boxes),
    steps: [
      step(
        isFar(fn("MIN", boxes), fn("MAX", boxes)),
        words.slip.units(lastCellWhere(is(boxes, "=", fn("MIN", boxes)), boxes), lastCellWhere(is(boxes, "=", fn("MAX", boxes)), boxes)),
      ),
      step(is(hasCentre(sheet), "=", false), words.corners.noCentre(nameOf(corner("centre").box))),
      step(isOtherLoad(sheet, boxes), words.corners.otherLoad(lastCellWhere(isLargest, boxes), offBy(sheet, fn("N", largestOff)))),
      step(
        centresDiffer(sheet),
        words.corners.centres(
          nameOf(corner("centre").box),
          nameOf(corner("centreAgain").box),
          grams(sheet, fn("ABS", reckon(fn("N", corner("centre").box), "-", fn("N", corner("centreAgain").box)))),
        ),
      ),
      step(
        is(fn("ABS", fn("N", largestOff)), ">", working.explained),
        words.corners.off(lastCellWhere(isLargest, boxes), offBy(sheet, fn("N", largestOff))),
      ),
    ],
  };
}
