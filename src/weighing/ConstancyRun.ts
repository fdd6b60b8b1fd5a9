import type { ConstancyCriterion } from "./constancyCriteria";

/** A series of weighings of one drying sample and what counts as constant. */
export interface ConstancyRun {
  /** In the order taken, g: with the vessel when `vessel` is given, else without. */
  readonly weights: readonly number[];
  /** Empty vessel, g; left out or 0 when the weighings are net. */
  readonly vessel?: number | undefined;
  /** Minutes of each weighing, rising; later planned times may follow. */
  readonly times?: readonly number[] | undefined;
  /** In the unit of the criterion; left out, 0.001 of the last weighing. */
  readonly limit?: number | undefined;
  /** Left out, "of last". */
  readonly criterion?: ConstancyCriterion | undefined;
  /** Smallest display step of the balance, g; without it the balance is taken as fine enough. */
  readonly readability?: number | undefined;
  /** Least minutes between two weighings that are compared; left out or 0, neighbours are compared. */
  readonly interval?: number | undefined;
}
