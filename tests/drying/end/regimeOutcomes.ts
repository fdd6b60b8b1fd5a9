import { endOfDrying } from "../../../src/drying/end/endOfDrying";
import { NoAnswer } from "../../../src/problems/NoAnswer";
import { type Regime, regimes } from "./regimes";

// Runs for DRYING.END by ways of drying that it is not told of. Every run has 30 g of which 10 g are water, 4 to 12 weighings, equal or
// growing intervals, and its last weighing after 2 to 7 e-foldings; its balance repeats to 0.3 or 1 display step.
const FINAL = 20;
export const WATER = 10;
const SPAN = 200;
const GROWTH = 1.3;
const WEIGHINGS = [4, 5, 6, 8, 10, 12];
const STAGES = [2, 4, 7];
const REPEATABILITIES = [0.3, 1];
export const BALANCES = [0.1, 0.01, 0.001];

/** What DRYING.END made of the runs of one regime on one balance. */
export interface Outcome {
  readonly runs: number;
  readonly answered: number;
  readonly covered: number;
  /** Runs that one exponential alone would cover, by its own uncertainty. */
  readonly coveredByCurve: number;
  readonly named: number;
  /** Predictions above the last weighing. */
  readonly above: number;
  /** g, median */
  readonly halfWidth: number;
  readonly curveHalfWidth: number;
}

function timesOf(count: number, grow: boolean): number[] {
  const ends = Array.from({ length: count }, (_, i) => (grow ? GROWTH ** i - 1 : i));
  return ends.map((end) => Math.round((10 * SPAN * end) / (ends.at(-1) as number)) / 10);
}

function outcomeOf(regime: Regime, step: number, rounds: number, normal: () => number): Outcome {
  const settings = WEIGHINGS.flatMap((count) =>
    [false, true].flatMap((grow) =>
      STAGES.flatMap((stage) => REPEATABILITIES.flatMap((scatter) => Array.from({ length: rounds }, () => ({ count, grow, stage, scatter })))),
    ),
  );
  let [answered, covered, coveredByCurve, named, above] = [0, 0, 0, 0, 0];
  const [halves, curveHalves]: [number[], number[]] = [[], []];
  for (const [run, { count, grow, stage, scatter }] of settings.entries()) {
    const truth = FINAL + (step * run) / settings.length;
    const times = timesOf(count, grow);
    const weights = times.map((minutes, i) => {
      const stray = i === count - 2 ? (regime.stray ?? 0) : 0;
      const grams = truth + WATER * regime.left((minutes / SPAN) * stage, stage);
      return Number((step * Math.round(grams / step + scatter * normal() + stray)).toFixed(3));
    });
    try {
      const { final, fit, uncertainty, curveUncertainty, slowerTail } = endOfDrying({ times, weights, readability: step });
      if (final > (weights.at(-1) as number)) above++;
      answered++;
      if (Math.abs(final - truth) <= uncertainty.expanded) covered++;
      if (Math.abs(fit.final - truth) <= curveUncertainty.expanded) coveredByCurve++;
      if (slowerTail) named++;
      halves.push(uncertainty.expanded);
      curveHalves.push(curveUncertainty.expanded);
    } catch (thrown) {
      if (!(thrown instanceof NoAnswer)) throw thrown;
    }
  }
  return { runs: settings.length, answered, covered, coveredByCurve, named, above, halfWidth: median(halves), curveHalfWidth: median(curveHalves) };
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1] ?? NaN;

const percent = (count: number, of: number): string => (of === 0 ? "-" : String(Math.round((100 * count) / of)));
const cellsOf = ({ runs, answered, covered, coveredByCurve, named, halfWidth, curveHalfWidth }: Outcome): string[] => [
  percent(answered, runs),
  percent(covered, answered),
  percent(coveredByCurve, answered),
  percent(named, answered),
  answered === 0 ? "-" : `${halfWidth.toPrecision(2)} (${curveHalfWidth.toPrecision(1)})`,
];
const HEADING = [
  "| way of drying | balance, g | answered, % | covered, % | by one curve alone, % | tail named, % | median half width, g (one curve alone) |",
  "| --- | --: | --: | --: | --: | --: | --: |",
];

/** @param rounds how often each combination of weighings, intervals, stage and repeatability is run */
export const outcomes = (rounds: number, normal: () => number): { regime: Regime; outcomes: Outcome[] }[] =>
  regimes.map((regime) => ({ regime, outcomes: BALANCES.map((step) => outcomeOf(regime, step, rounds, normal)) }));

/** The outcomes as a Markdown table. */
export function markdown(table: ReturnType<typeof outcomes>): string {
  const rows = table.flatMap(({ regime, outcomes: of }) =>
    of.map((outcome, i) => `| ${[regime.name, String(BALANCES[i]), ...cellsOf(outcome)].join(" | ")} |`),
  );
  return [...HEADING, ...rows].join("\n");
}
