import { commonStep, FINEST, STRAY } from "../numerics/commonStep";

/** What ends the search for a common step: the finest grid by the range, and how far values stray by the largest. */
export const COMMON_STEP = { finest: FINEST, stray: STRAY } as const;

/** The step to which results are rounded, in their own unit, so that each stands for any value within half of it. */
export interface Rounding {
  /** 0 where the results show none. */
  readonly step: number;
  /** Whether somebody said so; otherwise it is the results' own common step, which may be a multiple of the display's. */
  readonly isGiven: boolean;
}

/**
 * The rounding of results: the readability given, else the largest step of which all their differences are multiples. A display
 * step divides it, so that what holds within half of it holds within half a display step. Two results have but one
 * difference, which says nothing; there the step must divide the results themselves.
 */
export function roundingOf(values: readonly number[], readability: number | undefined): Rounding {
  if (readability !== undefined) return { step: readability, isGiven: true };
  return { step: commonStep(values.length === 2 ? [0, ...values] : values), isGiven: false };
}

/** Two steps: values on a grid are whole steps apart but for binary rounding. */
export const CLEAR = 2 - 1e-6;

/**
 * Whether a suspect is at least two steps from its neighbour. One step apart two readings may be of values as good as equal, on
 * either side of the border between them.
 */
export const standsClear = (gap: number, step: number): boolean => gap >= CLEAR * step;
