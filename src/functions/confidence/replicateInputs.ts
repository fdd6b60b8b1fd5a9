import { ZERO_MEANINGS } from "../../confidence/countedReplicates";
import { choice } from "../../inputs/choice";
import { replicateValues } from "../../inputs/kinds/statistics";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { omittable } from "../../inputs/optional";

/**
 * The column that every judgement of replicates takes first, and what a 0 in it means: most hosts hand an
 * empty cell over as 0. How the results are rounded stands last.
 */
export const replicateInputs = {
  values: replicateValues(
    "Replicate results, one column or row, in one unit. Blanks at the end are left off; a 0 is refused until zeros says what it is.",
  ),
  zeros: omittable(
    choice('What a 0 in values is: "count", a result; "skip", an empty cell. In whole columns (A:A) a 0 at the end counts as empty.', ZERO_MEANINGS),
  ),
  readability: omittable(
    positiveNumber(
      "Step to which the results are rounded, in their unit, such as 0.1. Left out: the step that the results show.",
      "Give a number above 0 in the unit of the values, or leave the argument out.",
      "a display step",
    ),
  ),
};
