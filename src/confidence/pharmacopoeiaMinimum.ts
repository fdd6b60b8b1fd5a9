// USP <41>: twice the standard deviation of weighing may be 0.10 % of the smallest mass, and the standard deviation counts
// as at least 0.41 display steps.
const DEVIATIONS = 2000;
const LEAST_STEPS = 0.41;

/**
 * Smallest mass, g, that the pharmacopoeia's rule lets a balance weigh: 2000 s, s not below 0.41 d (USP <41>).
 * @param repeatability standard deviation s of repeated weighings, g
 * @param readability display step d, g; 0 when the floor does not matter
 */
export const pharmacopoeiaMinimum = (repeatability: number, readability = 0): number =>
  DEVIATIONS * Math.max(repeatability, LEAST_STEPS * readability);
