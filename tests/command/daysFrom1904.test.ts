import { readBook } from "../../src/command/book/Book";
import { daysInDoubt } from "../../src/command/words/refusals";
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const CALL = { formula: "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)", value: null };
const DAY = { xml: '<c r="A3" s="2"><v>44000</v></c>' };
const NEXT_DAY = { xml: '<c r="B3" s="2"><f>A3+1</f><v>44001</v></c>' };
const bookWith = (cells: Readonly<Record<string, OddCell>>): Uint8Array<ArrayBuffer> =>
  oddBook({
    sheets: [{ name: "Tray", cells: { A1: 25, B1: 35, C1: 31.5, D1: CALL, A3: DAY, B3: NEXT_DAY, ...cells } }],
    before: '<workbookPr date1904="1"/>',
  });

test("days that a file counts from 1904 stay so counted when it is calculated here", async () => {
  const book = files.put("in.xlsx", bookWith({}));
  expect((await ran("share", book, "--as", "values", "--recalculate", "-o", files.at("out.xlsx"))).code).toBe(0);
  const { sheets } = await readBook(files.read("out.xlsx"));
  const made = new Map(sheets[0]?.reading.rows.flat().map(({ cell, value }) => [cell, value]));
  expect(["A3", "B3"].map((cell) => made.get(cell))).toEqual([44_000, 44_001]);
  expect(made.get("D1")).toBeCloseTo(0.35, 12);
});

test("a number that may be such a day is refused by name", async () => {
  const book = files.put("in.xlsx", bookWith({ C3: { formula: "A3*1", value: null } }));
  const { code, notes } = await ran("share", book, "--as", "values", "--recalculate");
  expect({ code, notes }).toEqual({ code: 1, notes: `retort: ${daysInDoubt(["Tray!C3"])}\n` });
  expect(daysInDoubt(["Tray!C3"])).toBe(
    "This file counts days from 1904, and Tray!C3 comes out otherwise here than saved: whether as a number or a day cannot be told. Leave out --recalculate after saving the workbook in the spreadsheet with the add-in.",
  );
});
