import { any } from "../expressions/choices";
import { fn, is, joined } from "../expressions/Expression";
import { REARRANGED, typedOverSays, watchCells, type Watched } from "../formulas/slips/typedOver";
import { checkWords, MARKS } from "../words/checkWords";
import { step, type Check } from "./Check";

/** Whether every calculated cell still holds its formula; one that the answer is calculated from withholds it, any other marks it. What was moved or deleted comes first. */
export function typedOverCheck(sheet: Watched): Check {
  const { feeding, others } = watchCells(sheet);
  const says = typedOverSays(sheet);
  return {
    silentWhile: any(is(fn("N", feeding), "<", 0), is(fn("N", others), "<", 0)),
    steps: [
      step(is(feeding, "=", REARRANGED.columns), joined(MARKS.contradiction, checkWords.typedOver.columns)),
      step(is(feeding, "=", REARRANGED.row), joined(MARKS.contradiction, checkWords.typedOver.row)),
      step(is(feeding, ">", 0), joined(MARKS.contradiction, says)),
      step(is(others, ">", 0), joined(MARKS.doubt, says)),
    ],
  };
}
