import type { Sides } from "./sides";

/** How an outlier test is asked for. */
export interface OutlierQuestion {
  /** Chance of calling a value an outlier when all come from one normal distribution, above 0 and below 0.5. */
  readonly alpha: number;
  readonly sides: Sides;
}
