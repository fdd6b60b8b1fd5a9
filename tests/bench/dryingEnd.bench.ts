import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { fallingRateFit } from "../../src/drying/end/fallingRateFit";
import { dryingEndFunction } from "../../src/functions/drying/dryingEndFunction";
import { every, simulatedRun } from "../drying/simulatedRun";
import { seededNormal } from "../numerics/seededNormal";
import { agree, inTurn, median, minimum, printed, timed } from "./inTurn";

// DRYING.END on 2,000 runs of 20 weighings, as 2,000 cells would call it; the bare curve fit in it against
// ml-levenberg-marquardt on the same points, from the same kind of start; and how the cost grows with the weighings.
const RUNS = 2000;
const WEIGHINGS = 20;
const ROUNDS = 11;
const WARM_UP_ROUNDS = 2;
const INTERVAL = 30;
const DEVIATION = 0.001;
const GROWN = [20, 40, 80, 160, 320];
// A tenth of the balance's own scatter: the two stop by different rules.
const SAME_END = 1e-4;

const normal = seededNormal(7);
const runsOf = (count: number, weighings: number): { times: number[]; weights: number[] }[] =>
  Array.from({ length: count }, (_, i) => {
    // The same span of drying, weighed more or less often.
    const times = every((INTERVAL * WEIGHINGS) / weighings, weighings);
    const { weights } = simulatedRun({ times, final: 6 + i / count, water: 3, rate: 0.005, readability: DEVIATION }, normal);
    return { times, weights: [...weights] };
  });
const asColumn = (values: readonly number[]): number[][] => values.map((value) => [value]);
const asCells = (runs: ReturnType<typeof runsOf>): unknown[][] =>
  runs.map(({ times, weights }) => [asColumn(times), asColumn(weights), null, DEVIATION]);

const call = (raw: readonly unknown[]): unknown => callCellFunction(dryingEndFunction, raw);

/** @throws Error where a run is refused, which would be timed as if it were answered */
function mustAnswer(name: string, cells: readonly unknown[][]): void {
  const refused = cells.map(call).find((answer) => answer instanceof CellProblem);
  if (refused instanceof CellProblem) throw new Error(`${name}: ${refused.message}`);
}

const BARE = "the bare fit in it";

async function run(): Promise<void> {
  const { levenbergMarquardt } = await import("ml-levenberg-marquardt");
  const runs = runsOf(RUNS, WEIGHINGS);
  const cells = asCells(runs);
  const ours = (): number[] =>
    runs.map(({ times, weights }) => {
      const points = times.map((minutes, i) => ({ minutes, grams: weights[i] as number }));
      return (
        fallingRateFit(
          points,
          points.map(() => DEVIATION),
        )?.final ?? NaN
      );
    });
  const curve =
    ([final = 0, water = 0, logRate = 0]: number[]) =>
    (t: number): number =>
      final + water * Math.exp(-Math.exp(logRate) * t);
  // Central differences and as many steps as the ends need to agree; the library's identity damping wants ln(rate) too.
  const settings = (initialValues: number[]) => ({
    initialValues,
    damping: 1e-3,
    gradientDifference: 1e-6,
    centralDifference: true,
    maxIterations: 30,
    errorTolerance: 1e-12,
  });
  const theirs = (): number[] =>
    runs.map(({ times, weights }) => {
      const [first, last] = [weights[0] as number, weights.at(-1) as number];
      const start = [last, first - last, Math.log(2 / (times.at(-1) as number))];
      const fit = levenbergMarquardt({ x: times, y: weights }, curve, settings(start));
      return fit.parameterValues[0] ?? NaN;
    });

  mustAnswer("DRYING.END", cells);
  const [own, library] = [ours(), theirs()];
  agree("the ends of the two fits", own, library, SAME_END / Math.max(...own));
  const apart = own.map((final, i) => Math.abs(final - (library[i] as number)));
  console.log(`largest difference between the two fits' ends: ${Math.max(...apart).toExponential(1)} g; ${ROUNDS} rounds, in turn`);
  const fits = await inTurn<number>(
    {
      [`DRYING.END, ${RUNS} cells`]: timed(() => cells.forEach(call)),
      [BARE]: timed(() => void ours()),
      "ml-levenberg-marquardt, bare fit": timed(() => void theirs()),
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  printed(fits, BARE);

  const grown = GROWN.map((weighings) => [weighings, asCells(runsOf(RUNS / 10, weighings))] as const);
  for (const [weighings, series] of grown) mustAnswer(`${weighings} weighings`, series);
  const growth = await inTurn<number>(
    Object.fromEntries(grown.map(([weighings, series]) => [weighings, timed(() => series.forEach(call))])),
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  const of = (weighings: number): readonly number[] => growth.get(String(weighings)) ?? [];
  const base = of(WEIGHINGS);
  for (const weighings of GROWN) {
    const [least, middle] = [minimum(of(weighings)), median(of(weighings))];
    console.log(
      `${RUNS / 10} runs of ${weighings} weighings: min ${least.toFixed(1)} median ${middle.toFixed(1)} ms; ${weighings / WEIGHINGS} × the rows, ` +
        `${(least / minimum(base)).toFixed(2)} × the time of minima, ${(middle / median(base)).toFixed(2)} of medians`,
    );
  }
}

void run();
