import type { DryingPoint } from "../weighingSeries";
import { admissibleEnds } from "./admissibleEnds";
import { readingBound, scattersTooMuch, showsSlowing, type BalanceScatter } from "./balanceScatter";
import { endUncertainty, widenedBy, type EndUncertainty } from "./endUncertainty";
import { curveAt, type FallingRateFit } from "./fallingRateFit";
import { laterEnds } from "./laterEnds";

/** The end of a run as far as its weighings know it. */
export interface StatedEnd {
  /** Where the curve ends, but never above the last weighing, g. */
  readonly final: number;
  /** Of final, were the drying one exponential to its end. */
  readonly curveUncertainty: EndUncertainty;
  /** Of final, every curve that the weighings allow included (admissibleEnds). */
  readonly uncertainty: EndUncertainty;
  /** By how much the latter is the wider, g. */
  readonly allowance: number;
  /** The lowest of the ends that the weighings allow, g. */
  readonly lowest: number;
  /** True where the weighings show that the last fall more slowly than the first promise. */
  readonly slowerTail: boolean;
}

/** The weighings that carry a falling rate, and those before them that lie off its curve. */
interface Carried {
  readonly points: readonly DryingPoint[];
  readonly fit: FallingRateFit;
  readonly strays: readonly DryingPoint[];
}

/**
 * The end of a curve between the ends of all other curves that the weighings allow. Where no decay follows them within what
 * the balance explains, the curves through the last weighings alone count too. An end above the last weighing is impossible,
 * but for the error of that reading; one below nothing is, too.
 * @param deviations of the points, g
 * @param first sample at the beginning of the run, g
 */
export function statedEnd({ points, fit, strays }: Carried, deviations: readonly number[], first: number, balance: BalanceScatter): StatedEnd {
  const last = points.at(-1) as DryingPoint;
  const final = Math.min(fit.final, last.grams);
  const curveUncertainty = endUncertainty(fit, [1, 0, 0]);
  const unseen = admissibleEnds(points, deviations, fit, first - final);
  const tailIsSeen = showsSlowing(unseen, fit, balance);
  const ends = tailIsSeen ? admissibleEnds(points, deviations, fit, first - final, true) : unseen;
  const later = scattersTooMuch({ ...fit, sumOfSquares: ends.least }, balance) ? laterEnds(points, deviations) : ends;
  const lowest = Math.max(0, Math.min(ends.lowest, later.lowest, final));
  const highest = Math.min(Math.max(ends.highest, later.highest), last.grams + readingBound(fit, balance));
  const allowance = Math.max(0, final - lowest - curveUncertainty.expanded, highest - final - curveUncertainty.expanded);
  // The first stray was left out for its own sake, the next only as its neighbour. Above the curve it tells of a quicker
  // beginning, below it of a constant rate.
  const [stray] = strays;
  const quickerAtFirst = stray !== undefined && stray.grams > curveAt(fit, stray.minutes);
  return {
    final,
    curveUncertainty,
    uncertainty: widenedBy(allowance, curveUncertainty),
    allowance,
    lowest,
    slowerTail: quickerAtFirst || tailIsSeen,
  };
}
