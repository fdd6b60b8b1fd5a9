/** Share of an opening's area that a jet through a sharp edge fills: 0.61 (orifice, from memory). */
export const DISCHARGE = 0.61;
/** A rise that a loose lid holds, Pa. Common practice, no source. */
export const USUAL_RISE = 10;
const LITRES_PER_M3 = 1000;
const SECONDS_PER_MINUTE = 60;
const MM_PER_M = 1000;

/** Mean flow, m3/s. @param volume L @param minutes in which it leaves */
export const meanFlow = (volume: number, minutes: number): number => volume / LITRES_PER_M3 / (minutes * SECONDS_PER_MINUTE);

/** Speed of the jet, m/s: sqrt(2 dp / density). @param rise Pa above the air @param density kg/m3 */
export const jetSpeed = (rise: number, density: number): number => Math.sqrt((2 * rise) / density);

/**
 * Diameter of the one round hole that passes the greatest flow, mm: Q = 0.61 (pi d^2 / 4) sqrt(2 dp / density), the orifice equation, with
 * Q the mean flow times a peak factor, because gas comes in a rush. Flow alone: tar narrows a hole, and nothing is added for that.
 * @param volume L of gas, at the temperature of the vent
 * @param minutes in which it leaves
 * @param density kg/m3 of that gas
 * @param peakFactor greatest flow over mean flow
 * @param rise pressure in the vessel above the air, Pa
 */
export const ventDiameter = (volume: number, minutes: number, density: number, peakFactor: number, rise = USUAL_RISE): number =>
  MM_PER_M * Math.sqrt((4 * peakFactor * meanFlow(volume, minutes)) / (Math.PI * DISCHARGE * jetSpeed(rise, density)));
