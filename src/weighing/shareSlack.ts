/** The most by which arithmetic on shares of 1 can stray in binary: 1 - 0.9 is not quite 0.1. */
export const shareSlack = 1e-12;
