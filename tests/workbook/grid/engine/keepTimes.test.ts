// What the engine makes of times that are entered by keyboard in a page, whose reading of number formats cuts numbers at 16 digits.
import { CellValueType, IUniverInstanceService, UniverInstanceType, type ICellData, type Nullable, type Workbook } from "@univerjs/core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

let open: HeadlessWorkbook;
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  const DIGITS = 16;
  open.engine.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 0,
    handler: (typed, _location, next) => {
      const number = readAs.get(typed?.p?.body?.dataStream.trim() ?? String(typed?.v));
      return next(number === undefined ? typed : { ...typed, p: null, v: Number(number.toPrecision(DIGITS)), t: CellValueType.NUMBER });
    },
  });
});
afterAll(() => open.close());

/** What the page reads texts as. */
const readAs = new Map<string, number>();

function entered(typed: ICellData): Nullable<ICellData> {
  const { engine } = open;
  const book = engine.injector.get(IUniverInstanceService).getUnit<Workbook>(engine.book.getId(), UniverInstanceType.UNIVER_SHEET);
  const sheet = book?.getSheetBySheetName(FIRST_SHEET);
  if (!book || !sheet) throw new Error(FIRST_SHEET);
  return engine.injector.get(SheetInterceptorService).onWriteCell(book, sheet, 0, 0, typed) as Nullable<ICellData>;
}

const SECONDS_A_DAY = 86_400;

test("every second of a day is its own number, to the last digit", () => {
  let cut = 0;
  for (let second = 60; second < SECONDS_A_DAY; second += 37) {
    const [hours, minutes, seconds] = [Math.floor(second / 3600), Math.floor(second / 60) % 60, second % 60];
    const text = `${hours}:${String(minutes).padStart(2, "0")}:${String(seconds).padStart(2, "0")}`;
    const exact = second / SECONDS_A_DAY;
    readAs.set(text, exact);
    if (Number(exact.toPrecision(16)) !== exact) cut++;
    expect([text, entered({ v: text })?.v]).toEqual([text, exact]);
  }
  expect(cut).toBeGreaterThan(100);
});

test("a day with a time, and a time in the cell editor's own document", () => {
  const day = 46_347 + 34_213 / SECONDS_A_DAY;
  readAs.set("2026-11-21 9:30:13", day);
  expect(entered({ v: "2026-11-21 9:30:13" })?.v).toBe(day);
  readAs.set("0:00:13", 13 / SECONDS_A_DAY);
  expect(entered({ p: { id: "d", documentStyle: {}, body: { dataStream: "0:00:13\r\n" } } })?.v).toBe(13 / SECONDS_A_DAY);
});

test("numbers, percentages, words and formulas stay what was made of them", () => {
  readAs.set("12.34%", 12.34 * 0.01);
  expect(entered({ v: "12.34%" })?.v).toBe(0.1234);
  for (const text of ["72.14", "oak", "9:30 or so"]) expect(entered({ v: text })?.v).toBe(text);
  expect(entered({ f: "=A2" })).toEqual({ f: "=A2" });
});
