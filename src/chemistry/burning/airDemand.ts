/**
 * Oxygen in dry air, g per g: mole fraction 0.2094 to 0.2095 at 28.965 g/mol gives 0.2313 to 0.2314.
 * Older books round to 0.232 or 0.23.
 */
export const OXYGEN_IN_AIR = 0.2314;

/** Molar mass of dry air, g/mol. Picard et al., Metrologia 45 (2008) 149-155, CIPM-2007: 28.965 46 with 400 ppm of carbon dioxide. */
export const AIR_MOLAR_MASS = 28.965;

// Room air with its moisture holds 0.22, and no book prints more than 0.232 for dry air; what lies outside is another gas.
const LEAST_OF_AIR = 0.22;
const MOST_OF_AIR = 0.25;
const OXYGEN_MOLAR_MASS = 31.998;
/** What is left of dry air without its oxygen, g/mol: nitrogen with argon. */
const REST_MOLAR_MASS = (1 - OXYGEN_IN_AIR) / (1 / AIR_MOLAR_MASS - OXYGEN_IN_AIR / OXYGEN_MOLAR_MASS);

/** "enriched" or "vitiated" where the mass fraction of oxygen is not that of ordinary air, else undefined. */
export const kindOfAir = (oxygenInAir: number): "enriched" | "vitiated" | undefined =>
  oxygenInAir > MOST_OF_AIR ? "enriched" : oxygenInAir < LEAST_OF_AIR ? "vitiated" : undefined;

/** The share by volume that belongs to a mass fraction of oxygen in nitrogen and argon: (w / M(O2)) / (w / M(O2) + (1 - w) / M(rest)). */
export function oxygenByVolume(oxygenInAir: number): number {
  const moles = oxygenInAir / OXYGEN_MOLAR_MASS;
  return moles / (moles + (1 - oxygenInAir) / REST_MOLAR_MASS);
}

/**
 * Dry air that brings a mass of oxygen: m(air) = m(O2) / w(O2). By mass and not by volume, as both are weighed; the share is an
 * argument because printed answers rest on 0.23 and 0.232 as often as on this value.
 * @param oxygen g (or g per g of fuel)
 * @param oxygenInAir mass fraction
 * @returns air in the unit of `oxygen`
 */
export const airDemand = (oxygen: number, oxygenInAir: number = OXYGEN_IN_AIR): number => oxygen / oxygenInAir;
