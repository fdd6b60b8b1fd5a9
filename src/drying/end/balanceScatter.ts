import { chiSquareQuantile } from "../../numerics/chiSquareQuantile";
import { studentTQuantile } from "../../numerics/studentTQuantile";
import type { AdmissibleEnds } from "./admissibleEnds";
import type { FallingRateFit } from "./fallingRateFit";

/** How much one balance scatters. */
export interface BalanceScatter {
  /** Standard deviation that the curve was fitted with, of the least doubtful weighing, g. */
  readonly deviation: number;
  /** Display step, g. */
  readonly step: number;
  /** Standard deviation of repeated weighings, g, where it is known. */
  readonly repeatability: number | undefined;
}

/** Variance that the balance explains over the one fitted with: where its repeatability is not known, one display step counts as it. */
const explained = ({ deviation, step, repeatability }: BalanceScatter): number => (repeatability === undefined ? 1 + (step / deviation) ** 2 : 1);

// One balance in a hundred scatters more by chance: normal deviate of a one-sided 1 %, and chi-square of one degree at 1 %.
const NORMAL_ONE_PERCENT = 2.326348;
const CHI_SQUARE_ONE_PERCENT = 6.634897;

/** Whether weighings lie farther from their curve than their balance explains: chi-square test at 1 %. */
export const scattersTooMuch = ({ sumOfSquares, degrees }: FallingRateFit, balance: BalanceScatter): boolean =>
  sumOfSquares > explained(balance) * chiSquareQuantile(NORMAL_ONE_PERCENT, degrees);

// A slower decay has to explain at least this share of the misfit; scatter alone gives way to one more unknown by less.
const MOST_OF_MISFIT = 0.5;

/**
 * Whether the last weighings show that they fall more slowly than the first promise: a slower decay fits better by more than
 * the balance explains (likelihood ratio at 1 %, one unknown more) and takes most of the misfit away.
 */
export const showsSlowing = ({ gainOfSlowing }: AdmissibleEnds, { sumOfSquares }: FallingRateFit, balance: BalanceScatter): boolean =>
  gainOfSlowing > explained(balance) * CHI_SQUARE_ONE_PERCENT && gainOfSlowing > MOST_OF_MISFIT * sumOfSquares;

// 95 % two-sided, as in endUncertainty.
const BEYOND = 0.025;
const NORMAL_FACTOR = 1.959964;

/** How far above the truth one weighing may read in 95 of 100 cases, g, by the balance or by the scatter, whichever is more. */
export const readingBound = ({ sumOfSquares, degrees }: FallingRateFit, balance: BalanceScatter): number =>
  balance.deviation * Math.max(NORMAL_FACTOR * Math.sqrt(explained(balance)), studentTQuantile(BEYOND, degrees) * Math.sqrt(sumOfSquares / degrees));
