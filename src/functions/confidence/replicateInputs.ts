import { ZERO_MEANINGS } from "../../confidence/countedReplicates";
import { choice } from "../../inputs/choice";
import { replicateValues } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";

/**
 * The column that every judgement of replicates takes first, and what a 0 in it means, which stands last: most hosts hand
 * an empty cell over as 0.
 */
export const replicateInputs = {
  values: replicateValues("Replicate results, one column or row, in one unit."),
  zeros: {
    ...optional(choice('What a 0 in values is: "count", a result; "skip", an empty cell.', ZERO_MEANINGS), "a 0 is refused"),
    detail: "In whole columns (A:A) a 0 at the end counts as empty.",
  },
};
