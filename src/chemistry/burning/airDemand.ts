/**
 * Oxygen in dry air, g per g: mole fraction 0.2094 to 0.2095 at 28.965 g/mol gives 0.2313 to 0.2314.
 * Older books round to 0.232 or 0.23.
 */
export const OXYGEN_IN_AIR = 0.2314;

/** Molar mass of dry air, g/mol. Picard et al., Metrologia 45 (2008) 149-155, CIPM-2007: 28.965 46 with 400 ppm of carbon dioxide. */
export const AIR_MOLAR_MASS = 28.965;

/**
 * Dry air that brings a mass of oxygen: m(air) = m(O2) / w(O2). By mass and not by volume, as both are weighed; the share is an
 * argument because printed answers rest on 0.23 and 0.232 as often as on this value.
 * @param oxygen g (or g per g of fuel)
 * @param oxygenInAir mass fraction
 * @returns air in the unit of `oxygen`
 */
export const airDemand = (oxygen: number, oxygenInAir: number = OXYGEN_IN_AIR): number => oxygen / oxygenInAir;
