import { isOfSamples, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { NEXT } from "../../../runsheet/blocks/headBlock";
import { headWords } from "../../../runsheet/words/headWords";
import { balanceOrder } from "./order/balanceOrder";
import { runOrder } from "./order/runOrder";
import { isBlank, type Step } from "./order/Step";

/**
 * The next box to fill in. Once the sheet says that all weighings are in, no words are asked for in the box for readings.
 * @param passed boxes that are to stay blank, by name of cell
 * @returns undefined where nothing is left to fill in
 */
export function nextStep(cells: SheetCells, passed: ReadonlySet<string>): Step | undefined {
  const isPassed = (at: Step["at"]): boolean => passed.has(placeOf(at));
  const order = isOfSamples(cells) ? runOrder({ cells, isPassed }) : balanceOrder({ cells, isPassed });
  const isComplete = cells.at(cells.sheet.rows.head.title, NEXT) === headWords.next.complete;
  for (const step of order) if (isBlank(cells, step.at) && !isPassed(step.at) && !(isComplete && step.kind === "words")) return step;
  return undefined;
}
