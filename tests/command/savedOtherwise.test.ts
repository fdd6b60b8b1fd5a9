import JSZip from "jszip";
import { readBook } from "../../src/command/book/Book";
import { CommandFolder, ran } from "./inFolder";
import { bookOf } from "./longBook";

jest.setTimeout(120_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const ROW = [25, 35, 31.5].map((value, column) => `<c r="${"ABC"[column]}1"><v>${value}</v></c>`).join("");
const weighed = (saved: string): string =>
  `<sheetData><row r="1">${ROW}<c r="D1"><f>_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)</f><v>${saved}</v></c></row></sheetData>`;

const SAYS =
  "retort: The file holds another value in Tray!D1 than the cell formula gives from the inputs beside it, so it is from before. Open the workbook in the spreadsheet with the add-in, let it calculate, save it and try again, or give --recalculate.\n";

test.each([["share", "--as", "values"], ["share", "--as", "plain-cells"], ["record"]])(
  "%s %s %s refuses a value that its formula does not give",
  async (command = "", ...more) => {
    const book = files.put("run.xlsx", await bookOf([["Tray", weighed("0.99")]]));
    const output = command === "share" ? ["-o", files.at("out.xlsx")] : [];
    expect(await ran(command, book, ...more, ...output)).toEqual({ code: 1, answer: "", notes: SAYS });
    expect((await ran(command, book, ...more, ...output, "--recalculate")).code).toBe(0);
  },
);

test("a report is calculated here, so it prints what the formula gives", async () => {
  const book = files.put("run.xlsx", await bookOf([["Tray", weighed("0.99")]]));
  expect((await ran("report", book, "-o", files.at("r.html"))).code).toBe(0);
  expect(new TextDecoder().decode(files.read("r.html"))).toMatch(/0\.35\b/);
});

describe("a damaged part is named", () => {
  const broken: readonly [string, string, string][] = [
    ["a value that is no number", weighed("NaN"), '"NaN is no number"'],
    ["a number beyond all", weighed("2".repeat(401)), "is no number"],
    ["markup that breaks off", weighed("0.35").replace("</row>", ""), "xl/worksheets/sheet1.xml"],
    ["a text that no list holds", weighed("0.35").replace('<c r="A1">', '<c r="A1" t="s">'), '"no shared text 25"'],
  ];
  test.each(broken)("%s", async (_, sheet, why) => {
    const book = files.put("run.xlsx", await bookOf([["Tray", sheet]]));
    for (const words of [["share", "--as", "values"], ["record"], ["explain", "D1"], ["report", "-o", files.at("r.html")]]) {
      const { code, notes } = await ran(words[0] ?? "", book, ...words.slice(1));
      expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining('its part "xl/worksheets/sheet1.xml" cannot be read') as string });
      expect(notes).toContain(why);
      expect(notes).not.toContain("Internal error");
    }
  });
});

test("names that nothing reads, and who made the file, do not go along with values", async () => {
  const names = '<definedNames><definedName name="priv">"HIDDENCONST"</definedName></definedNames>';
  const book = files.put("run.xlsx", await bookOf([["Tray", weighed("0.35")]], { names }));
  expect((await ran("share", book, "--as", "values", "-o", files.at("v.xlsx"))).code).toBe(0);
  const { files: parts } = await JSZip.loadAsync(files.read("v.xlsx"));
  expect(await parts["xl/workbook.xml"]?.async("string")).not.toContain("HIDDENCONST");
});

test("parts have one spelling in what is written", async () => {
  const from = await JSZip.loadAsync(await bookOf([["Tray", weighed("0.35")]]));
  const odd = new JSZip();
  for (const [name, part] of Object.entries(from.files))
    if (!part.dir) odd.file(name === "xl/worksheets/sheet1.xml" ? "xl\\worksheets\\Sheet1.XML" : name, await part.async("uint8array"));
  const book = files.put("odd.xlsx", await odd.generateAsync({ type: "uint8array" }));
  for (const as of ["values", "plain-cells"]) {
    expect((await ran("share", book, "--as", as, "-o", files.at(`${as}.xlsx`))).code).toBe(0);
    const names = Object.keys((await JSZip.loadAsync(files.read(`${as}.xlsx`))).files);
    expect(names).toContain("xl/worksheets/sheet1.xml");
    expect(names.filter((name) => name.includes("\\") || /XML$/.test(name))).toEqual([]);
  }
});

