// A grid finer than this share of the range is none: it moves no statistic that anybody reads. What Euclid's algorithm leaves
// below a tenth of it is rounding of doubles.
const FINEST = 1e-6;
const NOTHING_LEFT = 1e-7;
// Doubles, and the differences of a few of them, stray by a few units in the last place of the largest value.
const STRAY = 16 * Number.EPSILON;

/**
 * The largest step of which all differences between the values are whole multiples, by Euclid's algorithm; 0 where there is no
 * such step down to a millionth of the range, as with values worked out to all figures, or when all are equal. Values
 * that were rounded to a step, then shifted or scaled together, have that step or a multiple of it.
 * @param values at least one
 */
export function commonStep(values: readonly number[]): number {
  const least = values.reduce((one, other) => Math.min(one, other));
  const range = values.reduce((one, other) => Math.max(one, other)) - least;
  const largest = Math.max(Math.abs(least), Math.abs(least + range));
  const nothing = Math.max(NOTHING_LEFT * range, STRAY * largest);
  let step = range;
  for (const value of values) {
    step = commonDivisor(step, value - least, nothing);
    if (step < FINEST * range || step <= 2 * nothing) return 0;
    // The range holds a whole number of steps, which frees the step of what the divisions left.
    step = range / Math.round(range / step);
  }
  return step;
}

/** Euclid's algorithm with nearest remainders, which at least halve; what is not above `nothing` counts as 0. */
function commonDivisor(one: number, other: number, nothing: number): number {
  let [divisor, left] = [one, other];
  while (left > nothing) [divisor, left] = [left, Math.abs(divisor - left * Math.round(divisor / left))];
  return divisor;
}
