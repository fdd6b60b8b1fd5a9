// Overend and Chornet, Phil. Trans. R. Soc. A 321 (1987) 523, doi:10.1098/rsta.1987.0029: R0 = t exp((T - 100) / 14.75).
export const REFERENCE = 100;
export const SCALE = 14.75;

/** R0 of a hold, min. @param temperature degC */
export const heldOrdinate = (temperature: number, minutes: number): number => minutes * Math.exp((temperature - REFERENCE) / SCALE);

/** R0 of a steady ramp, min: the integral of the same, 14.75 / rate (e^((T2 - 100) / 14.75) - e^((T1 - 100) / 14.75)). @param rate degC/min */
export const rampOrdinate = (from: number, to: number, rate: number): number =>
  (SCALE / rate) * (Math.exp((to - REFERENCE) / SCALE) - Math.exp((from - REFERENCE) / SCALE));

/** A ramp before a hold, from a temperature below it. */
export interface Ramp {
  readonly from: number;
  readonly rate: number;
}

/**
 * Severity, log10 R0, of a hold and the ramp before it, R0 in minutes. Fitted to steam treatment at about 100 to 260 degC; beyond that an
 * index to compare runs by, not a prediction.
 */
export const severity = (temperature: number, minutes: number, ramp?: Ramp): number =>
  Math.log10(heldOrdinate(temperature, minutes) + (ramp === undefined ? 0 : rampOrdinate(ramp.from, temperature, ramp.rate)));
