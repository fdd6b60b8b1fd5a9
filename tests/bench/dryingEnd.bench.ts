import { callCellFunction } from "../../src/cells/callCellFunction";
import { fallingRateFit } from "../../src/drying/end/fallingRateFit";
import { dryingEndFunction } from "../../src/functions/drying/dryingEndFunction";
import { every, simulatedRun } from "../drying/simulatedRun";
import { seededNormal } from "../numerics/seededNormal";

// DRYING.END on 2,000 runs of 20 weighings, as 2,000 cells would call it; the bare curve fit in it against
// ml-levenberg-marquardt on the same points, from the same kind of start; and how the cost grows with the weighings.
const RUNS = 2000;
const WEIGHINGS = 20;
const ROUNDS = 7;
const INTERVAL = 30;
const DEVIATION = 0.001;
const GROWN = [20, 40, 80, 160, 320];

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

async function run(): Promise<void> {
  const { Bench } = await import("tinybench");
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

  const library = theirs();
  const apart = ours().map((final, i) => Math.abs(final - (library[i] ?? NaN)));
  console.log(`largest difference between the two fits' ends: ${Math.max(...apart).toExponential(1)} g`);

  const bench = new Bench({ iterations: ROUNDS, time: 0, warmupIterations: 2, warmupTime: 0 });
  bench.add(`DRYING.END, ${RUNS} cells`, () => void cells.map((raw) => callCellFunction(dryingEndFunction, raw)));
  bench.add("the bare fit in it", () => void ours());
  bench.add("ml-levenberg-marquardt, bare fit", () => void theirs());
  for (const weighings of GROWN) {
    const grown = asCells(runsOf(RUNS / 10, weighings));
    bench.add(`${RUNS / 10} runs of ${weighings} weighings`, () => void grown.map((raw) => callCellFunction(dryingEndFunction, raw)));
  }
  await bench.run();
  const medians = bench.tasks.map((task) => {
    if (!("latency" in task.result)) throw new Error(`${task.name} did not finish`);
    return { name: task.name, milliseconds: task.result.latency.p50 };
  });
  const bare = medians[1]?.milliseconds ?? NaN;
  for (const { name, milliseconds } of medians.slice(0, 3)) {
    console.log(`${name.padEnd(36)} ${milliseconds.toFixed(1).padStart(8)} ms  ${(milliseconds / bare).toFixed(2).padStart(6)} × the bare fit`);
  }
  const base = medians[3]?.milliseconds ?? NaN;
  for (const [i, { name, milliseconds }] of medians.slice(3).entries()) {
    const rows = (GROWN[i] as number) / WEIGHINGS;
    console.log(`${name.padEnd(36)} ${milliseconds.toFixed(1).padStart(8)} ms  ${rows} × the rows, ${(milliseconds / base).toFixed(2)} × the time`);
  }
}

void run();
