import { all, any, isNumber, type Condition } from "../expressions/choices";
import { fn, is, reckon } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";

// More than this share of the dry sample, 2 in 100, is more often char left inside than scale; own bound, no source.
const DRY_PER_SCALE = 50;
// Scale, or char left inside, never comes to half of what was fired; own bound, no source.
const DRY_PER_OTHER = 2;

type End = NonNullable<RunSheet["end"]>;

/** Whether a vessel weighed again lost more than two readings explain. */
export const isLighter = ({ working }: RunSheet, end: End, sample: number): Condition =>
  is(fn("N", end.gain(sample)), "<", reckon(0, "-", fn("N", working.explained)));

/** Whether it gained more than scale. */
export function isMoreThanScale({ working, drying }: RunSheet, end: End, sample: number): Condition {
  const [gain, explained, dry] = [fn("N", end.gain(sample)), fn("N", working.explained), drying.net(sample)];
  const isMuch = is(reckon(gain, "*", DRY_PER_SCALE), ">", fn("MAX", fn("N", dry), reckon(explained, "*", DRY_PER_SCALE)));
  return all(isNumber(dry), isMuch);
}

/** Whether the vessel at the end can be doubted, so that what follows from it can be. */
export const isVesselDoubtful = (sheet: RunSheet, end: End, sample: number): Condition =>
  any(isLighter(sheet, end, sample), isMoreThanScale(sheet, end, sample));

/** Whether it cannot be the same vessel, or one of its two weights is no weight of it. */
export function isOtherVessel({ drying }: RunSheet, end: End, sample: number): Condition {
  const [gain, dry] = [end.gain(sample), drying.net(sample)];
  const isFar = is(reckon(fn("ABS", fn("N", gain)), "*", DRY_PER_OTHER), ">", fn("N", dry));
  return all(is(fn("COUNT", gain, dry), "=", 2), isFar);
}
