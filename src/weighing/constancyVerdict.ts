import type { ConstancyCriterion } from "./constancyCriteria";
import type { ConstancyVerdict } from "./ConstancyStep";
import { fewestSteps } from "./fewestSteps";
import { roundingSlack } from "./roundingSlack";

export interface ComparedWindow {
  readonly criterion: ConstancyCriterion;
  /** Net weighings from the compared one to the newest, both included, g. */
  readonly window: readonly number[];
  /** Largest change that counts as constant, g. */
  readonly limit: number;
  /** Display step of the balance, g. */
  readonly readability?: number | undefined;
}

/**
 * What the newest of two compared weighings says. A gain beyond the limit is regained moisture, oxidation or a draught,
 * not constancy; nor are two ends that agree while a weighing between them strayed beyond the limit.
 */
export function constancyVerdict({ criterion, window, limit, readability }: ComparedWindow): ConstancyVerdict {
  const change = (window.at(-1) ?? 0) - (window[0] ?? 0);
  if (criterion === "of total loss" && limit === 0 && Math.abs(change) <= roundingSlack) return "too soon to tell";
  if (readability !== undefined && isUndecided(criterion, Math.abs(change), limit, readability)) return "balance too coarse";
  if (change > limit + roundingSlack) return "gain";
  if (change < -limit - roundingSlack) return "not yet";
  return spreadOf(window) > limit + roundingSlack ? "not yet" : "steady";
}

// These limits grow as the run goes on, so a balance too coarse for them now may serve later.
const GROWING: readonly ConstancyCriterion[] = ["of total loss", "per hour"];

/**
 * A limit below two display steps cannot be told from rounding. Where the limit still grows, a change beyond it by more
 * than those two steps is decided all the same: the sample is not constant yet.
 */
function isUndecided(criterion: ConstancyCriterion, change: number, limit: number, readability: number): boolean {
  const blind = fewestSteps * readability;
  return limit < blind - roundingSlack && !(GROWING.includes(criterion) && change > limit + blind);
}

const spreadOf = (samples: readonly number[]): number => samples.reduce(larger, -Infinity) - samples.reduce(smaller, Infinity);
const larger = (a: number, b: number): number => Math.max(a, b);
const smaller = (a: number, b: number): number => Math.min(a, b);
