import { findCalls } from "../../src/sharing/findCalls";
import { CommandFolder, ran } from "./inFolder";
import { bookOf, longBook } from "./longBook";
import { readBook } from "../../src/command/book/Book";
import { textOf } from "../xlsx/package/partsIn";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

test.each([
  [[]],
  [["roast"]],
  [["share", "run.xlsx"]],
  [["share", "run.xlsx", "--as", "pictures"]],
  [["share", "run.xlsx", "more.xlsx", "--as", "values"]],
  [["share", "run.xlsx", "--as", "plain-cells", "--sheet", "Tray"]],
  [["share", "run.xlsx", "--as", "values", "--newer-functions"]],
  [["share", "run.xlsx", "--as", "values", "--as", "plain-cells"]],
  [["share", "run.xlsx", "--as", "values", "-o", "a.xlsx", "--output", "b.xlsx"]],
  [["record", "run.xlsx", "--overwrite"]],
  [["explain", "run.xlsx"]],
  [["explain", "run.xlsx", "B7:B9"]],
  [["explain", "run.xlsx", "Tray!B7", "--sheet", "Other"]],
  [["sheet", "-o", "x.xlsx"]],
  [["sheet", "--kind", "roasting", "-o", "x.xlsx"]],
  [["sheet", "--kind", "drying", "--replicates", "7", "-o", "x.xlsx"]],
  [["sheet", "--kind", "drying", "--interval", "half an hour", "-o", "x.xlsx"]],
  [["sheet", "--kind", "drying"]],
])("%j is wrong usage", async (words) => {
  const { code, answer, notes } = await ran(...words);
  expect({ code, answer, says: notes.length > 20 }).toEqual({ code: 2, answer: "", says: true });
});

test.each(["share", "explain", "record", "report", "sheet"])("%s --help shows examples, on standard output", async (command) => {
  const { code, answer, notes } = await ran(command, "--help");
  expect({ code, notes }).toEqual({ code: 0, notes: "" });
  expect(answer).toMatch(new RegExp(`Examples:\\n {2}retort ${command} `));
});

test("explain tells inputs and arithmetic, as text and as JSON, and refuses what was never calculated", async () => {
  const book = files.put("long.xlsx", await longBook(10));
  expect((await ran("explain", book, "D2")).answer).toContain("moisture, wet basis = 3.5 / 10 = 0.35");
  const json = JSON.parse((await ran("explain", book, "'Trays'!$D$2", "--json")).answer) as { calls: { name: string }[] };
  expect(json.calls.map(({ name }) => name)).toEqual(["RETORT.MOISTURE.WET"]);
  const never = files.put("never.xlsx", await bookOf([["Tray", '<sheetData><row r="1"><c r="A1"><f>_xldudf_RETORT_MOLARMASS("H2O")</f></c></row></sheetData>']])); // prettier-ignore
  expect(await ran("explain", never, "A1")).toMatchObject({ code: 1, notes: expect.stringContaining("Tray!A1") as string });
  expect(await ran("explain", book, "A1", "--sheet", "None")).toMatchObject({
    code: 1,
    notes: expect.stringContaining('Its sheets: "Trays"') as string,
  });
});

test("record lists every calculated value, as text, as JSON and as a workbook", async () => {
  const book = files.put("long.xlsx", await longBook(10));
  expect((await ran("record", book)).answer).toContain("D1 = 0.35 (fraction)\n  =RETORT.MOISTURE.WET(A1,B1,C1)");
  const [sheet] = JSON.parse((await ran("record", book, "--json")).answer) as { rows: { cells: string }[] }[];
  expect(sheet?.rows.map(({ cells }) => cells)).toEqual(["D1", "E1", "F1", "G1", "H1", "D2", "E2", "F2", "G2", "H2"]);
  expect((await ran("record", book, "-o", files.at("r.xlsx"))).code).toBe(0);
  expect((await readBook(files.read("r.xlsx"))).sheets.map(({ name }) => name)).toEqual(["Trays record"]);
});

