import type { NameReading } from "../../sharing/plain/reading/PlainReading";

export const mayBeOurs = (formula: string): boolean => /retort[._]/i.test(formula);

// A name beside any of these is part of a longer one.
const IN_NAME = "[\\p{L}\\p{N}_.\\\\?]";

const SYNTAX = /[.*+?^${}()|[\]\\/]/g;

/** Whether a formula uses a name that stands for a call of ours, be it through other names. */
export function usesNameOfOurs(names: readonly NameReading[]): (formula: string) => boolean {
  let holdsOne: (formula: string) => boolean = () => false;
  for (let left = names; ;) {
    const before = holdsOne;
    const now = left.filter(({ formula }) => mayBeOurs(formula) || before(formula));
    if (now.length === 0) return holdsOne;
    left = left.filter((one) => !now.includes(one));
    const any = new RegExp(`(?<!${IN_NAME})(?:${now.map(({ name }) => name.replace(SYNTAX, "\\$&")).join("|")})(?!${IN_NAME})`, "iu");
    holdsOne = (formula) => before(formula) || any.test(formula);
  }
}
