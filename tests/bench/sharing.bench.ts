import { shareAsValues } from "../../src/sharing/shareAsValues";
import type { PlannedCell } from "../../src/workbook/SheetPlan";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";

// How long it takes to share a sheet of many calls as values in the local workbook, and that four times the cells take four times as long.
const SIZES = [10_000, 20_000, 40_000];
const CALLS_IN_A_ROW = 4;

function cellsOf(calls: number): PlannedCell[] {
  return Array.from({ length: calls / CALLS_IN_A_ROW }, (_, index): PlannedCell[] => {
    const row = index + 1;
    return [
      ...[25, 35, 31.5].map((content, column) => ({ cell: `${"ABC".charAt(column)}${row}`, content })),
      { cell: `E${row}`, formula: `=RETORT.MOISTURE.WET(A${row},B${row},C${row})` },
      { cell: `F${row}`, formula: `=RETORT.MOISTURE.DRY(A${row},B${row},C${row})` },
      { cell: `H${row}`, formula: `=E${row}*100` },
      { cell: `I${row}`, formula: `=IF(H${row}>30,"moist","dry")` },
    ];
  }).flat();
}

async function share(calls: number): Promise<void> {
  const { workbook, settled, close } = await openHeadlessWorkbook();
  const sheet = await workbook.addSheet({ name: "Many", cells: cellsOf(calls), columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  await settled();
  const start = performance.now();
  await workbook.readUsed(sheet);
  const read = performance.now() - start;
  await shareAsValues(workbook, sheet, "2027-01-15");
  const took = performance.now() - start - read;
  console.log(`${calls} cells: read in ${Math.round(read)} ms, shared in ${Math.round(took)} ms, ${((1000 * took) / calls).toFixed(0)} µs each`);
  close();
}

void (async () => {
  for (const calls of SIZES) await share(calls);
})();
