/** Typed counts and fractions closer than this differ only by binary rounding: 0.1 + 0.2 - 0.3 is not quite 0. */
export const ROUNDING_RESIDUE = 1e-9;
