import type { ConstancyCriterion } from "./constancyCriteria";
import { dryingCriteria, type DryingCriterion } from "./dryingCriteria";

/** The standards whose constant-weight limit is this one; their intervals may differ. */
export const criteriaLike = (criterion: ConstancyCriterion, limit: number): readonly DryingCriterion[] =>
  dryingCriteria.filter((known) => known.criterion === criterion && known.limit === limit);
