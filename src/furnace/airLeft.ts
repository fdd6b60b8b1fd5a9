/** Oxygen in dry air by volume: 0.2095 (0.209 39 to 0.209 46 in print). */
export const OXYGEN_BY_VOLUME = 0.2095;

/**
 * Share of the first air that is still in a vessel after N of its own volumes of gas have flowed through: e^-N. For a vessel that mixes
 * at once and never leaks; a plug flow would sweep it out in one volume, a dead corner not in a hundred.
 * @param volumes N, gas at the temperature of the vessel over the vessel's volume
 */
export const airLeft = (volumes: number): number => Math.exp(-volumes);