test("a report reads the sheets that it needs, however far apart the cells of another are", async () => {
  const far = '<sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>7</v></c></row></sheetData>';
  const book = files.put("run.xlsx", await bookOf([["Tray", weighed("0.35")], ["Far", far]])); // prettier-ignore
  expect(await ran("report", book, "-o", files.at("r.html"))).toMatchObject({ code: 0 });
});

test.each([
  [["-o", ""], "retort: -o names no file. Give a name after it.\n"],
  [["-o", "run.csv"], "retort: run.csv has to end in .xlsx, else programs refuse to open it.\n"],
])("%p is wrong usage", async (words, notes) => {
  expect(await ran("sheet", "--kind", "drying", ...words)).toEqual({ code: 2, answer: "", notes });
});

test.each([
  [["--kind", "drying", "--stages", "4"], "--stages is for --kind staged; a sheet of the kind drying has no place for it."],
  [["--kind", "drying", "--formula", "C6H10O5"], "--formula is for --kind charring, ashing, salt;"],
  [["--kind", "charring", "--ash-firings", "2"], "--ash-firings is for --kind ashing;"],
])("an option that the kind would ignore is refused: %p", async (words, says) => {
  const { code, notes } = await ran("sheet", ...words, "-o", files.at("s.xlsx"));
  expect({ code, notes }).toEqual({ code: 2, notes: expect.stringContaining(says) as string });
});

test("with an apostrophe in its name an added sheet prints its area and repeats its rows", async () => {
  const book = files.put("run.xlsx", await bookOf([["Ann's run", weighed("0.35")]]));
  expect((await ran("share", book, "--as", "values", "-o", files.at("v.xlsx"))).code).toBe(0);
  const { names } = await readBook(files.read("v.xlsx"));
  expect(names).toEqual([]);
  const { files: parts } = await JSZip.loadAsync(files.read("v.xlsx"));
  const text = ((await parts["xl/workbook.xml"]?.async("string")) ?? "").replaceAll("&apos;", "'");
  expect(text).toContain(">'Ann''s run record'!$A$1:");
  expect(text).not.toMatch(/>'Ann's/);
});

test("a blank sheet in plain cells reckons with an analysis, and with a formula given beforehand, and the closed run needs neither", async () => {
  const formulasOf = async (name: string, ...words: readonly string[]): Promise<ReadonlyMap<string, string>> => {
    expect((await ran("sheet", "--kind", "charring", "--weigh-ins", "12", "--plain-cells", ...words, "-o", files.at(name))).code).toBe(0);
    const [first] = (await readBook(files.read(name))).sheets;
    return new Map(first?.reading.rows.flat().map(({ cell, formula }) => [cell, formula]));
  };
  const open = await formulasOf("open.xlsx");
  const given = await formulasOf("given.xlsx", "--formula", "C6H10O5");
  // The branch of a formula, of which nothing is known, and not that of the analysis.
  expect(open.get("F81")?.match(/INDEX\(NA\(\)/g)).toHaveLength(1);
  expect(open.get("F81")).toContain("INDEX(Workings!");
  expect(given.get("F81")).not.toContain("NA()");
  for (const cell of ["F86", "F87"]) expect(open.get(cell)).not.toContain("NA()");
  expect(open.get("A88")).toContain("The formula needs Retort: clear ");
});

test.each(["XFE1", "A1048577"])("explain %s: no sheet has such a cell", async (cell) => {
  const book = files.put("run.xlsx", await bookOf([["Tray", weighed("0.35")]]));
  expect(await ran("explain", book, cell)).toEqual({
    code: 2,
    answer: "",
    notes: `retort: "${cell}" is not a cell. Give one such as B7, or "Tin 3!B7".\n`,
  });
});
