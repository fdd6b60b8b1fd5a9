import { plainSheets } from "../../src/sharing/plain/plainSheets";
import type { CellContent, CellReading } from "../../src/workbook/Workbook";

// How long it takes to write workbooks of many formula cells without the add-in, and that ten times the cells take ten times as long: calls
// that are rewritten, calls that are fixed, formulas calculated from the fixed ones, and running sums over them.
const SIZES = [1_000, 10_000, 100_000];
const FORMULAS_IN_A_ROW = 5;

const cell = (at: string, formula: string, value: CellContent): CellReading => ({
  cell: at,
  formula,
  value,
  shown: String(value),
  error: "",
  message: "",
  spill: "",
});

function sheetOf(formulas: number): CellReading[][] {
  return Array.from({ length: formulas / FORMULAS_IN_A_ROW }, (_, index) => {
    const row = index + 1;
    return [
      ...[cell(`A${row}`, "", 25), cell(`B${row}`, "", 35), cell(`C${row}`, "", 31.5), cell(`D${row}`, "", "CaCO3")],
      cell(`E${row}`, `=IF(B${row}="","",RETORT.MOISTURE.WET(A${row},B${row},C${row})*100)`, 35),
      cell(`F${row}`, `=RETORT.VOLATILEMATTER(A${row},B${row},C${row},0.05,"dry")`, 0.31),
      cell(`G${row}`, `=RETORT.MOLARMASS(D${row})`, 100.086),
      cell(`H${row}`, `=SUM(G$1:G${row})`, 100.086),
      cell(`I${row}`, `=IF(H${row}>1,"in order","not yet")`, "in order"),
    ];
  });
}

for (const formulas of SIZES) {
  const rows = sheetOf(formulas);
  const start = performance.now();
  const { cells, flags } = plainSheets({ sheets: [{ sheet: "Run", range: `A1:I${rows.length}`, rows }] }, { date: "2027-01-15" });
  const took = performance.now() - start;
  const kinds = ["plain", "fixed", "watched"].map((kind) => `${cells.filter((one) => one.kind === kind).length} ${kind}`);
  const flagged = flags.reduce((sum, sheet) => sum + sheet.cells.length, 0);
  console.log(
    `${formulas} formula cells: ${Math.round(took)} ms (${kinds.join(", ")}, ${flagged} flags), ${((1000 * took) / formulas).toFixed(1)} µs each`,
  );
}

// One cell of calls within calls: each level takes as long as any other.
for (const levels of [15, 30, 60]) {
  const nest = cell("B1", `=${"RETORT.AIRLEFT(".repeat(levels)}A1${")".repeat(levels)}`, 0.5);
  const start = performance.now();
  const { workings } = plainSheets({ sheets: [{ sheet: "Run", range: "A1:B1", rows: [[cell("A1", "", 2), nest]] }] }, { date: "2027-01-15" });
  const took = performance.now() - start;
  console.log(`${levels} calls within one another: ${took.toFixed(1)} ms, ${workings?.cells.length ?? 0} cells of workings`);
}
