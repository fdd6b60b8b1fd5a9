import { zeroCelsius } from "./cipmAirDensity";

/** OIML R 111-1, equation E.3-1 (from memory): (0.34848 p - 0.009 h exp(0.061 t)) / (273.15 + t), p in hPa, h in percent. */
export const OIML = { pressure: 0.34848, humidity: 0.009, exponent: 0.061 } as const;

const PASCALS_IN_HECTOPASCAL = 100;
const PERCENT = 100;

/**
 * Density of moist air, kg/m3, by the simplified formula above of OIML R 111-1 (from memory, with its range: 900 to 1100 hPa,
 * 10 to 30 degC, humidity to 80 %, there good to 2e-4).
 * @param temperature degC
 * @param pressure Pa
 * @param humidity relative, fraction
 */
export const oimlAirDensity = (temperature: number, pressure: number, humidity: number): number =>
  ((OIML.pressure * pressure) / PASCALS_IN_HECTOPASCAL - OIML.humidity * PERCENT * humidity * Math.exp(OIML.exponent * temperature)) /
  (zeroCelsius + temperature);
