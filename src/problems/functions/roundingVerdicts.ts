import { plainNumber } from "../quoted";

// Steps are 1, 2 or 5 of a decimal place, or multiples; more figures would show what the arithmetic left.
export const STEP_FIGURES = 6;

/**
 * The verdict on results that their rounding leaves open.
 * @param step to which they are rounded, in their own unit
 * @param isGiven false where the step was read off the results
 */
export const roundedTooCoarsely = (step: number, isGiven: boolean): string => {
  const shown = plainNumber(step, STEP_FIGURES);
  return isGiven
    ? `cannot tell: rounded too coarsely, to steps of ${shown}; keep every value, and read finer or take more results`
    : `cannot tell: rounded too coarsely, by the look of it to steps of ${shown}; keep every value, and give readability if they are finer`;
};
