import { ZERO_MEANINGS } from "../../confidence/countedReplicates";
import { choice } from "../../inputs/choice";
import { replicateValues } from "../../inputs/kinds/statistics";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { optional } from "../../inputs/optional";

/**
 * The column that every judgement of replicates takes first, and what a 0 in it means: most hosts hand an
 * empty cell over as 0. How the results are rounded stands last.
 */
export const replicateInputs = {
  values: replicateValues("Replicate results, one column or row, in one unit."),
  zeros: {
    ...optional(choice('What a 0 in values is: "count", a result; "skip", an empty cell.', ZERO_MEANINGS), "a 0 is refused"),
    detail: "In whole columns (A:A) a 0 at the end counts as empty.",
  },
  readability: optional(
    positiveNumber(
      "Step to which the results are rounded, in their unit, such as 0.1.",
      "Give a number above 0 in the unit of the values, or leave the argument out.",
      "a display step",
    ),
    "the step that the results show",
  ),
};
