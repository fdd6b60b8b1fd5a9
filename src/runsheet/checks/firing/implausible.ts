import { all, any, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { lastCellWhere } from "../../formulas/cellsNamed";
import { degreesFrom } from "../../options/degrees";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { step, type Step } from "../Check";

const words = checkWords.material;

// °C. Wood hardly chars below about 200 °C, ash is burnt at 500 °C and more, and ovens dry at 40 to 120 °C: common practice, no source.
const LEAST_CHARRING = 200;
const LEAST_ASHING = 400;
const [LEAST_OVEN, MOST_OVEN] = [30, 150] as const;

/** Set and measured, side by side. */
export const temperaturesOf = ({ rows: { fire }, fire: inRow }: Fired): Range =>
  range(fixed(inRow(fire.first).set), fixed(inRow(fire.last).measured));

/** Temperatures that no such work has: a slip of the hand, or the other degrees. */
export function implausible({ charring, ashing, settings, options }: RunSheet): Step[] {
  const { degrees } = options;
  const { oven } = settings;
  const shown = (celsius: number): number => degreesFrom(celsius, degrees);
  const colder = (table: Fired | undefined, least: number, what: "char" | "ash"): Step[] => {
    if (table === undefined) return [];
    const noted = temperaturesOf(table);
    const coldest = fn("MIN", noted);
    const isCold: Condition = all(is(fn("COUNT", noted), ">", 0), is(coldest, "<", shown(least)));
    return [step(isCold, words.tooCold(lastCellWhere(is(noted, "=", coldest), noted), coldest, degrees, what, shown(least)))];
  };
  const isNoOven = all(is(fn("COUNT", oven), ">", 0), any(is(oven, "<", shown(LEAST_OVEN)), is(oven, ">", shown(MOST_OVEN))));
  return [
    step(isNoOven, words.oven(nameOf(oven), oven, degrees, shown(LEAST_OVEN), shown(MOST_OVEN))),
    ...colder(charring, LEAST_CHARRING, "char"),
    ...colder(ashing, LEAST_ASHING, "ash"),
  ];
}
