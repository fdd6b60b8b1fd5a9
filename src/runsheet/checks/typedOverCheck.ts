import { anyWhere } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Range } from "../expressions/Expression";
import { lastCellWhere } from "../formulas/cellsNamed";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

/** Whether every calculated cell of the tables and results still holds its formula. @param areas where they stand, whole rectangles */
export const typedOverCheck = (areas: readonly Range[]): Check => ({
  silentWhile: is(1, "=", 0),
  steps: areas.map((area) => {
    const block = range(fixed(area.from), fixed(area.to));
    const without = reckon(1, "-", fn("ISFORMULA", block));
    return step(anyWhere(without), checkWords.typedOver.found(lastCellWhere(without, block)));
  }),
});
