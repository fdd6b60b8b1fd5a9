import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import type { CellFunction } from "../../src/functions/cellFunction";
import { confidence } from "../../src/functions/confidence";
import { seededNormal } from "../numerics/seededNormal";
import { inTurn, median, minimum, printed, timed } from "./inTurn";

// REPLICATES on many columns, as one sheet of a large trial asks for it; and what a first and a further critical value cost.
const COLUMNS = 10_000;
const RESULTS = 5;

const named = (name: string): CellFunction => confidence.find((definition) => definition.name === name) as CellFunction;
const normal = seededNormal(1);
const column = (results: number): number[][] => Array.from({ length: results }, () => [20 + 0.1 * normal()]);

interface Load {
  readonly columns: number;
  readonly results: number;
}

const ROUNDS = 15;
const WARM_UP_ROUNDS = 3;
const SAME_MEAN = 1e-12;

/** The mean that REPLICATES gives of a column. @throws Error where it answers anything else */
function meanOf(cells: readonly (readonly number[])[]): number {
  const answer = callCellFunction(named("REPLICATES"), [cells, 0.1]);
  const mean = Array.isArray(answer) ? answer.find(([label]) => label === "Mean")?.[1] : undefined;
  if (typeof mean !== "number") throw new Error(`REPLICATES answers ${answer instanceof CellProblem ? answer.message : JSON.stringify(answer)}`);
  return mean;
}

/** One pass over a load of columns made beforehand, each answer held to the plain mean first. */
function pass({ columns, results }: Load): () => number {
  const given = Array.from({ length: columns }, () => column(results));
  for (const cells of given) {
    const plain = cells.reduce((sum, [value = NaN]) => sum + value, 0) / results;
    if (!(Math.abs(meanOf(cells) / plain - 1) < SAME_MEAN)) throw new Error(`a mean of ${meanOf(cells)} for ${plain}`);
  }
  return timed(() => given.forEach((cells) => void callCellFunction(named("REPLICATES"), [cells, 0.1])));
}

async function compare(loads: readonly [small: Load, large: Load]): Promise<void> {
  const titles = loads.map(({ columns, results }) => `REPLICATES on ${columns} columns of ${results}`);
  const took = await inTurn<number>(Object.fromEntries(loads.map((load, index) => [titles[index], pass(load)])), ROUNDS, WARM_UP_ROUNDS);
  printed(took, titles[0] as string);
}

async function main(): Promise<void> {
  await compare([
    { columns: COLUMNS / 10, results: RESULTS },
    { columns: COLUMNS, results: RESULTS },
  ]);
  await compare([
    { columns: COLUMNS / 100, results: 100 },
    { columns: COLUMNS / 100, results: 1000 },
  ]);
  for (const name of ["GRUBBS", "DIXON"]) {
    // A first call can be timed once only: what it works out is kept.
    const cells = column(RESULTS + 2);
    const call = (): void => void callCellFunction(named(name), [cells]);
    const first = timed(call)();
    const further = (await inTurn<number>({ call: timed(() => Array.from({ length: COLUMNS }, call)) }, ROUNDS, WARM_UP_ROUNDS)).get("call") ?? [];
    const [least, middle] = [minimum(further) / COLUMNS, median(further) / COLUMNS].map((time) => time.toFixed(4));
    console.log(`${name}: the first critical value takes ${first.toFixed(1)} ms, a further call min ${least} median ${middle} ms`);
  }
}

void main();
