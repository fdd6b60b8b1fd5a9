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

/** 0 degC in kelvin, exact by definition of the Celsius scale (SI brochure). */
export const zeroCelsius = 273.15;

/**
 * Density of moist air with 400 ppm of carbon dioxide, kg/m3, by CIPM-2007 (above), for 600 to 1100 hPa and 15 to 27 degC:
 * p M / (Z R T) (1 - x (1 - Mv / M)), x the mole fraction of water vapour. The equation of state that mass laboratories use,
 * good to 2.2e-5 (its abstract, from memory).
 * @param temperature degC
 * @param pressure Pa
 * @param humidity relative, fraction
 */
export function cipmAirDensity(temperature: number, pressure: number, humidity: number): number {
  const kelvin = temperature + zeroCelsius;
  const vapour = vapourFraction(temperature, pressure, humidity);
  const z = compressibility(temperature, pressure, vapour);
  return ((pressure * DRY_AIR) / (z * GAS_CONSTANT * kelvin)) * (1 - vapour * (1 - WATER / DRY_AIR));
}

/**
 * Mole fraction of water vapour in the air, 0 to 1: h f psat / p with the enhancement factor f (equations A1.1 to A1.3).
 * @param temperature degC
 * @param pressure Pa
 * @param humidity relative, fraction
 */
export function vapourFraction(temperature: number, pressure: number, humidity: number): number {
  const kelvin = temperature + zeroCelsius;
  const { A, B, C, D } = SATURATION;
  const saturation = Math.exp(A * kelvin ** 2 + B * kelvin + C + D / kelvin);
  const { alpha, beta, gamma } = ENHANCEMENT;
  return (humidity * (alpha + beta * pressure + gamma * temperature ** 2) * saturation) / pressure;
}

/**
 * Compressibility factor Z of moist air, near 0.9996 in a weighing room (equation A1.4).
 * @param t temperature, degC
 * @param pressure Pa
 * @param vapour mole fraction of water vapour
 */
export function compressibility(t: number, pressure: number, vapour: number): number {
  const { a0, a1, a2, b0, b1, c0, c1, d, e } = COMPRESSIBILITY;
  const ratio = pressure / (t + zeroCelsius);
  return 1 - ratio * (a0 + a1 * t + a2 * t ** 2 + (b0 + b1 * t) * vapour + (c0 + c1 * t) * vapour ** 2) + ratio ** 2 * (d + e * vapour ** 2);
}
