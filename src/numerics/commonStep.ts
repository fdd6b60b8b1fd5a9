// A grid finer than this share of the range is none: it moves no statistic that anybody reads.
export const FINEST = 1e-6;
// Doubles, and the differences of a few of them, stray by a few units in the last place of the largest value.
export const STRAY = 8 * Number.EPSILON;

/** A length and the most by which it may stray. */
interface Length {
  readonly size: number;
  readonly stray: number;
}

/**
 * The largest step of which all differences between the values are whole multiples, by Euclid's algorithm; 0 where there is no
 * such step down to a millionth of the range, as with values worked out to all figures, or when all are equal. Values
 * that were rounded to a step, then shifted or scaled together, have that step or a multiple of it.
 * @param values at least one
 */
export function commonStep(values: readonly number[]): number {
  const least = values.reduce((one, other) => Math.min(one, other));
  const range = values.reduce((one, other) => Math.max(one, other)) - least;
  const stray = STRAY * Math.max(Math.abs(least), Math.abs(least + range));
  let step: Length = { size: range, stray };
  for (const value of values) {
    const { size } = commonDivisor(step, { size: value - least, stray });
    if (size <= FINEST * range) return 0;
    // The range holds a whole number of steps, which frees the step of what the divisions left.
    const steps = Math.round(range / size);
    step = { size: range / steps, stray: stray / steps };
  }
  return step.size;
}

/** Euclid's algorithm with nearest remainders, which at least halve; a remainder within what the two lengths stray by is none. */
function commonDivisor(one: Length, other: Length): Length {
  let [divisor, left] = [one, other];
  while (left.size > left.stray) {
    const times = Math.round(divisor.size / left.size);
    [divisor, left] = [left, { size: Math.abs(divisor.size - times * left.size), stray: divisor.stray + times * left.stray }];
  }
  return divisor;
}
