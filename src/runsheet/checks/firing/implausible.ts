import { all, any, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Range } from "../../expressions/Expression";
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

// What standards dry at, 103 ± 2 °C (EN 13183-1, EN 322) and 105 ± 2 °C (ISO 18134), as figures in a box for °F; but 104 °F is 40 °C, a usual heat too.
const OVEN_STANDARDS = { atLeast: 101, atMost: 107, asTyped: 104 } as const;

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
  const { atLeast, atMost, asTyped } = OVEN_STANDARDS;
  const isCelsius = all(is(fn("COUNT", oven), ">", 0), is(oven, ">=", atLeast), is(oven, "<=", atMost), is(is(oven, "=", asTyped), "=", false));
  const [typed, meant] = [reckon(reckon(reckon(oven, "-", 32), "*", 5), "/", 9), reckon(reckon(reckon(oven, "*", 9), "/", 5), "+", 32)];
  const asCelsius = words.celsiusOven(nameOf(oven), oven, fn("ROUND", typed, 0), fn("ROUND", meant, 0), asTyped, atMost + 1);
  return [
    ...(degrees === "F" ? [step(isCelsius, asCelsius)] : []),
    step(isNoOven, words.oven(nameOf(oven), oven, degrees, shown(LEAST_OVEN), shown(MOST_OVEN))),
    ...colder(charring, LEAST_CHARRING, "char"),
    ...colder(ashing, LEAST_ASHING, "ash"),
  ];
}
