import type { ConstancyCriterion } from "../weighing/constancyCriteria";
import type { DryingPoint } from "./DryingPoint";
import type { EndUncertainty } from "./endUncertainty";
import type { FallingRateFit } from "./fallingRateFit";
import type { ThreePointEnd, ThreePointSilence } from "./threePointEnd";

/** Where a drying run is heading. Every mass is that of the sample alone, g. */
export interface DryingEnd {
  readonly fit: FallingRateFit;
  readonly uncertainty: EndUncertainty;
  /** Of the rate, 1/min. */
  readonly rateUncertainty: number;
  /** Water still in the sample at the last weighing, by the curve. */
  readonly waterLeft: number;
  readonly waterUncertainty: EndUncertainty;
  /** Standard deviation of the weighings about the curve; where timing is given, in the terms of the least doubtful. */
  readonly scatter: number;
  /** Standard deviation of one weighing, g: the scatter, or what balance and clock explain if that is more. */
  readonly weighingDeviation: number;
  /** Scatter over what balance and clock explain; undefined without readability. */
  readonly excess: number | undefined;
  readonly points: readonly DryingPoint[];
  /** Weighings made. */
  readonly made: number;
  readonly criterion: ConstancyCriterion;
  readonly limit: number;
  /** The last interval, min. */
  readonly interval: number;
  /** 0 when the last weighing is steady already. */
  readonly weighingsLeft: number | "too many" | "balance too coarse";
  readonly threePoint: ThreePointEnd | ThreePointSilence | "intervals unequal";
}
