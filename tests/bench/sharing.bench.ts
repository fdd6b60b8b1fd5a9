import { shareAsPlainCells } from "../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { shareInFile, type OwnFiles } from "../../src/sharing/shareInFile";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import type { PlannedCell } from "../../src/workbook/SheetPlan";
import { plainFile } from "../../src/xlsx/handedOn/plainFile";
import { valuesFile } from "../../src/xlsx/handedOn/valuesFile";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { stopwatch, type Took } from "./inTurn";

// How long it takes to share a sheet of many calls in the local workbook, into a file of its own as the pane does first, and into the workbook
// itself, where the grid calculates the copy; and that four times the cells take four times as long. Others' work on the machine hardly touches
// processor time.
const DATE = "2027-01-15";
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
  const { workbook, engine, settled, close } = await openHeadlessWorkbook();
  const sheet = await workbook.addSheet({ name: "Many", cells: cellsOf(calls), columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });
  await settled();
  const took: [what: string, took: Took][] = [];
  const timed = async (what: string, work: () => Promise<unknown>): Promise<void> => {
    const watch = stopwatch();
    await work();
    took.push([what, watch()]);
  };
  await timed("read", () => workbook.readUsed(sheet));
  for (const as of ["values", "plain"] as const) {
    const make = as === "values" ? valuesFile : plainFile;
    const files: OwnFiles = {
      make: async (wanted) => ({ ...(await make(await saveXlsx(engine), wanted)), fileName: "" }),
      handOut: async () => "",
    };
    await timed(`${as} in a file`, () => shareInFile(workbook, files, { as, sheets: [sheet], date: DATE }));
  }
  await timed("values in the workbook", () => shareAsValues(workbook, sheet, DATE));
  await timed("plain cells in the workbook", () => shareAsPlainCells(workbook, sheet, DATE));
  for (const [what, { elapsed, processor }] of took)
    console.log(
      `${calls} cells, ${what}: ${Math.round(elapsed)} ms, ${Math.round(processor)} ms of processor, ${((1000 * processor) / calls).toFixed(0)} µs each`,
    );
  close();
}

void (async () => {
  for (const calls of SIZES) await share(calls);
})();
