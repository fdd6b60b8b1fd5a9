// Each pass at worst halves the bracket on one side; a double has 52 bits after the first, and a root at 0 more.
const MOST_PASSES = 500;

/**
 * Where a continuous function crosses 0 between two points at which its signs differ, to the last bits of a double.
 * False position with the Illinois halving: Dowell and Jarratt, BIT 11 (1971) 168, doi:10.1007/BF01934364.
 * @param low, high ends of the bracket, low < high
 * @throws Error when the signs at the two ends do not differ: a defect of the caller, not of the data
 */
export function bracketedRoot(of: (x: number) => number, low: number, high: number): number {
  let [a, fa, b, fb] = [low, of(low), high, of(high)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa * fb > 0) throw new Error(`no sign change between ${low} and ${high}`);
  for (let pass = 0; pass < MOST_PASSES && Math.abs(b - a) > Number.EPSILON * Math.abs(b); pass++) {
    const c = b - (fb * (b - a)) / (fb - fa);
    const fc = of(c);
    if (fc === 0 || c === b) return c;
    if (fb * fc < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [c, fc];
  }
  return b;
}
