import { readFileSync } from "node:fs";
import path from "node:path";
import { openXlsx } from "../../../src/workbench/xlsx/openXlsx";
import { saveXlsx } from "../../../src/workbench/xlsx/saveXlsx";
import type { CellReading } from "../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(30_000);

/** How the files were made, and by what, stands in makeFiles.py beside them. */
const FILES = path.join(__dirname, "files");
const fileNamed = (name: string): Uint8Array<ArrayBuffer> => new Uint8Array(readFileSync(path.join(FILES, name)));
type Answer = string | number | boolean | { readonly day: string };
const answers = JSON.parse(readFileSync(path.join(FILES, "answers.json"), "utf8")) as Record<string, Record<string, Record<string, Answer>>>;

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

/** A day or a time of day as the number a spreadsheet counts. It counts a 29 February 1900 that never was. */
function daysOf(text: string): number {
  const [, day = "1899-12-30", time = "00:00:00"] = /^([\d-]{10})?T?([\d:.]+)?$/.exec(text) ?? [];
  const days = (Date.parse(`${day}T${time}Z`) - Date.parse("1899-12-30T00:00:00Z")) / 86_400_000;
  return day < "1900-03-01" && day >= "1900-01-01" ? days - 1 : days;
}

const mergedIn = (sheet: string): string[] =>
  (open.engine.book.getSheetByName(sheet)?.getMergedRanges() ?? []).map((range) => range.getA1Notation()).sort();

const valueOf = (answer: Answer | undefined): unknown => (typeof answer === "object" ? daysOf(answer.day) : (answer ?? null));

/** Every cell of the sheet that holds anything, as [cell, value]. */
async function held(sheet: string): Promise<[string, CellReading][]> {
  const { rows } = await open.workbook.readUsed(sheet);
  return rows.flat().flatMap((cell): [string, CellReading][] => (cell.value === null ? [] : [[cell.cell, cell]]));
}

const isClose = (one: unknown, other: unknown): boolean =>
  typeof one === "number" && typeof other === "number"
    ? Math.abs(one - other) <= 1e-9 * Math.max(1e-9, Math.abs(one), Math.abs(other))
    : one === other;

describe.each<[string, string[]]>([
  ["openpyxl.xlsx", []],
  // It writes text in two scripts as two runs with a font each.
  ["libreoffice.xlsx", ["1 text with several looks in one cell, shown in one (Kinds): kept on saving"]],
  ["gnumeric.xlsx", []],
])("%s", (file, said) => {
  test.each(["LibreOffice", "Gnumeric"])("holds in every cell what %s calculates", async (program) => {
    expect(await openXlsx(open.engine, fileNamed(file))).toEqual(said);
    let compared = 0;
    for (const [sheet, expected] of Object.entries(answers[program] ?? {})) {
      const here = new Map(await held(sheet));
      const cells = [...new Set([...here.keys(), ...Object.keys(expected)])];
      compared += cells.length;
      const differing = cells
        .map((cell) => ({ cell, here: here.get(cell)?.value ?? null, there: valueOf(expected[cell]) }))
        .filter(({ here: one, there: other }) => !isClose(one, other));
      expect({ sheet, differing }).toEqual({ sheet, differing: [] });
    }
    expect(compared).toBeGreaterThan(110);
  });

  test("saved from here and opened again holds the same", async () => {
    await openXlsx(open.engine, fileNamed(file));
    const names = await open.workbook.sheetNames();
    const before = await Promise.all(names.map((name) => open.workbook.readUsed(name)));
    const merged = names.map(mergedIn);
    expect(await openXlsx(open.engine, await saveXlsx(open.engine))).toEqual([]);
    expect(await open.workbook.sheetNames()).toEqual(names);
    expect(await Promise.all(names.map((name) => open.workbook.readUsed(name)))).toEqual(before);
    expect(names.map(mergedIn)).toEqual(merged);
  });
});

test("a formula filled down keeps its texts, functions and names, and slides its references alone", async () => {
  await openXlsx(open.engine, fileNamed("openpyxl.xlsx"));
  const formulas = async (cells: string): Promise<string[]> =>
    (await open.workbook.read("Kiln runs", cells)).rows[0]?.map(({ formula }) => formula) ?? [];
  expect(await formulas("E3:J3")).toEqual([
    "=C3-D3",
    "=E3/(C3-$B3)",
    '="SO2"&" of "&A3&" in ""C3"""',
    "=SUM(B$3:B3)*rate+tin_one",
    "='Tins list'!B2+SUM('Tins list'!$B:$B)",
    "=LOG10(B3)+ATAN2(1,B3)",
  ]);
  expect(await formulas("E6:J6")).toEqual([
    "=C6-D6",
    "=E6/(C6-$B6)",
    '="SO2"&" of "&A6&" in ""C3"""',
    "=SUM(B$3:B6)*rate+tin_one",
    "='Tins list'!B5+SUM('Tins list'!$B:$B)",
    "=LOG10(B6)+ATAN2(1,B6)",
  ]);
});

test("merged cells stay merged and hold their value once", async () => {
  await openXlsx(open.engine, fileNamed("openpyxl.xlsx"));
  expect(mergedIn("Kiln runs")).toEqual(["A1:D1", "B8:E8", "B9:C10"]);
  // 25 once, not in each of four cells; and 12 + one number.
  expect((await open.workbook.read("Kiln runs", "F8:F9")).rows.flat().map(({ value }) => value)).toEqual([25, 13]);
});

test("what a file of charts, pictures, comments, tables and more has beside its cells is told, and the rest of it is there", async () => {
  expect(await openXlsx(open.engine, fileNamed("beside.xlsx"))).toEqual([
    "1 hidden sheet, shown here (Hidden notes): kept on saving",
    "1 sheet without cells, such as one that is a chart (Chart alone): kept on saving",
    "2 charts (Kiln runs): kept on saving",
    "1 picture (Kiln runs): kept on saving",
    "1 sheet with comments (Kiln runs): kept on saving",
    "1 table, shown as plain cells (Kiln runs): kept on saving",
    "1 rule for colouring cells by their values (Kiln runs): kept on saving",
    "1 link, of which the text is shown (Kiln runs): kept on saving",
    "1 rule for entries of a kind not known here, shown as its prompt (Kiln runs): kept on saving",
    "1 protection of a sheet or the workbook (Locked): kept on saving",
    "1 filter of rows (Locked): kept on saving",
    "1 sheet with hidden rows or columns, shown here (Locked): kept on saving",
  ]);
  expect(await open.workbook.sheetNames()).toEqual(["Kiln runs", "Hidden notes", "Locked"]);
  const [water, sums] = await Promise.all(["D2:D5", "B7:C7"].map((range) => open.workbook.read("Kiln runs", range)));
  expect(water?.rows.flat().map(({ formula }) => formula)).toEqual(["=$B$2-$C$2", "=$B$3-$C$3", "=$B$4-$C$4", "=$B$5-$C$5"]);
  expect(sums?.rows[0]?.map(({ value }) => value)).toEqual([998.96, 4]);
});

test("days counted from 1904 are the same days, and times and plain numbers the same numbers", async () => {
  expect(await openXlsx(open.engine, fileNamed("days1904.xlsx"))).toEqual([
    "This file counts days from 1904; its dates were counted anew from 1900, as everywhere else. Look at plain numbers that stand for days.",
  ]);
  const { rows } = await open.workbook.read("Days", "A1:B3");
  expect(rows.map((row) => row.map(({ value }) => value))).toEqual([
    [daysOf("2026-01-15"), 2026],
    [daysOf("09:45:00"), 9.75],
    [12.5, null],
  ]);
});
