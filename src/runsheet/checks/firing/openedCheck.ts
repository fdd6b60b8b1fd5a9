import { all, anyWhere, placeWhere, noNumber, product, sum } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow, nameOf } from "../../expressions/formulaText";
import { lastRowWhere } from "../../formulas/cellsNamed";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { areAlike, column, fireOrder } from "./fireOrder";
import { step, type Check, type Step } from "../Check";

const words = checkWords.opened;
const MINUTES_PER_DAY = 1440;

/** Whether the vessel stayed closed long enough after its vent went quiet, and the times of each firing are in order; of those that have any. */
export function openedCheck(sheet: RunSheet): Check | undefined {
  const { charring, stages, heating, settings, samples, fired } = sheet;
  const table = charring ?? stages ?? heating;
  if (table === undefined) return undefined;
  // A verdict covers what it saw: a firing that was weighed, or begun, without both times was not seen.
  const [lit, quiet, opened] = (["lit", "quiet", "opened"] as const).map((name) => column(table, name)) as [Range, Range, Range];
  const weighed = samples.map((sample) => range(fixed(table.box(table.rows.first, sample)), fixed(table.box(table.rows.last, sample))));
  const isBegun = is(sum(...[lit, quiet, opened, ...weighed].map((of) => fn("ISNUMBER", of))), ">", 0);
  const isUnseen = product(isBegun, reckon(1, "-", product(fn("ISNUMBER", quiet), fn("ISNUMBER", opened))));
  return {
    silentWhile: noNumber(...fired.flatMap((one) => [column(one, "lit"), range(column(one, "quiet").from, column(one, "opened").to)])),
    steps: [
      ...fireOrder(sheet),
      ...closedFor(sheet, quiet, opened),
      step(anyWhere(isUnseen), words.unseen(lastRowWhere(isUnseen, lit))),
      step(is(fn("COUNT", settings.closed), "=", 0), words.noSetting(nameOf(settings.closed))),
    ],
  };
}

/** How long each vessel stayed closed; where only one of the two times has its date, the days between are not known, and it is asked for. */
function closedFor({ charring, settings: { closed } }: RunSheet, quiet: Range, opened: Range): Step[] {
  const areThere = product(fn("ISNUMBER", quiet), fn("ISNUMBER", opened));
  const minutes = (days: Expression): Expression => fn("ROUND", reckon(days, "*", MINUTES_PER_DAY), 0);
  const isWanted = is(fn("COUNT", closed), "=", 1);
  // Bare times are of one day or the next.
  const between = (from: Expression, to: Expression): Expression => minutes(sum(reckon(to, "-", from), product(is(to, "<", from), is(to, "<", 1))));
  const isTooEarly = product(areThere, areAlike(quiet, opened), is(between(quiet, opened), "<", closed));
  const least = fn("MOD", minutes(reckon(opened, "-", quiet)), MINUTES_PER_DAY);
  const isUndated = product(areThere, reckon(1, "-", areAlike(quiet, opened)), is(least, "<", closed));
  const place = placeWhere(isTooEarly);
  const of = (times: Range): Expression => fn("INDEX", times, place);
  const tooEarly = charring === undefined ? words.stageTooEarly : words.tooEarly;
  return [
    step(all(isWanted, anyWhere(isTooEarly)), tooEarly(nameBelow(opened.from, reckon(place, "-", 1)), between(of(quiet), of(opened)), closed)),
    step(all(isWanted, anyWhere(isUndated)), words.oneUndated(lastRowWhere(isUndated, quiet))),
  ];
}
