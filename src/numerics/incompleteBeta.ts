// Below this, one step of the recurrence is left to be added; from here on four terms of Stirling's series hold 15 figures.
const STIRLING_FROM = 12;
const HALF_LOG_TWO_PI = 0.9189385332046727;

/** ln gamma(x) for x above 0: Stirling's series, Abramowitz and Stegun (1964) 6.1.41, after the recurrence 6.1.15. */
export function logGamma(x: number): number {
  let product = 1;
  let shifted = x;
  for (; shifted < STIRLING_FROM; shifted++) product *= shifted;
  const inverse = 1 / (shifted * shifted);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse / 1188)))) / shifted;
  return (shifted - 1 / 2) * Math.log(shifted) - shifted + HALF_LOG_TWO_PI + series - Math.log(product);
}

// As far as a double goes; the fraction settles in about sqrt(max(a, b)) steps.
const SETTLED = 1e-16;
const MOST_STEPS = 10_000;
const TINY = 1e-300;

/**
 * The regularised incomplete beta function I_x(a, b), to about 14 digits: the continued fraction of the NIST Digital Library of Mathematical
 * Functions, 8.17.22, by the modified method of Lentz, on the side of the mean where it settles fast.
 * @param x 0 to 1
 * @param a, b above 0
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  return front * fraction(x, a, b);
}

function fraction(x: number, a: number, b: number): number {
  const away = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m < MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    result *= d * c;
    if (Math.abs(d * c - 1) < SETTLED) break;
  }
  return result;
}
