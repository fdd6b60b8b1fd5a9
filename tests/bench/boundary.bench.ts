import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { givenInputs } from "../../src/cells/GivenInput";
import { readInputs } from "../../src/cells/readInputs";
import type { Grid } from "../../src/cells/Grid";
import { everyFunction } from "../../src/functions/catalogue";
import { takesRanges, type CellFunction } from "../../src/functions/cellFunction";
import { BLANK, type CellValue } from "../../src/inputs/CellValue";
import { literalArguments } from "../functions/call";
import { inTurn, median, minimum } from "./inTurn";

// What the boundary costs, decoding, reading the inputs and handing the answer over, beside the computation between: for every function one
// call on its first example, and for those that take ranges one call on columns of 10,000 rows of it. The computation alone is timed on
// inputs read beforehand, the checks of the readers on cells decoded beforehand. Handing over is what is left when nothing is decoded or
// checked: a record with each value under its name, as computations take it, and the rectangle around the answer. No boundary takes less than
// the checks and this, so where a computation does (a line of arithmetic) the boundary cannot be half of the call.
const ROUNDS = 21;
const WARM_UP_ROUNDS = 15;
const ROWS = 10_000;
// So many calls in a measurement that the clock's own step does not count.
const MEASURED_MS = 2;

interface Measured {
  readonly name: string;
  readonly call: number;
  readonly compute: number;
  readonly checks: number;
  readonly handing: number;
  readonly row: number | undefined;
}

/** The arguments of a call as a host hands them over: rectangles where the function takes ranges. */
const rawArguments = (definition: CellFunction, rows: number): unknown[] =>
  literalArguments(definition.examples[0]?.cell ?? "").map((value) => {
    if (!takesRanges(definition) || value === null || Array.isArray(value)) return value;
    return Array.from({ length: rows }, () => [value]);
  });

/** The cells of an argument, row by row. */
const cellsOf = (grid: Grid): CellValue[] =>
  Array.from({ length: grid.rows * grid.columns }, (_, index) => grid.cell(Math.floor(index / grid.columns), index % grid.columns));

/** How often a thing has to be done to take as long as is measured. */
function timesFor(work: () => unknown): number {
  for (let times = 1; ; times *= 2) {
    const start = performance.now();
    for (let index = 0; index < times; index++) work();
    if (performance.now() - start > MEASURED_MS) return times;
  }
}

// Kept, so that no call can be left out by the engine.
let kept: unknown;

const perCall = (work: () => unknown, rows = 1) => {
  const times = timesFor(work);
  return (): number => {
    const start = performance.now();
    for (let index = 0; index < times; index++) kept = work();
    return ((performance.now() - start) * 1e6) / times / rows;
  };
};

async function measure(definition: CellFunction): Promise<Measured> {
  const raw = rawArguments(definition, 1);
  const read = readInputs(givenInputs(definition, raw));
  const compute = (): unknown => (definition.gives === "table" ? definition.computeTable(read) : definition.compute(read));
  const cells = givenInputs(definition, raw).map(({ name, input, grid }) => ({ name, input, cells: grid === undefined ? [] : cellsOf(grid) }));
  const checks = (): void => {
    for (const { name, input, cells: given } of cells)
      kept = input.shape === "column" ? input.read(given, name) : input.read(given[0] ?? BLANK, name);
  };
  const values = Object.entries(read);
  const handing = (): unknown => {
    const record: Record<string, unknown> = {};
    for (let index = 0; index < values.length; index++) {
      const [name, value] = values[index] as [string, unknown];
      record[name] = value;
    }
    kept = record;
    return [[values.length]];
  };
  const answer = callCellFunction(definition, raw);
  const only = takesRanges(definition) ? (answer as unknown[][])[0]?.[0] : answer;
  if (only instanceof CellProblem || JSON.stringify(only) !== JSON.stringify(compute()))
    throw new Error(`${definition.name}: the two answers differ`);
  const columns = takesRanges(definition) ? rawArguments(definition, ROWS) : undefined;
  const spilled = (): unknown => callCellFunction(definition, columns ?? []);
  if (columns !== undefined && !(spilled() as unknown[][]).every(([one]) => one === only)) throw new Error(`${definition.name}: a row differs`);
  const times = await inTurn(
    {
      call: perCall(() => callCellFunction(definition, raw)),
      compute: perCall(compute),
      checks: perCall(checks),
      handing: perCall(handing),
      ...(columns && { row: perCall(spilled, ROWS) }),
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  const least = (name: string): number => minimum(times.get(name) ?? []);
  const [call, computation] = [least("call"), least("compute")];
  return { name: definition.name, call, compute: computation, checks: least("checks"), handing: least("handing"), row: columns && least("row") };
}

async function main(): Promise<void> {
  console.log(`nanoseconds, the least of ${ROUNDS} rounds, call and computation in turn; node ${process.version}`);
  const head = ["one call", "computation", "checks", "handing over", "rest", "boundary", `a row of ${ROWS}`];
  console.log("".padEnd(24) + head.map((word) => word.padStart(14)).join(""));
  const shares: number[] = [];
  let short = 0;
  for (const definition of everyFunction) {
    const { name, call, compute, checks, handing, row } = await measure(definition);
    const boundary = call - compute;
    shares.push(boundary / call);
    if (compute < checks + handing) short++;
    const figures = [call, compute, checks, handing, boundary - checks - handing].map((figure) => figure.toFixed(0));
    const rest = [`${((100 * boundary) / call).toFixed(0)} %`, row === undefined ? "" : row.toFixed(0)];
    console.log(name.padEnd(24) + [...figures, ...rest].map((figure) => figure.padStart(14)).join(""));
  }
  const most = shares.filter((share) => share <= 0.5).length;
  console.log(
    `boundary at most half of the call in ${most} of ${shares.length} functions, median ${(100 * median(shares)).toFixed(0)} %; in ${short} the computation takes less than checks and handing over; ${typeof kept}`,
  );
}

void main();
