import { countedReplicates, type Replicate } from "../../confidence/countedReplicates";
import type { OutlierQuestion } from "../../confidence/OutlierQuestion";
import type { Read } from "../../inputs/Input";
import type { outlierInputs } from "./outlierInputs";

// The level that published tables give first.
const USUAL_ALPHA = 0.05;

/** The inputs as the tests take them. */
export function outlierQuestion(read: Read<typeof outlierInputs>): readonly [readonly Replicate[], OutlierQuestion] {
  return [countedReplicates(read.values, read.zeros), { alpha: read.alpha ?? USUAL_ALPHA, sides: read.sides ?? "two" }];
}
