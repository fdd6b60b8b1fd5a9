// A. Picard, R. S. Davis, M. Glaeser, K. Fujii, "Revised formula for the density of moist air (CIPM-2007)",
// Metrologia 45 (2008) 149, doi 10.1088/0026-1394/45/2/004: equations 1, A1.1 to A1.4 and their constants.

/** Molar gas constant that the paper was fitted with, J/(mol K): CODATA 2006. */
export const GAS_CONSTANT = 8.314472;
/** Molar mass of dry air with 400 ppm of carbon dioxide, kg/mol. */
export const DRY_AIR = 28.96546e-3;
/** Molar mass of water, kg/mol. */
export const WATER = 18.01528e-3;
/** Saturation vapour pressure, Pa: exp(A T^2 + B T + C + D / T), T in K. */
export const SATURATION = { A: 1.2378847e-5, B: -1.9121316e-2, C: 33.93711047, D: -6.3431645e3 } as const;
/** Enhancement factor: alpha + beta p + gamma t^2, p in Pa, t in degC. */
export const ENHANCEMENT = { alpha: 1.00062, beta: 3.14e-8, gamma: 5.6e-7 } as const;
/** Compressibility, in K/Pa and its powers, t in degC. */
export const COMPRESSIBILITY = {
  a0: 1.58123e-6,
  a1: -2.9331e-8,
  a2: 1.1043e-10,
  b0: 5.707e-6,
  b1: -2.051e-8,
  c0: 1.9898e-4,
  c1: -2.376e-6,
  d: 1.83e-11,
  e: -0.765e-8,
} as const;
