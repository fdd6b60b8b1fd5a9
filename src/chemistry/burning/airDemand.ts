/**
 * Oxygen in dry air, g per g: mole fraction 0.2094 to 0.2095 at 28.965 g/mol gives 0.2313 to 0.2314.
 * Older books round to 0.232 or 0.23.
 */
export const OXYGEN_IN_AIR = 0.2314;

/**
 * Air that brings a mass of oxygen.
 * @param oxygen g (or g per g of fuel)
 * @param oxygenInAir mass fraction
 * @returns air in the unit of `oxygen`
 */
export const airDemand = (oxygen: number, oxygenInAir: number = OXYGEN_IN_AIR): number => oxygen / oxygenInAir;
