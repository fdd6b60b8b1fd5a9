import { performance } from "node:perf_hooks";
import { callCellFunction } from "../../src/cells/callCellFunction";
import type { CellFunction } from "../../src/functions/cellFunction";
import { confidence } from "../../src/functions/confidence";
import { seededNormal } from "../numerics/seededNormal";

// REPLICATES on many columns, as one sheet of a large trial asks for it; and what a first and a further critical value cost.
const COLUMNS = 10_000;
const RESULTS = 5;

const named = (name: string): CellFunction => confidence.find((definition) => definition.name === name) as CellFunction;
const normal = seededNormal(1);
const column = (results: number): number[][] => Array.from({ length: results }, () => [20 + 0.1 * normal()]);

function timed(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

interface Load {
  readonly columns: number;
  readonly results: number;
}

/** One pass over a load of columns made beforehand. */
function pass({ columns, results }: Load): () => void {
  const given = Array.from({ length: columns }, () => column(results));
  return () => given.forEach((cells) => void callCellFunction(named("REPLICATES"), [cells, 0.1]));
}

const ROUNDS = 15;

/** The best times of both loads in milliseconds, taken in turn so that a busy machine slows both. */
function compared(small: Load, large: Load): readonly [number, number] {
  const [runSmall, runLarge] = [pass(small), pass(large)];
  const times = Array.from({ length: ROUNDS }, () => [timed(runSmall), timed(runLarge)] as const);
  return [Math.min(...times.map(([time]) => time)), Math.min(...times.map(([, time]) => time))];
}

const [thousand, tenThousand] = compared({ columns: COLUMNS / 10, results: RESULTS }, { columns: COLUMNS, results: RESULTS });
console.log(
  `REPLICATES on ${COLUMNS} columns of ${RESULTS}: ${tenThousand.toFixed(0)} ms; ten times the columns cost ${(tenThousand / thousand).toFixed(1)} times`,
);

const [short, long] = compared({ columns: COLUMNS / 100, results: 100 }, { columns: COLUMNS / 100, results: 1000 });
console.log(
  `ten times the results in a column cost ${(long / short).toFixed(1)} times (${short.toFixed(1)} ms and ${long.toFixed(1)} ms for 100 columns)`,
);

for (const name of ["GRUBBS", "DIXON"]) {
  const cells = column(RESULTS + 2);
  const call = (): void => void callCellFunction(named(name), [cells]);
  const first = timed(call);
  const further = timed(() => Array.from({ length: COLUMNS }, call)) / COLUMNS;
  console.log(
    `${name}: the first critical value takes ${first.toFixed(1)} ms, a further call ${further.toFixed(4)} ms (kept: ${(first / further).toFixed(0)} times less)`,
  );
}
