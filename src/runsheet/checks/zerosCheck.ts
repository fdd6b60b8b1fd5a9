import { anyWhere, noNumber } from "../expressions/choices";
import { fixed, fn, range, reckon, type Range } from "../expressions/Expression";
import { lastRowWhere } from "../formulas/cellsNamed";
import { stripCell } from "../formulas/strip";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

/** The rows of each strip, that of the empty vessel among them. */
export const stripsOf = ({ rows: { drying, charring, ashing, stages, heating, end } }: RunSheet): readonly { from: number; to: number }[] => [
  ...[drying, charring, ashing, stages, heating].flatMap((table) =>
    table?.strip === undefined ? [] : [{ from: table.strip.vessel ?? table.strip.first, to: table.strip.first + table.last - table.first }],
  ),
  ...(end.strip === undefined ? [] : [{ from: end.strip.vessel, to: end.strip.vessel }]),
];

/** Whether every row of weighings has both its pan zeros or neither. Undefined on a sheet without pan zeros. */
export function zerosCheck(sheet: RunSheet): Check | undefined {
  if (!sheet.options.panZeros) return undefined;
  const strips = stripsOf(sheet);
  const down = (column: "before" | "after", { from, to }: { from: number; to: number }): Range =>
    range(fixed(stripCell(from, column)), fixed(stripCell(to, column)));
  return {
    silentWhile: noNumber(...strips.flatMap((strip) => [down("before", strip), down("after", strip)])),
    steps: strips.map((strip) => {
      const [before, after] = [down("before", strip), down("after", strip)];
      const lone = fn("ABS", reckon(reckon(fn("ISNUMBER", before), "*", 1), "-", reckon(fn("ISNUMBER", after), "*", 1)));
      return step(anyWhere(lone), checkWords.zeros.oneMissing(lastRowWhere(lone, before)));
    }),
  };
}
