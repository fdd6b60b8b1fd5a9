const FAHRENHEIT_PER_CELSIUS = 1.8;
const FREEZING_FAHRENHEIT = 32;

/** Degrees Celsius in the unit of a sheet: F = 1.8 C + 32, to whole degrees, downwards, so that a limit stays a limit. */
export const degreesFrom = (celsius: number, unit: "C" | "F"): number =>
  unit === "C" ? celsius : Math.floor(celsius * FAHRENHEIT_PER_CELSIUS + FREEZING_FAHRENHEIT);

/** A temperature that somebody typed in either unit, to a tenth of a degree: no limit, so it is rounded and not cut. */
export const typedDegrees = (celsius: number, unit: "C" | "F"): number =>
  unit === "C" ? celsius : Number((celsius * FAHRENHEIT_PER_CELSIUS + FREEZING_FAHRENHEIT).toFixed(1));

/** A difference of so many degrees Celsius in the unit of a sheet. */
export const degreesApart = (celsius: number, unit: "C" | "F"): number => (unit === "C" ? celsius : Math.round(celsius * FAHRENHEIT_PER_CELSIUS));

/** Bounds in degrees Celsius in the unit of a sheet. */
export const inDegrees = ({ atLeast, atMost }: { readonly atLeast: number; readonly atMost: number }, unit: "C" | "F") => ({
  atLeast: degreesFrom(atLeast, unit),
  atMost: degreesFrom(atMost, unit),
});
