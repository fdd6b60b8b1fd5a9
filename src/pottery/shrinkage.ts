import { grown, shrunkTooMuch } from "../problems/functions/potteryProblems";

export const SHRINKAGE_OF = ["length", "volume"] as const;
export type ShrinkageOf = (typeof SHRINKAGE_OF)[number];

// Porcelain, the greatest, loses about a fifth of its length from plastic to fired; half of it is two units or two marks. Common practice, no source.
export const LEAST_LEFT = 0.5;

/**
 * How much a length loses, as a share of the first: (before - after) / before, as ASTM C326 (from memory) refers drying and total shrinkage to
 * the plastic length. Of the volume: 1 - (after / before)^3, alike in all directions.
 * @param before, after one length, before and after, in one unit
 * @throws InputProblem for growth and for lengths that are not of one thing
 */
export function shrinkage(before: number, after: number, of: ShrinkageOf = "length"): number {
  if (after > before) throw grown(after, before);
  if (after < LEAST_LEFT * before) throw shrunkTooMuch(after, before);
  return of === "volume" ? 1 - (after / before) ** 3 : (before - after) / before;
}
