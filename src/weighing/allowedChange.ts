import type { ConstancyCriterion } from "./constancyCriteria";

/** Two net weighings that are compared, and the first of the series, g. */
export interface ComparedSamples {
  readonly first: number;
  readonly newer: number;
  /** Hours between the two; 0 where no times are known. */
  readonly hours: number;
}

/**
 * The change in g that a criterion allows between two weighings. Never below 0.
 * @param limit in the unit of the criterion (see constancyCriteria)
 * @param readability display step, g
 */
export function allowedChange(criterion: ConstancyCriterion, limit: number, { first, newer, hours }: ComparedSamples, readability = 0): number {
  switch (criterion) {
    case "absolute":
      return limit;
    case "of last":
      return limit * newer;
    case "of initial":
    case "per gram":
      return limit * first;
    case "of total loss":
      return limit * Math.max(0, first - newer);
    case "per hour":
      return limit * newer * hours;
    case "readability":
      return limit * readability;
  }
}
