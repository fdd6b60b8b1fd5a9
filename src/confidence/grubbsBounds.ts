import { bracketedRoot } from "../numerics/bracketedRoot";
import { sampleMoments } from "../numerics/sampleMoments";

/**
 * How far Grubbs' statistic of the largest value can be told when each value shown stands for any within `half` of it.
 *
 * With suspect a, the mean M and the sum of squares S of the m = n - 1 others about M, G rises with r = (a - M) / sqrt(S):
 * G^2 = (m/n)^2 m r^2 / (1 + (m/n) r^2). So a goes to the end of its interval, and sqrt(S) / (a - M), a norm over a positive linear
 * form, is left to be made largest or smallest. It is quasiconvex in the others (Boyd and Vandenberghe, Convex
 * Optimization (2004), 3.4). Hence it is largest at a corner, with every other value at an end of its interval; of two values the
 * upper one goes up and the lower one down, since the reverse has the same mean and a smaller S; that leaves m + 1 corners, which
 * are all tried. And it is smallest where its derivatives vanish: every value as near as its interval lets it to one level
 * c = M - S / (m (a - M)), which is found as a root.
 */
export interface GrubbsBounds {
  readonly least: number;
  readonly most: number;
}

/** The least G of the largest value; 0 where it need not be the largest. */
export function leastGrubbs(values: readonly number[], half: number): number {
  const { suspect, others } = parted(values);
  const m = others.length;
  const a = suspect - half;
  const { mean, squares } = about(others);
  if (a <= mean + half) return 0;
  let [below, spread] = [0, 0];
  for (let lowered = 0; lowered <= m; lowered++) {
    // Offsets from the mean sum up to 0, so that those raised sum up to the lowered ones' with the other sign.
    const shift = half * (1 - (2 * lowered) / m);
    const sumOfSquares = squares - 4 * half * below + m * (half ** 2 - shift ** 2);
    spread = Math.max(spread, sumOfSquares / (a - mean - shift) ** 2);
    below += (others[lowered] ?? mean) - mean;
  }
  return statistic(1 / spread, m);
}

/** The most G of the largest value; (n - 1) / sqrt(n), which no sample exceeds, where all others may be equal. */
export function mostGrubbs(values: readonly number[], half: number): number {
  const { suspect, others } = parted(values);
  const m = others.length;
  const a = suspect + half;
  const [lowest, highest] = [(others[0] as number) - half, (others[m - 1] as number) + half];
  if (highest - half - (lowest + half) <= 2 * half) return statistic(Infinity, m);
  const at = (level: number): Moments => about(others.map((value) => Math.min(Math.max(level, value - half), value + half)));
  const excess = (level: number): number => {
    const { mean, squares } = at(level);
    return mean - squares / (m * (a - mean)) - level;
  };
  const { mean, squares } = at(excess(lowest) < 0 ? lowest : bracketedRoot(excess, lowest, highest));
  return statistic((a - mean) ** 2 / squares, m);
}

const statistic = (rSquared: number, m: number): number => {
  const share = m / (m + 1);
  return share * Math.sqrt(m / (1 / rSquared + share));
};

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
