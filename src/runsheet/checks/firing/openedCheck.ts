import { all, noNumber } from "../../expressions/choices";
import { fixed, fn, is, range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { minutesBetween } from "../../formulas/clock";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.opened;

/** Whether the vessel stayed closed long enough after its vent went quiet, and the times of each firing are in order. */
export function openedCheck({ charring, stages, heating, settings }: RunSheet): Check | undefined {
  const table = charring ?? stages ?? heating;
  if (table === undefined) return undefined;
  const { first, last } = table.rows.fire;
  const rows = Array.from({ length: last - first + 1 }, (_, index) => table.fire(first + index));
  const tooEarly = charring === undefined ? words.stageTooEarly : words.tooEarly;
  return {
    silentWhile: noNumber(range(fixed(table.fire(first).opened), fixed(table.fire(last).opened))),
    steps: rows.flatMap(({ lit, quiet, opened }): Step[] => {
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
  };
}
