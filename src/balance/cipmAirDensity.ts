import { COMPRESSIBILITY, DRY_AIR, ENHANCEMENT, GAS_CONSTANT, SATURATION, WATER } from "./cipm2007";
import { zeroCelsius } from "./zeroCelsius";

/**
 * Density of moist air with 400 ppm of carbon dioxide, kg/m3, by CIPM-2007 (Metrologia 45 (2008) 149), for 600 to
 * 1100 hPa and 15 to 27 degC.
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
 * Mole fraction of water vapour in the air, 0 to 1.
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
 * Compressibility factor Z of moist air, near 0.9996 in a weighing room.
 * @param t temperature, degC
 * @param pressure Pa
 * @param vapour mole fraction of water vapour
 */
export function compressibility(t: number, pressure: number, vapour: number): number {
  const { a0, a1, a2, b0, b1, c0, c1, d, e } = COMPRESSIBILITY;
  const ratio = pressure / (t + zeroCelsius);
  return 1 - ratio * (a0 + a1 * t + a2 * t ** 2 + (b0 + b1 * t) * vapour + (c0 + c1 * t) * vapour ** 2) + ratio ** 2 * (d + e * vapour ** 2);
}
