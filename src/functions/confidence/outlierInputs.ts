import { SIDES } from "../../confidence/sides";
import { choice } from "../../inputs/choice";
import { significanceLevel } from "../../inputs/kinds/statistics";
import { omittable } from "../../inputs/optional";
import { replicateInputs } from "./replicateInputs";

/** What both outlier tests ask for. */
export const outlierInputs = {
  values: replicateInputs.values,
  alpha: omittable(significanceLevel("Significance level, above 0 and below 0.5. Left out: 0.05.")),
  sides: omittable(
    choice('"two": either end may be the outlier. "largest" or "smallest": one-sided, the end chosen before looking. Left out: two.', SIDES),
  ),
  zeros: replicateInputs.zeros,
};
