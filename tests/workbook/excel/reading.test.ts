import { MOST_INPUT_CELLS } from "../../../src/workbook/excel/reading/readInputs";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";
import { contractFormulas } from "../contractFormulas";

// Sixty thousand cells take seconds where many processes share a processor.
jest.setTimeout(30_000);

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  host.calculate = contractFormulas;
});

describe("read(sheet, range) in Excel", () => {
  test("needs one request where nothing spills, and one more where something does", async () => {
    host.type("Sheet1", "A1", "=1+1");
    expect(await requestsFor(() => workbook.read("Sheet1", "A1:C9"))).toBe(1);
    host.type("Sheet1", "B2", "=SEQUENCE(3,2)");
    expect(await requestsFor(() => workbook.read("Sheet1", "A1:C9"))).toBe(2);
  });

  test("gives no formula to the cells a spill fills, should the host hand its formula over for them", async () => {
    host.book.ghostFormulas = true;
    host.type("Sheet1", "A1", "=SEQUENCE(3,2)");
    const { rows } = await workbook.read("Sheet1", "A1:B3");
    expect(rows.flat().map(({ formula }) => formula)).toEqual(["=SEQUENCE(3,2)", "", "", "", "", ""]);
    expect((await workbook.read("Sheet1", "B3")).rows[0]?.[0]).toMatchObject({ formula: "", value: 6, spill: "" });
  });

  test("takes a formula that still calculates as an error, whatever type the host gives it", async () => {
    host.calculate = () => "#BUSY!";
    host.type("Sheet1", "A1", "=1+1");
    expect((await workbook.read("Sheet1", "A1")).rows[0]?.[0]).toMatchObject({ formula: "=1+1", error: "#BUSY!" });
  });

  test("shows a spill that is blocked as the error #SPILL!", async () => {
    host.type("Sheet1", "B2", "in the way");
    host.type("Sheet1", "A1", "=SEQUENCE(3,2)");
    expect((await workbook.read("Sheet1", "A1")).rows[0]?.[0]).toMatchObject({ error: "#SPILL!", spill: "" });
  });

  test("works without spills where Excel is older than ExcelApi 1.12", async () => {
    host.book.apiVersion = "1.9";
    host.type("Sheet1", "A1", "=1+1");
    host.type("Sheet1", "A2", "=NA()");
    expect((await workbook.readUsed("Sheet1")).rows.map(([cell]) => [cell?.formula, cell?.value, cell?.spill])).toEqual([
      ["=1+1", 2, ""],
      ["=NA()", "#N/A", ""],
    ]);
  });

  test("reads 60,000 cells in three requests after the one for the used range, each answer below the 5 MB that the web takes", async () => {
    const sheet = host.book.sheet("Sheet1");
    for (let row = 0; row < ROWS; row++) for (let column = 0; column < COLUMNS; column++) sheet.write(row, column, row + 0.123456);
    const requests = await requestsFor(async () => {
      const { range, rows } = await workbook.readUsed("Sheet1");
      expect([range, rows.length, rows[ROWS - 1]?.[COLUMNS - 1]?.value]).toEqual([`A1:E${ROWS}`, ROWS, ROWS - 1 + 0.123456]);
    });
    expect(requests).toBe(1 + 3);
    expect(host.longest.answer).toBeLessThan(FIVE_MEGABYTES);
  });
});

describe("readInputs(address, wanted) in Excel", () => {
  const wanted = (range: string) => [{ sheet: "Sheet1", range, spill: false }];
  const B1 = { sheet: "Sheet1", cell: "B1" };

  test("leaves out an input of more cells than are read at once, and keeps the others", async () => {
    const sheet = host.book.sheet("Sheet1");
    for (const row of [0, MOST_INPUT_CELLS]) sheet.write(row, 0, 1);
    sheet.write(0, 2, 35);
    const { ranges } = await workbook.readInputs(B1, [...wanted("A:A"), ...wanted("C:C"), ...wanted(`A1:A${MOST_INPUT_CELLS + 1}`)]);
    expect(ranges).toEqual([undefined, [[{ value: 35, error: "" }]], undefined]);
  });

  test("gives a tall range of few filled cells its whole height", async () => {
    host.type("Sheet1", "A3", 32);
    const [rows] = (await workbook.readInputs(B1, wanted("A2:A90000"))).ranges;
    expect([rows?.length, rows?.[1], rows?.[2], rows?.[89_998]]).toEqual([
      89_999,
      [{ value: 32, error: "" }],
      [{ value: null, error: "" }],
      [{ value: null, error: "" }],
    ]);
  });

  test("works without spills where Excel is older than ExcelApi 1.12", async () => {
    host.book.apiVersion = "1.9";
    host.type("Sheet1", "B1", "=1+1");
    const { again, ranges } = await workbook.readInputs(B1, [{ sheet: "Sheet1", range: "B1", spill: true }]);
    expect([again.reading.value, again.anchor, ranges]).toEqual([2, undefined, [[[{ value: 2, error: "" }]]]]);
  });
});

// Office Add-ins documentation, "Resource limits and performance optimization for Office Add-ins".
const FIVE_MEGABYTES = 5_000_000;
const ROWS = 12_000;
const COLUMNS = 5;

/** Requests that load something. */
async function requestsFor(work: () => Promise<unknown>): Promise<number> {
  host.requests.length = 0;
  await work();
  return host.requests.filter(({ Actions }) => Actions.some(({ ActionType }) => ActionType === 2)).length;
}
