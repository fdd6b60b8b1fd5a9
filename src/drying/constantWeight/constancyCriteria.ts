import { limitLooksLikePercent, limitNeeded, limitTooWide, tooFewSteps } from "../../problems/functions/constancyProblems";
import { roundingSlack } from "../../weighing/roundingSlack";

/**
 * What the limit of a constant-weight criterion is measured in:
 * - absolute: g
 * - of last: fraction of the newer of the two net weighings (EN 322, EN 13183-1, ISO 11465)
 * - of initial: fraction of the first net weighing
 * - of total loss: fraction of the loss from the first weighing to the newer one (ISO 18134-1)
 * - per gram: g of change per g of sample taken, as pharmacopoeias print it. The sample taken is the first net
 *   weighing, so 0.5 mg per g is 0.0005 and means the same as 0.0005 "of initial"
 * - per hour: fraction of the newer net weighing per hour between the two (ASTM D3302)
 * - readability: multiples of the balance's display step (ASTM D4442 method A)
 */
export const CONSTANCY_CRITERIA = ["absolute", "of last", "of initial", "of total loss", "per gram", "per hour", "readability"] as const;
export type ConstancyCriterion = (typeof CONSTANCY_CRITERIA)[number];

/** Two net weighings that are compared, and the first of the series, g. */
export interface ComparedSamples {
  readonly first: number;
  readonly newer: number;
  /** Between the two; 0 where no times are known. */
  readonly minutes: number;
}

const MINUTES_PER_HOUR = 60;

/**
 * The change in g that a criterion allows between two weighings, limit x what it is measured in. Never below 0.
 * @param limit in the unit of the criterion
 * @param readability display step, g
 */
export function allowedChange(criterion: ConstancyCriterion, limit: number, { first, newer, minutes }: ComparedSamples, readability = 0): number {
  switch (criterion) {
    case "absolute":
      return limit;
    case "of last":
      return limit * newer;
    case "of initial":
    case "per gram":
      return limit * first;
    case "of total loss":
      return limit * Math.max(0, first - newer);
    case "per hour":
      return limit * newer * (minutes / MINUTES_PER_HOUR);
    case "readability":
      return limit * readability;
  }
}

/**
 * The smallest change that a balance can be asked to decide, in display steps. Two readings are each off by up to half
 * a step, so one step of change can be rounding alone; ASTM D4442 method A takes twice the sensitivity.
 */
export const fewestSteps = 2;

// 0.1 % of the mass: EN 322, EN 13183-1; ISO 11465 and ASTM D2216 from memory.
export const USUAL_OF_LAST = 0.001;
// 4 % of the previous weighing: the solids in water of Standard Methods 2540, from memory. No wider limit was found.
export const WIDEST_SHARE = 0.04;
// A limit up to 1 mg (ISO 18134-3, from memory) is no milligrams typed as grams, and an ash of a few milligrams is rightly held
// to 0.2 mg (ISO 21656), which is more than that share of it.
export const ALWAYS_NARROW = 0.001;

const UNITS: Readonly<Record<ConstancyCriterion, string>> = {
  absolute: "g",
  "of last": "",
  "of initial": "",
  "of total loss": "",
  "per gram": "g per g",
  "per hour": "per hour",
  readability: "steps",
};

const ADVICE: Readonly<Record<ConstancyCriterion, string>> = {
  absolute: "Give grams: 0.5 mg is 0.0005.",
  "of last": "Type 0.1 % as 0.001 or 0.1%.",
  "of initial": "Type 0.1 % as 0.001 or 0.1%.",
  "of total loss": "Type 0.2 % as 0.002 or 0.2%.",
  "per gram": "Type 0.5 mg per g as 0.0005.",
  "per hour": "Type 0.1 % per hour as 0.001 or 0.1%.",
  readability: "Give a number of display steps, such as 2.",
};

const TOO_WIDE_ADVICE = { absolute: ADVICE.absolute, readability: "Check that readability is in grams, or take more sample." };

/**
 * The limit of a criterion, in its own unit, with the usual one where it may be left out. Limits in g are held against
 * the sample, since a number alone does not tell milligrams from grams.
 * @param firstSample net, g
 * @param readability g, for limits counted in display steps
 * @throws InputProblem when it is missing, or so wide that every weighing would pass: a percentage or milligrams
 */
export function limitInForce(criterion: ConstancyCriterion, given: number | undefined, firstSample: number, readability = 0): number {
  if (given === undefined && criterion !== "of last") throw limitNeeded(criterion, ADVICE[criterion]);
  const limit = given ?? USUAL_OF_LAST;
  if (criterion === "readability" && limit < fewestSteps) throw tooFewSteps(limit, fewestSteps);
  if (criterion === "absolute" || criterion === "readability") {
    const grams = criterion === "absolute" ? limit : limit * readability;
    if (grams > ALWAYS_NARROW && grams > WIDEST_SHARE * firstSample + roundingSlack)
      throw limitTooWide(grams, WIDEST_SHARE, firstSample, TOO_WIDE_ADVICE[criterion]);
  } else if (limit > WIDEST_SHARE) throw limitLooksLikePercent(limit, UNITS[criterion], WIDEST_SHARE, ADVICE[criterion]);
  return limit;
}
