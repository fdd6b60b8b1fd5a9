import { RATE_VERDICTS } from "../problems/functions/furnaceProblems";
import type { HeatingRate } from "./heatingRate";

// Deviation from the set rate beyond which a run did not do what it was told. Common practice, no source.
export const AS_SET = 0.05;
// Halves that differ by more than a fifth of the rate bend. Common practice, no source.
export const BENT = 0.2;

/** What the rate says of the rate that was set, no more than its interval allows. */
export function rateVerdict({ rate, halfWidth, halves }: HeatingRate, set: number | undefined): string {
  const isBent = halves !== undefined && Math.abs(halves[0] - halves[1]) > BENT * Math.abs(rate);
  return `${againstSet(rate, halfWidth, set)}${isBent ? RATE_VERDICTS.uneven : ""}`;
}

function againstSet(rate: number, halfWidth: number, set: number | undefined): string {
  if (set === undefined) return RATE_VERDICTS.noSetRate;
  const [off, allowed] = [Math.abs(rate) - set, AS_SET * set];
  if (Math.abs(off) + halfWidth <= allowed) return RATE_VERDICTS.asSet;
  if (Math.abs(off) - halfWidth <= allowed) return RATE_VERDICTS.open;
  return off < 0 ? RATE_VERDICTS.slower : RATE_VERDICTS.faster;
}
