import { all, any, NOTHING, noNumber, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, joined, range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { minutesBetween } from "../../formulas/clock";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.opened;

/** Whether the vessel stayed closed long enough after its vent went quiet, and the times of each firing are in order; of those that have any. */
export function openedCheck({ charring, stages, heating, settings, across }: RunSheet): Check | undefined {
  const table = charring ?? stages ?? heating;
  if (table === undefined) return undefined;
  const { first, last } = table.rows.fire;
  const rows = Array.from({ length: last - first + 1 }, (_, index) => ({
    ...table.fire(first + index),
    boxes: across((sample) => table.box(table.rows.first + index, sample)),
  }));
  const tooEarly = charring === undefined ? words.stageTooEarly : words.tooEarly;
  // A verdict covers what it saw: a firing that was weighed, or begun, without both times was not seen.
  const isUnseen = ({ quiet, opened, boxes }: (typeof rows)[number]): Condition =>
    all(is(fn("COUNT", quiet, opened), "<", 2), is(fn("COUNT", quiet, opened, boxes), ">", 0));
  const listed = joined(...rows.map((row) => when(isUnseen(row), joined(" ", fn("ROW", row.lit)), NOTHING)));
  return {
    silentWhile: noNumber(range(fixed(table.fire(first).quiet), fixed(table.fire(last).opened))),
    steps: [
      ...rows.flatMap(({ lit, quiet, opened }): Step[] => {
        const closed = minutesBetween(quiet, opened);
        return [
          step(
            all(is(fn("COUNT", lit, quiet, opened), "=", 3), is(minutesBetween(lit, opened), "<", minutesBetween(lit, quiet))),
            words.notInOrder(fn("ROW", lit)),
          ),
          step(
            all(is(fn("COUNT", quiet, opened, settings.closed), "=", 3), is(closed, "<", settings.closed)),
            tooEarly(nameOf(opened), closed, settings.closed),
          ),
        ];
      }),
      step(any(...rows.map(isUnseen)), words.unseen(listed)),
      step(is(fn("COUNT", settings.closed), "=", 0), words.noSetting(nameOf(settings.closed))),
    ],
  };
}
