import type { DryingEnd } from "../../drying/end/endOfDrying";
import { curveAt } from "../../drying/end/fallingRateFit";
import { plainNumber } from "../../problems/quoted";
import type { Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { settledFigures } from "./settledFigures";

const LN_2 = Math.log(2);

/** The prediction as rows of label, value and unit, always fourteen. */
export function dryingEndTable(end: DryingEnd): readonly (readonly Shown[])[] {
  const { fit, final, uncertainty, waterUncertainty, weighingsLeft, threePoint } = end;
  return [
    ["Predicted final sample", settledFigures(final), "g"],
    ["its standard uncertainty", settledFigures(uncertainty.standard), "g"],
    ["its 95 % uncertainty, plus or minus", settledFigures(uncertainty.expanded), "g"],
    ["Water still in the sample, by the curve", settledFigures(end.waterLeft), "g"],
    ["its standard uncertainty", settledFigures(waterUncertainty.standard), "g"],
    ["Rate constant", settledFigures(fit.rate), "1/min"],
    ["its standard uncertainty", settledFigures(end.rateUncertainty), "1/min"],
    ["Time in which the water halves", settledFigures(LN_2 / fit.rate), "min"],
    ["More weighings until constant", typeof weighingsLeft === "number" ? weighingsLeft : "", `every ${shortMinutes(end.interval)} min`],
    ["Weighings on the falling rate", end.points.length, `of ${end.made}`],
    ["Scatter about the curve", settledFigures(end.scatter), "g"],
    ["Three-point extrapolation", typeof threePoint === "string" ? "" : settledFigures(threePoint.final), "g"],
    ["Cross-check", threePointWords(end), ""],
    ["Verdict", verdict(end), ""],
  ];
}

// A tenth of a minute is as well as weighings are timed by hand.
const shortMinutes = (minutes: number): string => String(Math.round(minutes * 10) / 10);

/** A predicted end line by line: the curve, how far each weighing lies from it, and what follows. */
export function dryingEndWorking(end: DryingEnd): readonly string[] {
  const { fit, final, lowest, points, made, uncertainty, curveUncertainty } = end;
  const first = made - points.length + 1;
  return [
    `falling rate: weighings ${first} to ${made} of ${made}`,
    `curve: ${inFigures(fit.final)} + ${inFigures(fit.water)} * exp(-${inFigures(fit.rate)} * (t - ${inFigures(fit.from)})) g, t in min`,
    ...points.map(
      ({ minutes, grams }, i) =>
        `weighing ${first + i}, ${inFigures(minutes)} min: ${inFigures(grams)} g, on the curve ${inFigures(curveAt(fit, minutes))} g`,
    ),
    `scatter = ${inFigures(settledFigures(end.scatter))} g with ${points.length} - 3 = ${fit.degrees} to spare`,
    `predicted final sample = ${inFigures(final)} g${final < fit.final ? ", the last weighing, since the curve ends above it" : ""}`,
    `its 95 % uncertainty by this curve alone: ${inFigures(curveUncertainty.expanded)} g; standard ${inFigures(curveUncertainty.standard)} g`,
    `by every curve that the weighings allow, down to ${inFigures(lowest)} g: ${inFigures(uncertainty.expanded)} g; standard ${inFigures(uncertainty.standard)} g`,
    threePointWords(end),
    verdict(end),
  ];
}

// With one or two weighings to spare the scatter is a guess; Student's factor at 2 degrees of freedom is 4.3.
const FEW_DEGREES = 2;

/** The prediction in plain words. It always says that it is not the dry weight. */
function verdict(end: DryingEnd): string {
  const doubts = [
    ...(end.fit.degrees <= FEW_DEGREES ? ["Few weighings carry the curve, so go by the 95 % uncertainty."] : []),
    ...(end.scattersTooMuch
      ? [`The weighings scatter by ${inShort(end.scatter)} g about the curve, more than the balance explains: the end is in doubt.`]
      : []),
  ];
  return [outlook(end), ...tailWords(end), ...doubts, "A prediction, not the dry weight: that is what you weigh once it is constant."].join(" ");
}

function outlook({ weighingsLeft, waterLeft, step, slowerTail, limit, criterion, interval }: DryingEnd): string {
  const rule = `${plainNumber(limit)} (${criterion})`;
  const isShown = waterLeft >= step;
  const water = isShown ? `about ${inShort(waterLeft)} g of water` : `less water than the ${plainNumber(step)} g that the weighings show`;
  if (weighingsLeft === 0) return `Constant at the last weighing by ${rule}, with ${water} still to go by the curve.`;
  if (weighingsLeft === "balance too coarse")
    return `Not constant yet: ${water} still in it. By then ${rule} is below two display steps, which this balance cannot decide.`;
  if (weighingsLeft === "too many")
    return `Not constant yet: ${water} still in it, and the interval is too short to reach ${rule}. Weigh less often.`;
  const more = weighingsLeft === 1 ? "one more weighing" : `${weighingsLeft} more weighings`;
  return `Not constant yet: ${water} still in it. ${slowerTail ? "At least" : "About"} ${more}, ${inShort(interval)} min apart, until ${rule} is met.`;
}

/** What is known of a slower part of the water, and how low it may bring the end. */
function tailWords({ slowerTail, lowest, final, curveUncertainty }: DryingEnd): readonly string[] {
  const below = final - lowest;
  const end = `${plainNumber(Number(lowest.toFixed(decimalsFor(below))))} g`;
  if (slowerTail) return [`The last weighings fall more slowly than the first promise: a slower tail, and the end may be as low as ${end}.`];
  if (below <= curveUncertainty.expanded) return [];
  return [`These weighings cannot rule out a slower tail, with which the end may be as low as ${end}.`];
}

/** What the three-point extrapolation says of the curve, or why there is none. */
function threePointWords({ threePoint, fit, curveUncertainty: uncertainty, weighingDeviation }: DryingEnd): string {
  if (threePoint === "intervals unequal") return "No three-point extrapolation: no three weighings that end with the last have equal intervals.";
  if (typeof threePoint === "string") return `No three-point extrapolation: ${threePoint}.`;
  const apart = Math.abs(threePoint.final - fit.final);
  const coverage = uncertainty.expanded / uncertainty.standard;
  return apart <= Math.hypot(uncertainty.expanded, coverage * threePoint.gain * weighingDeviation)
    ? "The three-point extrapolation agrees within the 95 % uncertainties."
    : `The three-point extrapolation is ${inShort(apart)} g off, more than the 95 % uncertainties explain: weigh on before relying on either.`;
}

// An estimate in a sentence: more figures would claim what it does not know.
const FIGURES = 2;
// Nanograms, as a sample is taken.
const MOST_DECIMALS = 9;

/** An estimated number as a sentence shows it. */
const inShort = (value: number): string => plainNumber(value, FIGURES);

/** Decimals at which a difference shows those figures. */
const decimalsFor = (difference: number): number => Math.min(MOST_DECIMALS, Math.max(0, FIGURES - 1 - Math.floor(Math.log10(difference))));
