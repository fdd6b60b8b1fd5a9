import { tooMuchAtOnce } from "../../../src/problems/workbook/workbookProblems";
import { shareAsPlainCells } from "../../../src/sharing/shareAsPlainCells";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import { ExcelHost } from "../../host/ExcelHost";
import { loadClientLibrary } from "../../host/loadClientLibrary";

// Excel on the web takes 5 MB, and so does the in-memory host, which refuses more; the issue asks for requests of less than 4. How long the first answer
// is nobody knows before.
const FOUR_MEGABYTES = 4_000_000;
const FIVE_MEGABYTES = 5_000_000;
jest.setTimeout(120_000);

const host = new ExcelHost();
loadClientLibrary(host);
const workbook = new ExcelWorkbook();
beforeEach(() => {
  host.newBook();
  host.calculate = () => 0.35;
});

/** Rows of weighings, each with a call. @param formula of a row, from 1 on */
function fill(rows: number, formula: (row: number) => string, note = ""): void {
  const sheet = host.book.sheet("Sheet1");
  for (let row = 0; row < rows; row++) {
    [25, 35, 31.5].forEach((grams, column) => sheet.write(row, column, grams));
    sheet.write(row, 3, formula(row + 1));
    if (note !== "") sheet.write(row, 4, `${note}${row}`);
  }
  host.calculateAgain();
  Object.assign(host.longest, { request: 0, answer: 0 });
}

const call = (row: number): string => `RETORT.MOISTURE.WET(A${row},B${row},C${row})`;

const BOOKS: readonly [what: string, rows: number, formula: (row: number) => string, note?: string][] = [
  ["more cells than an answer takes, one formula filled down", 5_100, (row) => `=${call(row)}`],
  ["a formula of its own in each row, so that the record has a line for each", 1_500, (row) => `=${call(row)}+${row}`],
  ["formulas of thousands of characters", 700, (row) => `=${call(row)}+LEN("${`char ${row} `.repeat(750)}")`],
  ["texts as long as a cell takes", 150, (row) => `=${call(row)}`, "char and ash ".repeat(2_400)],
  ["texts in letters of three bytes", 150, (row) => `=${call(row)}`, "木炭".repeat(4_000)],
];

describe.each(BOOKS)("a sheet of %s", (_, rows, formula, note) => {
  test.each([
    ["values", shareAsValues],
    ["plain cells", shareAsPlainCells],
  ])("is shared as %s in requests of less than 4 MB and answers that the web takes", async (_kind, share) => {
    fill(rows, formula, note);
    const { copy } = await share(workbook, "Sheet1", "2027-01-15");
    expect([host.longest.request < FOUR_MEGABYTES, host.longest.answer <= FIVE_MEGABYTES]).toEqual([true, true]);
    const { rows: shared } = await workbook.readUsed(copy);
    const source = await workbook.readUsed("Sheet1");
    const [last, lastOfSource] = [shared[rows - 1], source.rows[rows - 1]].map((row) => row?.slice(0, 3).map(({ value }) => value));
    expect(last).toEqual(lastOfSource);
    const calls = shared.map((row) => row[3]);
    expect(calls.filter((one) => one?.formula.includes("RETORT."))).toEqual([]);
    expect(new Set(calls.map((one) => (one?.formula === "" ? one.value : "a formula")))).toEqual(
      new Set([share === shareAsValues ? 0.35 : "a formula"]),
    );
  });
});

test("reads on in shorter answers where Excel finds one too long", async () => {
  fill(500, (row) => `=${call(row)}`);
  const whole = await workbook.readUsed("Sheet1");
  host.mostBytes = 60_000;
  expect(await workbook.readUsed("Sheet1")).toEqual(whole);
});

test("a row that is too long by itself is refused in words", async () => {
  fill(1, (row) => `=${call(row)}`);
  host.mostBytes = 600;
  await expect(workbook.readUsed("Sheet1")).rejects.toThrow(tooMuchAtOnce);
});