test.each(["drying", "charring", "ashing", "liquids", "staged", "balance"])(
  "a blank %s sheet in plain cells calls no function of ours and has its chart",
  async (kind) => {
    const { code, notes } = await ran("sheet", "--kind", kind, "-o", files.at("run.xlsx"), "--plain-cells");
    expect({ code, notes }).toEqual({ code: 0, notes: expect.stringContaining("Wrote ") as string });
    const { sheets, isStale } = await readBook(files.read("run.xlsx"));
    const formulas = sheets.flatMap(({ reading }) => reading.rows.flat().map(({ formula }) => formula)).filter((formula) => formula !== "");
    expect(formulas.length).toBeGreaterThan(50);
    expect(
      formulas.filter((formula) => /(?:retort\.|_xldudf)/i.test(formula) || findCalls(formula).length > 0 || formula.includes("inputs changed")),
    ).toEqual([]);
    expect({ isStale, inView: sheets.filter(({ isHidden }) => !isHidden).length }).toEqual({ isStale: true, inView: 1 });
    expect(await textOf(files.read("run.xlsx"), "xl/charts/chart1.xml")).toContain("scatterChart");
  },
);

test("a salt's formula and residue stand in its sheet, and without the add-in it calculates for them", async () => {
  const words = ["sheet", "--kind", "salt", "--formula", "CuSO4.5H2O", "--residue", "CuSO4", "--json"];
  const { code, answer } = await ran(...words, "-o", files.at("live.xlsx"));
  expect({ code, said: JSON.parse(answer) as unknown }).toEqual({
    code: 0,
    said: { file: files.at("live.xlsx"), kind: "salt", sheet: "Salt run", plainCells: false, leftOpen: [] },
  });
  const held = async (name: string): Promise<string[]> =>
    (await readBook(files.read(name))).sheets.flatMap(({ reading }) => reading.rows.flat().map(({ value }) => String(value)));
  expect(await held("live.xlsx")).toEqual(expect.arrayContaining(["CuSO4.5H2O", "CuSO4"]));
  const plain = await ran(...words, "--plain-cells", "-o", files.at("plain.xlsx"));
  // The end of a drying curve has no form in built-in functions.
  expect((JSON.parse(plain.answer) as { leftOpen: string[] }).leftOpen).toEqual(["RETORT.DRYING.END"]);
  expect(JSON.stringify(await readBook(files.read("plain.xlsx")).then(({ sheets }) => sheets.map(({ reading }) => reading)))).not.toMatch(
    /RETORT[._]/,
  );
});

test("report writes a page of the calculated sheet, and only where there is something to report", async () => {
  const book = files.put("long.xlsx", await longBook(10));
  expect((await ran("report", book, "-o", files.at("r.html"))).code).toBe(0);
  const page = Buffer.from(files.read("r.html")).toString();
  expect(page).toMatch(/^<!doctype html>/i);
  expect(page).toContain("0.35");
  expect((await ran("report", book, "-o", files.at("r.txt"))).code).toBe(2);
});

test.each([
  ["share", ["--as", "values"], "x.xlsx"],
  ["record", [], "x.xlsx"],
  ["report", [], "x.html"],
])("%s tells a slip in a sheet's name before it looks where its answer would go", async (command, options, output) => {
  const book = files.put("long.xlsx", await longBook(2));
  const there = files.put(output, "there");
  const { code, notes } = await ran(command, book, ...options, "--sheet", "Tryas", "-o", there);
  expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining("Tryas") as string });
  expect(notes).not.toContain(output);
  expect((await ran(command, book, ...options, "--sheet", "trays", "-o", there)).notes).toContain(output);
});

test("sheets whose names differ in capitals alone are a damaged file", async () => {
  const cells = '<sheetData><row r="1"><c r="A1"><f>_xldudf_RETORT_MOLARMASS("H2O")</f><v>18.015</v></c></row></sheetData>';
  const book = files.put("two.xlsx", await bookOf([["Run", cells], ["run", cells]])); // prettier-ignore
  for (const words of [
    ["share", book, "--as", "values"],
    ["explain", book, "A1"],
    ["record", book],
  ]) {
    const { code, notes } = await ran(...words);
    expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining("two sheets are called run") as string });
  }
});
