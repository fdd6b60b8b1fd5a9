import { bracketedRoot } from "../numerics/bracketedRoot";
import { sampleMoments } from "../numerics/sampleMoments";
import { roundingVariance } from "../weighing/roundingVariance";
import { standsClear } from "./rounding";

// Grubbs' statistic of the largest value a of n rises with the ratio r of its distance from the mean M of the m = n - 1 others to the
// root of their sum of squares S about M: G^2 = (m/n)^2 m r^2 / (1 + (m/n) r^2), r^2 = (a - M)^2 / S.
const statistic = (rSquared: number, m: number): number => {
  const share = m / (m + 1);
  return share * Math.sqrt(m / (1 / rSquared + share));
};

/**
 * Grubbs' statistic of the largest value less what rounding to a step d may have put into it: the suspect half a step nearer to
 * the others, and their sum of squares larger by d^2 / 12 each, the variance of a rounding (GUM, JCGM 100:2008, 4.3.7), so that
 * values that agree to a step do not count as equal. 0 for a suspect that does not stand clear of the others.
 */
export function reducedGrubbs(values: readonly number[], step: number): number {
  const { suspect, others } = parted(values);
  if (!standsClear(suspect - (others.at(-1) as number), step)) return 0;
  const { mean, squares } = about(others);
  return statistic((suspect - step / 2 - mean) ** 2 / (squares + others.length * roundingVariance(step, 1)), others.length);
}

/**
 * The most that Grubbs' statistic of the largest value may be when every value stands for any within half a step of it; (n - 1) /
 * sqrt(n), which no sample exceeds, where all others may be equal. The suspect goes to the end of its interval. sqrt(S) / (a - M), a
 * norm over a positive linear form, is quasiconvex in the others (Boyd and Vandenberghe, Convex Optimization (2004), 3.4), and
 * so least where its derivatives vanish: every value as near as its interval lets it to one level c = M - S / (m (a - M)),
 * which is found as a root.
 */
export function mostGrubbs(values: readonly number[], step: number): number {
  const half = step / 2;
  const { suspect, others } = parted(values);
  const m = others.length;
  const a = suspect + half;
  const [lowest, highest] = [others[0] as number, others[m - 1] as number];
  if (highest - lowest <= step) return statistic(Infinity, m);
  const at = (level: number): Moments => about(others.map((value) => Math.min(Math.max(level, value - half), value + half)));
  const excess = (level: number): number => {
    const { mean, squares } = at(level);
    return mean - squares / (m * (a - mean)) - level;
  };
  const lowered = lowest - half;
  const { mean, squares } = at(excess(lowered) < 0 ? lowered : bracketedRoot(excess, lowered, highest + half));
  return statistic((a - mean) ** 2 / squares, m);
}

interface Moments {
  readonly mean: number;
  /** Sum of squares about the mean. */
  readonly squares: number;
}

function about(values: readonly number[]): Moments {
  const { mean, deviation } = sampleMoments(values);
  return { mean, squares: (values.length - 1) * deviation ** 2 };
}

function parted(values: readonly number[]): { readonly suspect: number; readonly others: readonly number[] } {
  const sorted = [...values].sort((a, b) => a - b);
  return { suspect: sorted.at(-1) as number, others: sorted.slice(0, -1) };
}
