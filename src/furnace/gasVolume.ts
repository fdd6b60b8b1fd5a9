/** Molar gas constant, J/(mol K), exact since 2019: SI brochure, 9th edition. */
export const GAS_CONSTANT = 8.314462618;
/** 0 degC in kelvin, exact by definition of the Celsius scale (SI brochure). */
export const ZERO_CELSIUS = 273.15;
/** One standard atmosphere, Pa. */
export const ATMOSPHERE = 101_325;
const LITRES_PER_M3 = 1000;

/**
 * Volume of a gas or vapour, L: V = n R T / p, n = mass / molar mass. The ideal gas: at 100 degC and 1 atm it gives steam 1.6 % too much
 * (steam tables, 1.673 L/g, from memory), and less the hotter it is.
 * @param mass g
 * @param molarMass g/mol
 * @param temperature degC
 * @param pressure Pa
 */
export const gasVolume = (mass: number, molarMass: number, temperature: number, pressure = ATMOSPHERE): number =>
  ((mass / molarMass) * GAS_CONSTANT * (temperature + ZERO_CELSIUS) * LITRES_PER_M3) / pressure;
