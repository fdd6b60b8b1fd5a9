/**
 * The most, in g, by which arithmetic on decimal readings can stray: 0.3 - 0.29 is not quite 0.01 in binary. A
 * nanogram is below the step of every balance and above the rounding of masses up to a tonne.
 */
export const roundingSlack = 1e-9;
