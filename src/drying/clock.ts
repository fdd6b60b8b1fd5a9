/**
 * How far minutes reckoned from clock times may be off, min. A time of day as a fraction to six decimals, 9:30 as 0.395833, is
 * right to 0.0007 min; clocks are read to the second, so half of one tells no two readings apart.
 */
export const clockSlack = 1 / 120;

/** The whole minute that reckoned minutes stand for, 30 for 29.99999999999998 or 30.00096, where there is one; else as they are. */
export function onTheMinute(minutes: number): number {
  const whole = Math.round(minutes);
  return Math.abs(minutes - whole) < clockSlack ? whole : minutes;
}
