import { all, any, isNumber, square, sum, when, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { explainedBy } from "./explained";

// More than this share of the dry sample, 1 in 200, is more often char left inside than scale, and moves the answer by half of a usual
// wanted ±; own bound, no source.
const DRY_PER_SCALE = 200;
// Scale, or char left inside, never comes to half of what was fired; own bound, no source.
const DRY_PER_OTHER = 2;

// A rectangle of this width has so much over it: |g| / sqrt(12) (GUM, JCGM 100:2008, 4.3.7).
const RECTANGLE = 12;

type End = NonNullable<RunSheet["end"]>;

/**
 * What a gain of the vessel puts into the variance of a mass, g squared. Scale on the vessel and char left inside cannot be told apart, nor
 * when it came, so anything between none and all of the gain g may have to be taken off. Where a part f of it was, the truth lies by
 * (1/2 - f) g off the middle of that rectangle on the mean: g^2 (1/12 + (1/2 - f)^2) (GUM, JCGM 100:2008, 4.3.7; F.2.4.5 from memory). A gain that two
 * readings explain is none, and their uncertainty is counted already.
 * @param part of the gain taken off: all of it from the last table, half from one before it, or a share that is worked out
 */
export function gainVariance(sheet: RunSheet, sample: number, part: "all" | "half" | { readonly share: Expression }): Expression {
  const { end } = sheet;
  if (end === undefined) return 0;
  const gain = fn("N", end.gain(sample));
  const middle = reckon(1, "/", RECTANGLE);
  const factor =
    part === "all" ? reckon(4, "/", RECTANGLE) : part === "half" ? middle : sum(middle, square(reckon(reckon(1, "/", 2), "-", part.share)));
  return when(is(fn("ABS", gain), ">", explainedBy(sheet)), reckon(square(gain), "*", factor), 0);
}

/** Whether a vessel weighed again lost more than two readings explain. */
export const isLighter = (sheet: RunSheet, end: End, sample: number): Condition =>
  is(fn("N", end.gain(sample)), "<", reckon(0, "-", explainedBy(sheet)));

/** Whether it gained more than scale. */
export function isMoreThanScale(sheet: RunSheet, end: End, sample: number): Condition {
  const { drying } = sheet;
  // With no limit known a share of the dry sample is asked for all the same.
  const [gain, explained, dry] = [fn("N", end.gain(sample)), fn("N", sheet.working.explained), drying.net(sample)];
  const isMuch = is(reckon(gain, "*", DRY_PER_SCALE), ">", fn("MAX", fn("N", dry), reckon(explained, "*", DRY_PER_SCALE)));
  return all(isNumber(dry), isMuch);
}

// Of the dry sample a tenth is a third of a usual char: nobody leaves so much inside; own bound, no source.
const DRY_PER_INSIDE = 10;

/** Whether it gained more than scale and char left inside can. */
export function isMoreThanInside(sheet: RunSheet, end: End, sample: number): Condition {
  const dry = fn("N", sheet.drying.net(sample));
  const isFar = is(reckon(fn("N", end.gain(sample)), "*", DRY_PER_INSIDE), ">", dry);
  return all(isMoreThanScale(sheet, end, sample), isFar);
}

/** Whether that of any sample can be doubted, whose gain is in what all of them together give. */
export const isAnyVesselDoubtful = (sheet: RunSheet): Condition | undefined => {
  const { end, samples } = sheet;
  return end && any(...samples.map((sample) => isVesselDoubtful(sheet, end, sample)));
};

/** Whether the vessel at the end can be doubted, so that what follows from it can be. */
export const isVesselDoubtful = (sheet: RunSheet, end: End, sample: number): Condition =>
  any(isLighter(sheet, end, sample), isMoreThanScale(sheet, end, sample));

/** Whether it cannot be the same vessel, or one of its two weights is no weight of it. */
export function isOtherVessel({ drying }: RunSheet, end: End, sample: number): Condition {
  const [gain, dry] = [end.gain(sample), drying.net(sample)];
  const isFar = is(reckon(fn("ABS", fn("N", gain)), "*", DRY_PER_OTHER), ">", fn("N", dry));
  // A dry mass of 0 or less has a slip of its own, and accuses no vessel.
  return all(is(fn("COUNT", gain, dry), "=", 2), is(fn("N", dry), ">", 0), isFar);
}
