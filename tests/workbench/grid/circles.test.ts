import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { SheetInterceptorService } from "@univerjs/sheets";
import { explainCell } from "../../../src/explanation/explainCell";
import { restsOnCircle, typedInCircle } from "../../../src/problems/workbook/cellNotes";
import { circleAbove } from "../../../src/workbench/grid/circleAbove";
import { tellCircles, withCircles } from "../../../src/workbench/grid/tellCircles";
import type { CellContent } from "../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(60_000);

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

async function typed(cells: Readonly<Record<string, CellContent>>): Promise<void> {
  for (const [cell, content] of Object.entries(cells)) await open.type(FIRST_SHEET, cell, content);
  await open.settled();
}

const above = (cell: string, formula?: string): string[] | undefined =>
  circleAbove(open.engine, { sheet: FIRST_SHEET, cell }, formula)?.map((one) => one.cell);

test("a cell that reads itself, alone, in a range or by way of others, is in a circle, and so is what reads from one", async () => {
  await typed({
    A2: 20,
    A3: 30,
    B1: "=SUM(B1:B3)",
    F1: "=G1+30",
    G1: "=F1*0.5",
    H1: "=RETORT.MOISTURE.WET(F1,80,70)",
    K1: "=SEQUENCE(2)+M1",
    M1: "=K2*2",
  });
  expect(above("B1")).toEqual(["B1"]);
  expect(above("F1")).toEqual(["F1", "G1"]);
  expect(above("G1")).toEqual(["G1", "F1"]);
  expect(above("H1")).toEqual(["F1", "G1"]);
  expect(above("M1")).toEqual(["M1", "K1"]);
});

test("what reads many cells and no circle, or only asks where its cell stands, is in none", async () => {
  await typed({ A1: 1, A2: "=A1+1", A3: "=A2+A1", B1: "=SUM(A1:A3)", B2: "=ROW(B2)", C1: "=SUM(A:A)" });
  for (const cell of ["A2", "A3", "B1", "B2", "C1"]) expect([cell, above(cell)]).toEqual([cell, undefined]);
  // Before it stands there.
  expect(above("A1", "=B1")?.slice(0, 2)).toEqual(["A1", "B1"]);
  expect(above("A2", "=A2/2")).toEqual(["A2"]);
  expect(above("D1", "=B1")).toBeUndefined();
});

test("a circle is told when it is typed, what reads from one is not, and This cell gives no arithmetic for what rests on it", async () => {
  const said: string[] = [];
  tellCircles(open.engine, (sentence) => void said.push(sentence));
  await typed({ F1: "=G1+30", H1: "=RETORT.MOISTURE.WET(F1,80,70)", I1: "=RETORT.MOISTURE.WET(25,80,70)" });
  for (const [column, formula] of [[6, "=F1*0.5"], [7, "=RETORT.MOISTURE.WET(F1,80,70)"], [0, "=SUM(A1:A3)"]] as const) entered(column, formula); // prettier-ignore
  await new Promise((resolve) => setTimeout(resolve, 500));
  expect(said).toEqual([typedInCircle("G1", ["G1", "F1"]), typedInCircle("A1", ["A1"])]);
  await typed({ G1: "=F1*0.5" });
  const workbook = withCircles(open.workbook, open.engine);
  const { calls, notes } = await explainCell(workbook, { sheet: FIRST_SHEET, cell: "H1" });
  expect({ calls, notes }).toEqual({ calls: [], notes: [restsOnCircle(["F1", "G1"])] });
  expect((await explainCell(workbook, { sheet: FIRST_SHEET, cell: "I1" })).calls).toHaveLength(1);
});

/** Goes the way of what is entered by keyboard, into a cell of the first row; the cell itself is left as it is. */
function entered(column: number, formula: string): void {
  const { engine } = open;
  const book = engine.injector.get(IUniverInstanceService).getUnit<Workbook>(engine.book.getId(), UniverInstanceType.UNIVER_SHEET);
  const sheet = book?.getSheetBySheetName(FIRST_SHEET);
  if (!book || !sheet) throw new Error(FIRST_SHEET);
  engine.injector.get(SheetInterceptorService).onWriteCell(book, sheet, 0, column, { f: formula });
}
