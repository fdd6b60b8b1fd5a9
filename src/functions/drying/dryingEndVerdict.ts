import type { DryingEnd } from "../../drying/DryingEnd";
import { plainNumber } from "../../problems/quoted";
import { inShort } from "./inShort";

// With one or two weighings to spare the scatter is a guess; Student's factor at 2 degrees of freedom is 4.3.
const FEW_DEGREES = 2;
// Three times what a balance explains that repeats to one step, in terms of its roundings alone: sqrt((1 + 1/6) / (1/6)).
const TOO_MUCH_SCATTER = 3 * Math.sqrt(7);

/** The prediction in plain words. It always says that it is not the dry weight. */
export function dryingEndVerdict(end: DryingEnd): string {
  const doubts = [
    ...(end.fit.degrees <= FEW_DEGREES ? ["Few weighings carry the curve, so go by the 95 % uncertainty."] : []),
    ...(end.excess !== undefined && end.excess > TOO_MUCH_SCATTER
      ? [`The weighings scatter by ${inShort(end.scatter)} g about the curve, more than the balance explains: the end is in doubt.`]
      : []),
  ];
  return [outlook(end), ...doubts, "A prediction, not the dry weight: that is what you weigh once it is constant."].join(" ");
}

function outlook({ weighingsLeft, waterLeft, limit, criterion, interval }: DryingEnd): string {
  const rule = `${plainNumber(limit)} (${criterion})`;
  const water = `about ${inShort(waterLeft)} g of water`;
  if (weighingsLeft === 0) return `Constant at the last weighing by ${rule}, with ${water} still to go by the curve.`;
  if (weighingsLeft === "balance too coarse")
    return `Not constant yet: ${water} still in it. By then ${rule} is below two display steps, which this balance cannot decide.`;
  if (weighingsLeft === "too many")
    return `Not constant yet: ${water} still in it, and the interval is too short to reach ${rule}. Weigh less often.`;
  const more = weighingsLeft === 1 ? "one more weighing" : `${weighingsLeft} more weighings`;
  return `Not constant yet: ${water} still in it. About ${more}, ${inShort(interval)} min apart, until ${rule} is met.`;
}
