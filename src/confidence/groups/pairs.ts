import { studentTOfAnyDegrees } from "../../numerics/varianceRatio";
import type { Group } from "./groups";

/** Two groups compared: first less second. */
export interface Pair {
  readonly first: string;
  readonly second: string;
  readonly difference: number;
  /** Half the width of its interval. */
  readonly halfWidth: number;
  readonly degrees: number;
  readonly standardError: number;
}

const MISSED = 0.05;

/**
 * Each pair's difference with an interval, 95 % for all of them together: Welch's t with the degrees of freedom of Satterthwaite (Biometrics
 * Bull. 2 (1946) 110), the 5 % shared out over the pairs (Bonferroni). A little wider than need be; it needs no equal spreads.
 */
export function pairsOf(groups: readonly Group[]): readonly Pair[] {
  const count = (groups.length * (groups.length - 1)) / 2;
  return groups.flatMap((first, index) =>
    groups.slice(index + 1).map((second): Pair => {
      const [a, b] = [first.deviation ** 2 / first.count, second.deviation ** 2 / second.count];
      const degrees = (a + b) ** 2 / (a ** 2 / (first.count - 1) + b ** 2 / (second.count - 1));
      const standardError = Math.sqrt(a + b);
      return {
        first: first.label,
        second: second.label,
        difference: first.mean - second.mean,
        halfWidth: studentTOfAnyDegrees(MISSED / 2 / count, degrees) * standardError,
        degrees,
        standardError,
      };
    }),
  );
}
