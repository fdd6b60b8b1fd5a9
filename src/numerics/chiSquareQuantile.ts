/**
 * The chi-square that is exceeded with the probability of a normal deviate z, one-sided: the cube approximation of Wilson and
 * Hilferty, Proc. Natl. Acad. Sci. 17 (1931) 684, within 1 % for z = 2.326 (a tail of 1 %) from one degree of freedom.
 * @param z normal deviate of that tail
 * @param degrees degrees of freedom, a whole number from 1
 */
export function chiSquareQuantile(z: number, degrees: number): number {
  const ninth = 2 / (9 * degrees);
  return degrees * (1 - ninth + z * Math.sqrt(ninth)) ** 3;
}
