// What the engine makes of a text that is entered by keyboard, before it goes into its cell.
import { CellValueType, IUniverInstanceService, UniverInstanceType, type ICellData, type Nullable, type Workbook } from "@univerjs/core";
import { SheetInterceptorService } from "@univerjs/sheets";
import { cellArea } from "../../../../src/workbook/cellArea";
import { buildRunSheet } from "../../../../src/runsheet/buildRunSheet";
import { checkOptions } from "../../../../src/runsheet/options/checkOptions";
import { placeOf } from "../../../../src/runsheet/expressions/formulaText";
import { cell } from "../../../../src/runsheet/expressions/Expression";
import { runSheet } from "../../../../src/runsheet/sheet/RunSheet";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const options = { kind: "charring", weighIns: 4, intervalMinutes: 30, readability: 0.01, vessel: "tin", replicates: 2 } as const;
const { setup, settings, drying, rows } = runSheet(checkOptions(options));
const moist = placeOf(drying.box(rows.drying.first, 1));
const clock = placeOf(cell(rows.drying.first, 1));

let open: HeadlessWorkbook;
let name = "";
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  name = await open.workbook.addSheet(buildRunSheet(options));
});
afterAll(() => open.close());

function entered(place: string, typed: ICellData): Nullable<ICellData> {
  const { engine } = open;
  const book = engine.injector.get(IUniverInstanceService).getUnit<Workbook>(engine.book.getId(), UniverInstanceType.UNIVER_SHEET);
  const sheet = book?.getSheetBySheetName(name);
  const area = cellArea(place);
  if (!book || !sheet || area === undefined) throw new Error(place);
  return engine.injector.get(SheetInterceptorService).onWriteCell(book, sheet, area.row, area.column, typed) as Nullable<ICellData>;
}

test.each([
  ["a percentage in a box of grams", moist, "50%", 0.5],
  ["a clock time in a box of grams", moist, "9:30", 570 / 1440],
  ["a date in a box of clock times", clock, "2026-11-21", 46_347],
  ["a clock time in a box of clock times", clock, "9:30", 570 / 1440],
  ["a percentage in a box of shares", placeOf(settings.wanted), "0.5%", 0.005],
])("%s is its number and brings no format along", (_what, place, typed, value) => {
  expect(entered(place, { v: typed })).toEqual({ v: expect.closeTo(value, 12) as number, t: CellValueType.NUMBER });
});

test.each([
  ["a plain number", moist, "72.14"],
  ["a word", moist, "spilt"],
  ["a time in a box for anything", placeOf(setup.material), "9:30"],
  ["a time beside the sheet's boxes", "ZZ1", "9:30"],
])("%s is left as it was typed", (_what, place, typed) => {
  expect(entered(place === "ZZ1" ? "A199" : place, { v: typed })).toEqual({ v: typed });
});

test("a formula, and what is kept as text, are left alone", () => {
  expect(entered(moist, { f: "=9/30", v: "9:30" })).toEqual({ f: "=9/30", v: "9:30" });
  expect(entered(clock, { v: "9:30", t: CellValueType.FORCE_STRING })).toEqual({ v: "9:30", t: CellValueType.FORCE_STRING });
});

test.each([
  ["rep", "repeats"],
  ["D", "different"],
  ["REPEATS", "repeats"],
  ["same", "same"],
  [" ", " "],
])("%j typed into a list of repeats and different is %j", (typed, held) => {
  expect(entered(placeOf(setup.samplesAre), { v: typed })).toEqual({ v: held });
});
