import { isOfSamples, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { balanceOrder } from "./order/balanceOrder";
import { runOrder } from "./order/runOrder";
import { isBlank, type Step } from "./order/Step";

/** @param passed boxes that are to stay blank, by name of cell @returns undefined where nothing is left to fill in */
export function nextStep(cells: SheetCells, passed: ReadonlySet<string>): Step | undefined {
  const isPassed = (at: Step["at"]): boolean => passed.has(placeOf(at));
  const order = isOfSamples(cells) ? runOrder({ cells, isPassed }) : balanceOrder({ cells, isPassed });
  for (const step of order) if (isBlank(cells, step.at) && !isPassed(step.at)) return step;
  return undefined;
}
