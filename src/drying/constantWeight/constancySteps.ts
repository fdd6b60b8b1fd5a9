import { balanceTooCoarse, readabilityNeeded, timesNeeded } from "../../problems/functions/constancyProblems";
import { roundingSlack, withoutRounding } from "../../weighing/roundingSlack";
import { clockSlack, onTheMinute } from "../clock";
import { checkTimes, netSamples } from "../weighingSeries";
import { allowedChange, fewestSteps, limitInForce, type ConstancyCriterion } from "./constancyCriteria";

/** A series of weighings of one drying sample and what counts as constant. */
export interface ConstancyRun {
  /** In the order taken, g: with the vessel when `vessel` is given, else without. */
  readonly weights: readonly number[];
  /** Empty vessel, g; left out or 0 when the weighings are net. */
  readonly vessel?: number | undefined;
  /** Minutes of each weighing, rising; later planned times may follow. */
  readonly times?: readonly number[] | undefined;
  /** In the unit of the criterion; left out, 0.001 of the last weighing. */
  readonly limit?: number | undefined;
  /** Left out, "of last". */
  readonly criterion?: ConstancyCriterion | undefined;
  /** Smallest display step of the balance, g; without it the balance is taken as fine enough. */
  readonly readability?: number | undefined;
  /** Least minutes between two weighings that are compared; left out or 0, neighbours are compared. */
  readonly interval?: number | undefined;
}

/** "first" has nothing before it; "too soon to tell" has nothing early enough, or no loss yet, to be judged by. */
export type ConstancyVerdict = "first" | "not yet" | "steady" | "gain" | "too soon to tell" | "balance too coarse";

/** One weighing of a series as a constant-weight criterion sees it. */
export interface ConstancyStep {
  /** From 1, in the order taken. */
  readonly weighing: number;
  /** Net, g. */
  readonly sample: number;
  /** Number, from 1, of the earlier weighing it is compared with. */
  readonly comparedWith?: number;
  /** Sample minus the one it is compared with, g: negative for a loss. */
  readonly change?: number;
  /** Largest change that counts as constant here, g. */
  readonly limit?: number;
  readonly verdict: ConstancyVerdict;
}

/**
 * The number, from 1, of the first weighing from which every later one is steady too; 0 while the sample is not steady,
 * which includes a run with fewer than two weighings or none early enough to compare with. The last unbroken steady run
 * counts, not the first steady pair: a sample that went on losing was not dry.
 * @throws InputProblem as constancySteps
 * @throws NoAnswer when the balance is too coarse for the limit at the newest weighing
 */
export function constantWeight(run: ConstancyRun): number {
  const steps = constancySteps(run);
  const newest = steps.at(-1);
  if (newest?.verdict === "balance too coarse") throw balanceTooCoarse(run.readability ?? 0, newest.limit ?? 0, newest.weighing);
  let unbroken = steps.length;
  while (unbroken > 0 && steps[unbroken - 1]?.verdict === "steady") unbroken--;
  return steps[unbroken]?.weighing ?? 0;
}

/**
 * Every weighing of a series with the weighing it is compared with, the change, the limit and the verdict: steady where
 * |change| <= limit, all in g of sample without vessel, as a share of vessel and sample would pass anything.
 * @throws InputProblem when the weighings, times or limit cannot be those of a drying run, or a criterion lacks its input
 */
export function constancySteps(run: ConstancyRun): ConstancyStep[] {
  const { times, criterion = "of last", readability, interval = 0 } = run;
  const samples = netSamples(run.weights, run.vessel ?? 0);
  const first = samples[0] ?? 0;
  if (times !== undefined) checkTimes(run.weights, times);
  else if (criterion === "per hour") throw timesNeeded('the criterion "per hour"');
  else if (interval > 0) throw timesNeeded("interval");
  if (criterion === "readability" && readability === undefined) throw readabilityNeeded();
  const limitValue = limitInForce(criterion, run.limit, first, readability);

  return samples.map((sample, index) => {
    const weighing = index + 1;
    if (index === 0) return { weighing, sample, verdict: "first" };
    const compared = comparedWeighing(index, times, interval);
    if (compared === undefined) return { weighing, sample, verdict: "too soon to tell" };
    const minutes = times === undefined ? 0 : onTheMinute((times[index] as number) - (times[compared] as number));
    const limit = allowedChange(criterion, limitValue, { first, newer: sample, minutes }, readability);
    const window = samples.slice(compared, weighing);
    const change = withoutRounding(sample - (samples[compared] as number));
    return { weighing, sample, comparedWith: compared + 1, change, limit, verdict: verdictOn({ criterion, window, change, limit, readability }) };
  });
}

/** The neighbour, or with a least interval the latest weighing taken at least that long before; undefined when there is none. */
function comparedWeighing(index: number, times: readonly number[] | undefined, interval: number): number | undefined {
  let earlier = index - 1;
  if (times !== undefined && interval > 0) {
    const latest = (times[index] as number) - interval + clockSlack;
    while (earlier >= 0 && (times[earlier] as number) > latest) earlier--;
  }
  return earlier < 0 ? undefined : earlier;
}

interface ComparedWindow {
  readonly criterion: ConstancyCriterion;
  /** Net weighings from the compared one to the newest, both included, g. */
  readonly window: readonly number[];
  readonly change: number;
  readonly limit: number;
  readonly readability: number | undefined;
}

/**
 * A gain beyond the limit is regained moisture, oxidation or a draught, not constancy; nor are two ends that agree while
 * a weighing between them strayed beyond the limit.
 */
function verdictOn({ criterion, window, change, limit, readability = 0 }: ComparedWindow): ConstancyVerdict {
  if (criterion === "of total loss" && limit === 0 && Math.abs(change) <= roundingSlack) return "too soon to tell";
  const blind = fewestSteps * readability;
  // A limit below two display steps cannot be told from rounding, but a change that is more than those two steps beyond it can.
  const isVague = limit < blind - roundingSlack;
  const beyond = limit + roundingSlack + (isVague ? blind : 0);
  if (change > beyond) return "gain";
  if (change < -beyond || spreadOf(window) > beyond) return "not yet";
  return isVague ? "balance too coarse" : "steady";
}

const spreadOf = (samples: readonly number[]): number =>
  samples.reduce((most, sample) => Math.max(most, sample), -Infinity) - samples.reduce((least, sample) => Math.min(least, sample), Infinity);
