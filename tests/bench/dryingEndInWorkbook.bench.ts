import { performance } from "node:perf_hooks";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";

// DRYING.END on 2,000 runs of 20 weighings, one run a row, in one workbook of the local engine; against the built-in
// SLOPE of the same rows, the cheapest fit a spreadsheet has.
const RUNS = 2000;
const WEIGHINGS = 20;
const INTERVAL_MINUTES = 30;
const [FINAL_GRAMS, WATER_GRAMS, PER_MINUTE] = [8, 4, 0.012];
const LAST_COLUMN = "T";

const gramsAt = (run: number, weighing: number): number =>
  Number((FINAL_GRAMS + (WATER_GRAMS + run / RUNS) * Math.exp(-PER_MINUTE * INTERVAL_MINUTES * weighing)).toFixed(3));
const columnName = (index: number): string => String.fromCharCode("A".charCodeAt(0) + index);

async function timed(name: string, formula: (row: number) => string): Promise<number> {
  const { workbook, settled, close } = await openHeadlessWorkbook();
  const weighings = Array.from({ length: WEIGHINGS }, (_, index) => index);
  const times = weighings.map((index) => ({ cell: `${columnName(index)}1`, content: index * INTERVAL_MINUTES }));
  const runs = Array.from({ length: RUNS }, (_, run) => [
    ...weighings.map((index) => ({ cell: `${columnName(index)}${run + 2}`, content: gramsAt(run, index) })),
    { cell: `V${run + 2}`, formula: formula(run + 2) },
  ]).flat();
  const start = performance.now();
  const sheet = await workbook.addSheet({ name, cells: [...times, ...runs], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  await settled();
  const seconds = (performance.now() - start) / 1000;
  const last = (await workbook.read(sheet, `V${RUNS + 1}`)).rows[0]?.[0]?.value;
  if (typeof last !== "number") throw new Error(`${name}: the last cell shows ${String(last)}`);
  close();
  return seconds;
}

async function main(): Promise<void> {
  const row = (number: number): string => `A${number}:${LAST_COLUMN}${number}`;
  const times = `$A$1:$${LAST_COLUMN}$1`;
  const slope = await timed("Slope", (number) => `=SLOPE(${row(number)},${times})`);
  const end = await timed("End", (number) => `=INDEX(RETORT.DRYING.END(${times},${row(number)},,0.001),1,2)`);
  console.log(`${RUNS} runs of ${WEIGHINGS} weighings in one workbook, filled and calculated`);
  console.log(`built-in SLOPE  ${slope.toFixed(2)} s  1.00`);
  console.log(`DRYING.END      ${end.toFixed(2)} s  ${(end / slope).toFixed(2)}`);
}

void main().then(() => process.exit(0));
