import { CellProblem } from "../../src/cells/CellProblem";
import { tableOf } from "../functions/call";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { agree, inTurn, printedTook, stopwatch, type Took } from "./inTurn";

// DRYING.END on 2,000 runs of 20 weighings, one run a row, in one workbook of the local engine; against the built-in
// SLOPE of the same rows, the cheapest fit a spreadsheet has. Each round opens a fresh workbook for both, in turn.
const RUNS = 2000;
const WEIGHINGS = 20;
const INTERVAL_MINUTES = 30;
const [FINAL_GRAMS, WATER_GRAMS, PER_MINUTE] = [8, 4, 0.012];
const READABILITY = 0.001;
const LAST_COLUMN = "T";
const ROUNDS = 7;
const WARM_UP_ROUNDS = 1;
const BUILT_IN = "built-in SLOPE";
const ROUNDING = 1e-9;

const weighings = Array.from({ length: WEIGHINGS }, (_, index) => index);
const minutes = weighings.map((index) => index * INTERVAL_MINUTES);
const gramsAt = (run: number, weighing: number): number =>
  Number((FINAL_GRAMS + (WATER_GRAMS + run / RUNS) * Math.exp(-PER_MINUTE * INTERVAL_MINUTES * weighing)).toFixed(3));
const runs = Array.from({ length: RUNS }, (_, run) => weighings.map((weighing) => gramsAt(run, weighing)));
const columnName = (index: number): string => String.fromCharCode("A".charCodeAt(0) + index);

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
function slope(grams: readonly number[]): number {
  const [x, y] = [mean(minutes), mean(grams)];
  const products = grams.reduce((sum, weight, index) => sum + ((minutes[index] as number) - x) * (weight - y), 0);
  return products / minutes.reduce((sum, time) => sum + (time - x) ** 2, 0);
}
function end(grams: readonly number[]): number {
  const answer = tableOf("DRYING.END", [minutes], [grams], null, READABILITY)[0]?.[1];
  if (typeof answer !== "number") throw new Error(`DRYING.END answers ${answer instanceof CellProblem ? answer.message : String(answer)}`);
  return answer;
}

async function timed(name: string, formula: (row: number) => string, expected: readonly number[]): Promise<Took> {
  const { workbook, settled, close } = await openHeadlessWorkbook();
  const times = minutes.map((time, index) => ({ cell: `${columnName(index)}1`, content: time }));
  const cells = runs.flatMap((grams, run) => [
    ...grams.map((weight, index) => ({ cell: `${columnName(index)}${run + 2}`, content: weight })),
    { cell: `V${run + 2}`, formula: formula(run + 2) },
  ]);
  const filling = stopwatch();
  const sheet = await workbook.addSheet({ name, cells: [...times, ...cells], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  await settled();
  const took = filling();
  const shown = (await workbook.read(sheet, `V2:V${RUNS + 1}`)).rows.map(([cell]) => Number(cell?.value));
  agree(name, shown, expected, ROUNDING);
  close();
  return took;
}

async function main(): Promise<void> {
  const row = (number: number): string => `A${number}:${LAST_COLUMN}${number}`;
  const times = `$A$1:$${LAST_COLUMN}$1`;
  const [slopes, ends] = [runs.map(slope), runs.map(end)];
  const took = await inTurn<Took>(
    {
      [BUILT_IN]: () => timed("Slope", (number) => `=SLOPE(${row(number)},${times})`, slopes),
      "DRYING.END": () => timed("End", (number) => `=INDEX(RETORT.DRYING.END(${times},${row(number)},,${READABILITY}),1,2)`, ends),
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  console.log(`${RUNS} runs of ${WEIGHINGS} weighings in one workbook, filled and calculated; ${ROUNDS} rounds, both in turn`);
  printedTook(took, BUILT_IN);
}

void main().then(() => process.exit(0));
