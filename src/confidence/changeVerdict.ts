import { normalProbability } from "../numerics/normalProbability";
import { uncertaintyAboveWeighing, uncertaintyBelowRounding } from "../problems/functions/confidenceProblems";
import { roundingSlack, withoutRounding } from "../weighing/roundingSlack";
import { roundingVariance } from "../weighing/roundingVariance";
import { usualCoverage } from "./readingUncertainty";

/** Two weighings compared. */
export interface ChangeVerdict {
  /** after - before, g. */
  readonly change: number;
  /** The largest change that the readings alone explain, g. */
  readonly limit: number;
  /** The largest share of pairs of an unchanged load that come out as changed. */
  readonly level: number;
  readonly verdict: "loss" | "gain" | "not significant";
}

/**
 * Whether a change between two weighings of one load is more than their readings explain: |change| > changeLimit. An
 * unchanged load is called changed in at most 2 (1 - P(k)) of pairs, P the normal probability: 4.55 % at k = 2, half of it
 * each way. The change is freed of binary rounding first, so that one of exactly the limit is not significant.
 * @param before, after g
 * @param u standard uncertainty of one weighing, g: sqrt(s^2 + d^2 / 12) with scatter s and display step d, and
 *   sqrt(s^2 + 2 d^2 / 12) for a weighing before which the balance was zeroed. Of a mean of n readings s is the scatter of one over
 *   sqrt(n), and the rounding stays whole.
 * @param k coverage factor
 * @param readability display step d, g; left out, the least favourable one that u allows
 * @throws InputProblem when u is not below the first weighing, or below what rounding to the display step makes
 */
export function changeVerdict(before: number, after: number, u: number, k = usualCoverage, readability?: number): ChangeVerdict {
  if (u >= before) throw uncertaintyAboveWeighing(u, before);
  const change = withoutRounding(after - before);
  const limit = readability === undefined ? blindChangeLimit(u, k) : changeLimit(u, k, readability);
  const verdict = Math.abs(change) <= limit + roundingSlack ? "not significant" : change < 0 ? "loss" : "gain";
  return { change, limit, level: falseChange(k), verdict };
}

/** The share of differences of two normal deviates beyond k of their own standard deviations, either way. */
export const falseChange = (k: number): number => 2 * (1 - normalProbability(k));

/** A u typed with two figures may lie this much below the rounding it was worked out from. */
export const TYPED = 0.95;

/**
 * The scatter s that u leaves beside the rounding of one reading, g: sqrt(u^2 - d^2 / 12).
 * @throws InputProblem when u is below that rounding
 */
export function scatterWithin(u: number, readability: number): number {
  const variance = roundingVariance(readability, 1);
  if (u < TYPED * Math.sqrt(variance)) throw uncertaintyBelowRounding(u, readability, Math.sqrt(variance));
  return Math.sqrt(Math.max(0, u ** 2 - variance));
}

// u of a zeroed weighing without scatter is d / sqrt(6); two steps d are this many times as much.
const TWO_STEPS_OF_ZEROED = Math.sqrt(24);

/**
 * Largest change that two readings on a display with step d explain, g: k sqrt(2) s + d, at least the lesser of 2 d and
 * sqrt(24) u.
 *
 * Why not k sqrt(2) u (GUM, JCGM 100:2008, equation 10): rounding is no normal scatter. With s far below d a load on the border
 * between two steps shows one or the other at random, so that readings of an unchanged load differ by a step in half of
 * all pairs, while k sqrt(2) u may be 0.82 d. What bounds it: the loads x + s a and x + s b, a and b normal, are each shown
 * within d / 2, so the readings differ by at most s |a - b| + d. More than k sqrt(2) s + d therefore takes |a - b| > k sqrt(2),
 * which has the probability 2 (1 - P(k)), wherever x lies within its step and whatever s / d is; the same holds of means of n
 * readings, where a and b are means. In a zeroed weighing, or a mass by difference, the zero is rounded too. Then
 * u^2 = s^2 + 2 d^2 / 12, and with zero and load both on a border two steps differ in one pair of eight without any scatter,
 * hence the second bound. That both together hold the level for zeroed weighings, at every position of zero and load, was found by
 * enumerating the distribution of displayed differences, not proved.
 * @throws InputProblem when u is below what rounding to the display step makes
 */
export const changeLimit = (u: number, k: number, readability: number): number =>
  Math.max(k * Math.SQRT2 * scatterWithin(u, readability) + readability, Math.min(2 * readability, TWO_STEPS_OF_ZEROED * u));

/**
 * The largest of changeLimit over all display steps that u allows, g: sqrt(2 k^2 + 12) u, by Cauchy and Schwarz from
 * k sqrt(2) s + d with s^2 + d^2 / 12 = u^2, and at least sqrt(24) u. At k = 2 it is sqrt(24) u.
 */
export const blindChangeLimit = (u: number, k: number): number => Math.max(Math.sqrt(2 * k ** 2 + 12), TWO_STEPS_OF_ZEROED) * u;
