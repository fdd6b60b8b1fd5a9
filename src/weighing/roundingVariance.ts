// Variance of a rectangular distribution, width^2 / 12: GUM (JCGM 100:2008) 4.3.7.
const OF_WIDTH = 12;

/**
 * Variance, g^2, that rounding to the display step d puts into a mass: d^2 / 12 for each rounding. A mass by taring or by
 * difference is rounded twice, at zero and at the load, which makes d / sqrt(6), the 0.41 d of USP <41>.
 * @param readability display step d, g
 */
export const roundingVariance = (readability: number, roundings: 1 | 2): number => roundings * (readability ** 2 / OF_WIDTH);
