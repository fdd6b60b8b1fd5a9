import { hydrateBetween, hydrateFits, hydrateOpen, NO_HYDRATE_VERDICT, NO_WATER_TOLD } from "../problems/functions/decompositionProblems";
import type { HydrateWater } from "./hydrateWater";

// A claim needs the number within so many standard uncertainties, about 95 %.
export const COVERAGE = 2;
// Hydrates in print have whole numbers of water, halves (plaster) or thirds (3CdSO4·8H2O).
export const SIMPLE = [2, 3];
export const SLACK = 1e-9;

/** Which hydrate it is, and in words how far that holds. */
export interface HydrateVerdict {
  /** The number of waters claimed, else the nearest whole number. */
  readonly nearest: number;
  readonly words: string;
}

/**
 * A whole, half or third number of waters is claimed only where it lies within 2 u of n and no other whole number does; else the verdict says
 * "between" or "cannot tell", and without u there is none.
 */
export function hydrateVerdict({ n, uncertainty, anhydrous }: HydrateWater): HydrateVerdict {
  const nearest = Math.round(n);
  if (uncertainty === undefined) return { nearest, words: NO_HYDRATE_VERDICT };
  const [least, most] = [n - COVERAGE * uncertainty - SLACK, n + COVERAGE * uncertainty + SLACK];
  const within = (parts: number): number[] => {
    const [first, last] = [Math.max(0, Math.ceil(parts * least)), Math.floor(parts * most)];
    // More than a handful says no more than a handful does.
    return Array.from({ length: Math.min(MOST_LISTED, Math.max(0, last - first + 1)) }, (_, index) => first + index);
  };
  const name = (count: number, parts: number): string => hydrateFormula(anhydrous.text.trim(), count, parts);
  const wholes = within(1);
  const simple = SIMPLE.flatMap((parts) =>
    within(parts)
      .filter((count) => count % parts !== 0)
      .map((count) => ({ value: count / parts, name: name(count, parts) })),
  );
  const [whole] = wholes;
  if (wholes.length > 1) return { nearest, words: hydrateOpen(wholes.map((count) => name(count, 1))) };
  if (whole !== undefined) {
    const others = simple.map((one) => one.name);
    return { nearest: whole, words: whole === 0 ? NO_WATER_TOLD : hydrateFits(name(whole, 1), others) };
  }
  const [only, ...more] = simple;
  if (only === undefined) return { nearest, words: hydrateBetween(Math.floor(n), Math.ceil(n)) };
  if (more.length > 0) return { nearest, words: hydrateOpen(simple.map((one) => one.name)) };
  return { nearest: only.value, words: hydrateFits(only.name, []) };
}

export const MOST_LISTED = 6;

/** `CuSO4·5H2O`, `3CdSO4·8H2O`, `CuSO4` for no water. */
export function hydrateFormula(salt: string, waters: number, salts: number): string {
  if (waters === 0) return salt;
  return `${salts === 1 ? "" : salts}${salt}·${waters === 1 ? "" : waters}H2O`;
}
