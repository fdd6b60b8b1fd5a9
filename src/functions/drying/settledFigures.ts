// A fit settles to about eleven digits; the rest hangs on the order of its sums.
const FIGURES = 10;
// Nanograms, and as little of anything else: below it a fitted number is the rounding of a double.
const NOTHING = 1e-12;

/** A fitted number cleared of the digits that are rounding. */
export const settledFigures = (value: number): number => (Math.abs(value) < NOTHING ? 0 : Number(value.toPrecision(FIGURES)));
