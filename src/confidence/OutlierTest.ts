import type { Replicate } from "./countedReplicates";

/** An outlier test carried out. */
export interface OutlierTest {
  readonly count: number;
  /** The value that stands out most on the side looked at; of equals the first given. */
  readonly suspect: Replicate;
  readonly statistic: number;
  readonly critical: number;
  readonly isOutlier: boolean;
}
