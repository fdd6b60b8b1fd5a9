import { all, anyWhere, noNumber, product, sum } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { lastRowWhere } from "../../formulas/cellsNamed";
import { minutesBetween } from "../../formulas/clock";
import type { Fired, FireColumn, RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { fireOrder } from "./fireOrder";
import { step, type Check, type Step } from "../Check";

const words = checkWords.opened;

/** Whether the vessel stayed closed long enough after its vent went quiet, and the times of each firing are in order; of those that have any. */
export function openedCheck(sheet: RunSheet): Check | undefined {
  const { charring, stages, heating, settings, samples, fired } = sheet;
  const table = charring ?? stages ?? heating;
  if (table === undefined) return undefined;
  const { first, last } = table.rows.fire;
  const rows = Array.from({ length: last - first + 1 }, (_, index) => table.fire(first + index));
  const tooEarly = charring === undefined ? words.stageTooEarly : words.tooEarly;
  // A verdict covers what it saw: a firing that was weighed, or begun, without both times was not seen.
  const [lit, quiet, opened] = (["lit", "quiet", "opened"] as const).map((name) => clocks(table, name, name)) as [Range, Range, Range];
  const weighed = samples.map((sample) => range(fixed(table.box(table.rows.first, sample)), fixed(table.box(table.rows.last, sample))));
  const isBegun = is(sum(...[lit, quiet, opened, ...weighed].map((of) => fn("ISNUMBER", of))), ">", 0);
  const isUnseen = product(isBegun, reckon(1, "-", product(fn("ISNUMBER", quiet), fn("ISNUMBER", opened))));
  // Since it was lit, on the same day or the next, or by their dates where all three have one.
  const since = (of: Range): Expression => sum(reckon(of, "-", lit), is(of, "<", lit));
  const areAlike = [quiet, opened].map((of) => is(is(lit, "<", 1), "=", is(of, "<", 1)));
  const isCrossed = product(...[lit, quiet, opened].map((of) => fn("ISNUMBER", of)), ...areAlike, is(since(opened), "<", since(quiet)));
  return {
    silentWhile: noNumber(...fired.flatMap((one) => [clocks(one, "lit", "lit"), clocks(one, "quiet", "opened")])),
    steps: [
      ...fireOrder(sheet),
      step(anyWhere(isCrossed), words.notInOrder(lastRowWhere(isCrossed, lit))),
      ...rows.map((row): Step => {
        const closed = minutesBetween(row.quiet, row.opened);
        return step(
          all(is(fn("COUNT", row.quiet, row.opened, settings.closed), "=", 3), is(closed, "<", settings.closed)),
          tooEarly(nameOf(row.opened), closed, settings.closed),
        );
      }),
      step(anyWhere(isUnseen), words.unseen(lastRowWhere(isUnseen, lit))),
      step(is(fn("COUNT", settings.closed), "=", 0), words.noSetting(nameOf(settings.closed))),
    ],
  };
}

const clocks = ({ rows: { fire }, fire: inRow }: Fired, from: FireColumn, to: FireColumn) =>
  range(fixed(inRow(fire.first)[from]), fixed(inRow(fire.last)[to]));
