import { performance } from "node:perf_hooks";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";

// 10,000 cells that each call MOISTURE.WET, against the same 10,000 cells in built-in arithmetic and against one
// spilled call, in the local workbook's engine: first calculation, and recalculation when the shared vessel changes.
const ROWS = 10_000;
const VESSEL = 25;

type Row = readonly [moist: number, dry: number];
const rows: Row[] = Array.from({ length: ROWS }, (_, index) => [35 + (index % 100) / 100, 30 + (index % 77) / 100]);

/** Seconds to calculate a fresh sheet, and then again after one input that every cell uses has changed. */
async function timed(name: string, formula: (row: number) => string | undefined): Promise<readonly [number, number]> {
  const { workbook, type, settled, close } = await openHeadlessWorkbook();
  const cells = rows.flatMap(([moist, dry], index) => {
    const row = index + 2;
    const typed = formula(row);
    return [
      { cell: `B${row}`, content: moist },
      { cell: `C${row}`, content: dry },
      ...(typed === undefined ? [] : [{ cell: `D${row}`, formula: typed }]),
    ];
  });
  const start = performance.now();
  const sheet = await workbook.addSheet({
    name,
    cells: [{ cell: "A1", content: VESSEL }, ...cells],
    columnWidths: [],
    entryRules: [],
    frozenRows: 0,
    startAt: "A1",
  });
  await settled();
  const filled = performance.now();
  await type(sheet, "A1", VESSEL - 1);
  await settled();
  const again = performance.now();
  const last = (await workbook.read(sheet, `D${ROWS + 1}`)).rows[0]?.[0]?.value;
  if (typeof last !== "number") throw new Error(`${name}: the last cell shows ${String(last)}`);
  close();
  return [(filled - start) / 1000, (again - filled) / 1000];
}

async function main(): Promise<void> {
  const plain = await timed("Plain", (row) => `=(B${row}-C${row})/(B${row}-$A$1)`);
  const single = await timed("Single", (row) => `=RETORT.MOISTURE.WET($A$1,B${row},C${row})`);
  const spilled = await timed("Spilled", (row) => (row === 2 ? `=RETORT.MOISTURE.WET($A$1,B2:B${ROWS + 1},C2:C${ROWS + 1})` : undefined));
  const line = (name: string, [first, again]: readonly [number, number]): void =>
    console.log(
      `${name.padEnd(34)} fill and calculate ${first.toFixed(2)} s (${(first / plain[0]).toFixed(2)} of built-in), recalculate ${again.toFixed(2)} s (${(again / plain[1]).toFixed(2)} of built-in)`,
    );
  line("10,000 cells of built-in arithmetic", plain);
  line("10,000 cells of MOISTURE.WET", single);
  line("one spilled MOISTURE.WET", spilled);
}

void main().then(() => process.exit(0));
