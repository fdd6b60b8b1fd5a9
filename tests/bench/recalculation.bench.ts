import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { agree, inTurn, printedTook, stopwatch, type Took } from "./inTurn";

// 10,000 cells that each call MOISTURE.WET, against the same 10,000 cells in built-in arithmetic and against one
// spilled call, in the local workbook's engine: first calculation, and recalculation when the shared vessel changes.
// Each round opens a fresh workbook for each of the three, in turn; the first rounds warm the engine up and are not counted.
const ROWS = 10_000;
const VESSEL = 25;
const ROUNDS = 7;
const WARM_UP_ROUNDS = 1;
const BUILT_IN = "10,000 cells of built-in arithmetic";
const ROUNDING = 1e-12;

type Row = readonly [moist: number, dry: number];
const rows: Row[] = Array.from({ length: ROWS }, (_, index) => [35 + (index % 100) / 100, 30 + (index % 77) / 100]);
/** What every way of asking has to answer, once the vessel has changed. */
const expected = rows.map(([moist, dry]) => (moist - dry) / (moist - (VESSEL - 1)));

interface Phases {
  /** To fill and calculate a fresh sheet. */
  readonly first: Took;
  /** To calculate it again after one input that every cell uses has changed. */
  readonly again: Took;
}

async function timed(name: string, formula: (row: number) => string | undefined): Promise<Phases> {
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
  const filling = stopwatch();
  const sheet = await workbook.addSheet({
    name,
    cells: [{ cell: "A1", content: VESSEL }, ...cells],
    columnWidths: [],
    entryRules: [],
    frozenRows: 0,
    startAt: "A1",
  });
  await settled();
  const first = filling();
  const recalculating = stopwatch();
  await type(sheet, "A1", VESSEL - 1);
  await settled();
  const again = recalculating();
  const shown = (await workbook.read(sheet, `D2:D${ROWS + 1}`)).rows.map(([cell]) => Number(cell?.value));
  agree(name, shown, expected, ROUNDING);
  close();
  return { first, again };
}

async function main(): Promise<void> {
  const took = await inTurn<Phases>(
    {
      [BUILT_IN]: () => timed("Plain", (row) => `=(B${row}-C${row})/(B${row}-$A$1)`),
      "10,000 cells of MOISTURE.WET": () => timed("Single", (row) => `=RETORT.MOISTURE.WET($A$1,B${row},C${row})`),
      "one spilled MOISTURE.WET": () =>
        timed("Spilled", (row) => (row === 2 ? `=RETORT.MOISTURE.WET($A$1,B2:B${ROWS + 1},C2:C${ROWS + 1})` : undefined)),
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  for (const phase of ["first", "again"] as const) {
    console.log(`${phase === "first" ? "filled and calculated" : "recalculated"}, ${ROUNDS} rounds, the three in turn`);
    printedTook(new Map([...took].map(([name, rounds]) => [name, rounds.map((round) => round[phase])])), BUILT_IN);
  }
}

void main().then(() => process.exit(0));
