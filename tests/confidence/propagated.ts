/** A measured value and its standard uncertainty. */
export type Measured = readonly [value: number, u: number];

// Small enough for the central difference to be the slope, large enough to stay clear of rounding.
const STEP = 1e-3;

/**
 * Combined standard uncertainty of a function of independent values, GUM (JCGM 100:2008) equation 10, with the partial
 * derivatives taken as central differences over a thousandth of each uncertainty: knows no formula of ours.
 */
export function propagated(of: (...values: number[]) => number, measured: readonly Measured[]): number {
  const values = measured.map(([value]) => value);
  const shifted = (index: number, by: number): number => of(...values.map((value, at) => (at === index ? value + by : value)));
  const parts = measured.map(([, u], index) => (shifted(index, STEP * u) - shifted(index, -STEP * u)) / (2 * STEP));
  return Math.hypot(...parts);
}
