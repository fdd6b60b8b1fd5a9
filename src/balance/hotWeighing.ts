/**
 * How much lighter a warm vessel read, at most, for each degree, g/degC: 0.19 mg for a porcelain crucible of 17 g. A
 * compact steel plummet of 17 g read 0.05 mg/degC light. Blade, "Differential Temperature Error in Weighing",
 * Analytical Chemistry.
 */
export const CRUCIBLE_RATE = 0.00019;

/**
 * The error to fear from a vessel weighed warm, g: difference times rate, in proportion as Blade found it. A reason to wait,
 * not a correction, since it depends on shape, draught and time.
 * @param difference vessel minus room, degC
 * @param rate g/degC
 */
export const hotWeighing = (difference: number, rate = CRUCIBLE_RATE): number => difference * rate;
