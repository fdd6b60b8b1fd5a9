import { callCellFunction } from "../../src/cells/callCellFunction";
import { dryingFit } from "../../src/drying/model/dryingFit";
import { type DryingModel, dryingModels } from "../../src/drying/model/dryingModels";
import { dryingFitFunction } from "../../src/functions/drying/dryingFitFunction";
import { errorsByDefinition } from "../drying/model/errorsByDefinition";
import { every, simulatedRun } from "../drying/simulatedRun";
import { seededNormal } from "../numerics/seededNormal";

// DRYING.FIT by Page's law on runs of 100 to 10,000 weighings, as a cell calls it, the sizes taken in turn; and its standard errors
// against the law of propagation written out, whose time grows with the square of the weighings, as DRYING.FIT's once did.
const WEIGHINGS = [100, 1000, 2000, 10_000];
const ROUNDS = 9;
const SPAN = 600;
const page = dryingModels.find(({ name }) => name === "Page") as DryingModel;

const normal = seededNormal(11);
const runs = WEIGHINGS.map((count) => {
  const { times, weights } = simulatedRun({ times: every(SPAN / count, count), final: 6, water: 3, rate: 0.008, readability: 0.001 }, normal);
  const cells = [times, weights].map((values) => values.map((value) => [value]));
  const points = times.map((minutes, i) => ({ minutes, grams: weights[i] as number }));
  return { count, points, raw: [cells[0], cells[1], "Page"] };
});
const timed = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

const taken = runs.map(() => [] as number[]);
for (let round = 0; round <= ROUNDS; round++) {
  for (const [i, { raw }] of runs.entries()) {
    const milliseconds = timed(() => void callCellFunction(dryingFitFunction, raw));
    // The first round warms up.
    if (round > 0) taken[i]?.push(milliseconds);
  }
}
const medians = taken.map((all) => all.sort((a, b) => a - b)[all.length >> 1] as number);
for (const [i, { count, points }] of runs.entries()) {
  const fit = dryingFit(points, page);
  let written: number[] = [];
  const formerly = timed(() => (written = errorsByDefinition(fit, points)));
  const ours = [...fit.errors, fit.finalError as number];
  const apart = Math.max(...written.map((error, j) => Math.abs((ours[j] as number) / error - 1)));
  if (!(apart < 1e-8)) throw new Error(`${count} weighings: standard errors differ by ${apart}`);
  console.log(
    `${String(count).padStart(6)} weighings  minimum ${(taken[i]?.[0] ?? NaN).toFixed(1).padStart(7)} ms  median ${(medians[i] as number).toFixed(1).padStart(7)} ms  ` +
      `${(count / (WEIGHINGS[0] as number)).toFixed(0).padStart(4)} × the rows, ${((medians[i] as number) / (medians[0] as number)).toFixed(1).padStart(6)} × the time;  ` +
      `errors written out ${formerly.toFixed(1).padStart(8)} ms, apart by ${apart.toExponential(0)}`,
  );
}
