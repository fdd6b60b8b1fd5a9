import type { ConstancyCriterion } from "../weighing/constancyCriteria";

/** A drying run so far. */
export interface DryingRun {
  /** min, rising, one a weighing */
  readonly times: readonly number[];
  /** g, with the vessel when it is given */
  readonly weights: readonly number[];
  /** g; left out or 0 when the weighings are net */
  readonly vessel?: number | undefined;
  /** Display step, g; left out, the last digit of the weighings counts as it. */
  readonly readability?: number | undefined;
  /** In the unit of the criterion; left out, 0.001 of the last weighing. */
  readonly limit?: number | undefined;
  readonly criterion?: ConstancyCriterion | undefined;
  /** Bounds of the error of each time, min; left out, times are exact. */
  readonly timing?: number | undefined;
}
