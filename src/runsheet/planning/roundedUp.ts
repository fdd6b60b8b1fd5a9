const DIGITS = 3;
// What binary rounding adds to a quotient that should be whole.
const RESIDUE = 1e-9;

/** A mass rounded up to three digits, or to the balance's own step where that is coarser: 5.0279 g becomes 5.03 g. */
export function roundedUp(grams: number, readability: number): number {
  const step = Math.max(10 ** (Math.floor(Math.log10(grams)) + 1 - DIGITS), readability);
  return Math.ceil(grams / step - RESIDUE) * step;
}
