import { noNumber } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Expression, type Range } from "../expressions/Expression";
import { lastRowWhere } from "../formulas/cellsNamed";
import { readsLighterBy, stripCell, warmerBy } from "../formulas/strip";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { stripWords } from "../words/stripWords";
import { step, type Check } from "./Check";

const words = checkWords.warmth;

/** Whether each round was cold enough for this balance; the warmest one with the error of the published case, as a hint. */
export function warmthCheck(sheet: RunSheet): Check | undefined {
  const { options, rows, columns } = sheet;
  const { strip, first, last } = rows.drying;
  if (!options.temperatures || strip === undefined) return undefined;
  const to = strip.first + last - first;
  const down = (column: "room" | "warmth"): Range => range(fixed(stripCell(strip.first, column)), fixed(stripCell(to, column)));
  const [room, warmth] = [down("room"), down("warmth")];
  const flags = range(fixed(cell(strip.first, columns.verdict)), fixed(cell(to, columns.verdict)));
  const isSaid = (word: string): Expression => reckon(is(flags, "=", word), "*", 1);
  const { warm, chilled } = stripWords.cold;
  const above = reckon(isSaid(warm), "*", reckon(warmth, "-", room));
  const warmest = fn("SUMPRODUCT", fn("MAX", above));
  const row = lastRowWhere(reckon(is(above, "=", warmest), "*", isSaid(warm)), room);
  const celsius = options.degrees === "C" ? warmest : warmerBy(sheet, 0, warmest);
  return {
    silentWhile: noNumber(room, warmth),
    steps: [
      step(is(fn("COUNTIF", flags, warm), ">", 0), words.readsLight(row, fn("ROUND", warmest, 0), options.degrees, readsLighterBy(celsius))),
      step(is(fn("COUNTIF", flags, chilled), ">", 0), words.readsHeavy(lastRowWhere(isSaid(chilled), flags))),
    ],
  };
}
