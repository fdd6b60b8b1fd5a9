// Molar gas constant, J/(mol K), exact by the definition of the kelvin and the mole (CODATA 2018).
const GAS_CONSTANT = 8.314462618;
const KELVIN_AT_ZERO_CELSIUS = 273.15;
/** One standard atmosphere, Pa. */
const ATMOSPHERE = 101_325;
const LITRES_PER_CUBIC_METRE = 1000;

/**
 * The volume that a mass of vapour fills where it leaves, litres: V = (m / M) R T / p, an ideal gas at one atmosphere. Tars that
 * condense below the temperature count as gas here, because they leave the vessel as such.
 * @param grams that leave as vapour
 * @param molarMass mean of the vapour, g/mol
 */
export const gasLitres = (grams: number, molarMass: number, celsius: number): number =>
  ((grams / molarMass) * GAS_CONSTANT * (celsius + KELVIN_AT_ZERO_CELSIUS) * LITRES_PER_CUBIC_METRE) / ATMOSPHERE;

/** Mean of what leaves plants when charred, water and carbon oxides with tars, g/mol: common practice, no source. A lower one is more gas. */
export const USUAL_MOLAR_MASS = 25;
