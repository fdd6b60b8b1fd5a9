import { chmodSync, linkSync, lstatSync, readdirSync, symlinkSync } from "node:fs";
import path from "node:path";
import { readBook } from "../../src/command/book/Book";
import { plainBanner } from "../../src/problems/sharing/sharedCopyWords";
import { notCheckedHere } from "../../src/command/words/refusals";
import { partsDiffering, textOf } from "../xlsx/package/partsIn";
import { CommandFolder, DAY, ran } from "./inFolder";
import { bookOf, longBook } from "./longBook";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const MOISTURE = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
const cell = (at: string, value: string | number): string =>
  typeof value === "number" ? `<c r="${at}"><v>${value}</v></c>` : `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`;
const ROW = cell("A1", 25) + cell("B1", 35) + cell("C1", 31.5);
const inside = (formulas: string, further = ""): string => `<sheetData><row r="1">${ROW}${formulas}</row></sheetData>${further}`;
const GOOD = inside(`<c r="D1"><f>${MOISTURE}</f><v>0.35</v></c>`);
const RULE = `<dataValidations count="1"><dataValidation type="decimal" sqref="A1:C1"><formula1>0</formula1><formula2>9</formula2></dataValidation></dataValidations>`;

const cellsOf = async (name: string): Promise<Record<string, Record<string, unknown>>> => {
  const { sheets } = await readBook(files.read(name));
  return Object.fromEntries(
    sheets.map(({ name: sheet, reading }) => [sheet, Object.fromEntries(reading.rows.flat().map((one) => [one.cell, one.formula || one.value]))]),
  );
};

describe("as values", () => {
  test("gives the copy and its record alone, the copy first in view, saying what it is, without rules for entries", async () => {
    const book = files.put(
      "run.xlsx",
      await bookOf([
        ["Secret", inside("")],
        ["Tray", inside(`<c r="D1"><f>${MOISTURE}</f><v>0.35</v></c><c r="E1"><f>Secret!A1</f><v>25</v></c>`, RULE)],
      ]),
    );
    const { code, answer } = await ran("share", book, "--as", "values");
    expect({ code, answer }).toEqual({ code: 0, answer: '"Tray": 2 values on "Tray values", how they came about on "Tray record"\n' });
    const made = await cellsOf("run values.xlsx");
    expect(Object.keys(made)).toEqual(["Tray values", "Tray record"]);
    expect(made["Tray values"]).toEqual({ A1: 25, B1: 35, C1: 31.5, D1: 0.35, E1: 25, A2: `Values of ${DAY}; does not recalculate` });
    expect(Object.values(made["Tray record"] ?? {})).toContain("=RETORT.MOISTURE.WET(A1,B1,C1)");
    const sheet = await textOf(files.read("run values.xlsx"), "xl/worksheets/sheet2.xml");
    expect(sheet).not.toMatch(/dataValidation|<f>/);
    expect(await textOf(files.read("run values.xlsx"), "xl/workbook.xml")).toContain('activeTab="0"');
  });

  test("takes a sheet by its name, hidden or without calls, and shows it", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD], ["Quiet", inside("<c r=\"D1\"><f>A1*2</f><v>50</v></c>")]], { hidden: ["Quiet"] })); // prettier-ignore
    expect((await ran("share", book, "--as", "values", "--sheet", "quiet", "-o", files.at("q.xlsx"))).code).toBe(0);
    expect(Object.keys(await cellsOf("q.xlsx"))).toEqual(["Quiet values", "Quiet record"]);
    expect(await textOf(files.read("q.xlsx"), "xl/workbook.xml")).not.toContain("hidden");
  });

  test("answers in JSON where a script asks", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD]]));
    const { answer } = await ran("share", book, "--as", "values", "--json", "-o", files.at("v.xlsx"));
    expect(JSON.parse(answer)).toEqual({
      ...{ as: "values", file: files.at("v.xlsx"), date: DAY },
      sheets: [{ sheet: "Tray", copy: "Tray values", record: "Tray record", formulas: 1, banner: "A2" }],
      // Rules and names that call Retort are told of in either kind of copy.
      rules: { rewritten: 0, takenOut: [] },
    });
  });
});

describe("as plain cells", () => {
  test("changes the cells and the workbook's list of sheets, and no other part", async () => {
    const before = await bookOf([["Tray", GOOD], ["Notes", inside("")]]); // prettier-ignore
    const book = files.put("run.xlsx", before);
    const { code, answer } = await ran("share", book, "--as", "plain-cells");
    expect({ code, answer }).toEqual({ code: 0, answer: "1 cell formula in built-in functions\n" });
    const { changed, gone } = await partsDiffering(before, files.read("run plain cells.xlsx"));
    expect([...changed].sort()).toEqual(["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/workbook.xml", "xl/worksheets/sheet1.xml"]);
    expect(gone).toEqual([]);
    const made = await cellsOf("run plain cells.xlsx");
    expect(made.Tray?.D1).toMatch(/^=IF\(/);
    expect(made.Tray?.A2).toBe(plainBanner(DAY, 0));
    expect(Object.values(made["Tray record"] ?? {})).toContain(made.Tray?.D1);
    expect(JSON.stringify(made.Tray)).not.toContain("RETORT");
    expect(made["Tray record"]).toBeDefined();
    expect(await textOf(files.read("run plain cells.xlsx"), "xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
  });

  test("keeps what has no plain form behind a guard, and says so", async () => {
    // What the spreadsheet alone works out beside the call: whether the value is from before cannot be told here, so it is shared by choice alone.
    const call = `_xldudf_RETORT_DRYING_END(A1:C1,A1:C1)+0*NOW()`;
    const book = files.put("run.xlsx", await bookOf([["Tray", inside(`<c r="D1"><f>${call}</f><v>4</v></c>`)]]));
    expect(await ran("share", book, "--as", "plain-cells")).toEqual({ code: 1, answer: "", notes: `retort: ${notCheckedHere(["Tray!D1"])}\n` });
    const { code, answer } = await ran("share", book, "--as", "plain-cells", "--keep-errors");
    expect({ code, answer }).toEqual({
      code: 0,
      answer:
        "0 cell formulas in built-in functions\n1 cannot be written so and is fixed; each says so as soon as an input changes:\n  Tray!D1: this function has no form in built-in functions\n",
    });
    const made = await cellsOf("run plain cells.xlsx");
    expect(made.Tray?.D1).toBe(`=IF('Tray changes'!D1=2,"fixed on ${DAY}: inputs changed",4)`);
    expect(await textOf(files.read("run plain cells.xlsx"), "xl/workbook.xml")).toMatch(/name="Tray changes"[^>]*state="hidden"/);
  });
});

describe("refuses, writing nothing", () => {
  test.each<[string, string, Record<string, string>, string]>([
    ["a formula without a value", inside(`<c r="D1"><f>${MOISTURE}</f></c>`), {}, "No value was saved beside the cell formula of Tray!D1."],
    ["a file to be calculated when opened", GOOD, { calculation: '<calcPr fullCalcOnLoad="1"/>' }, "The file says that it is to be calculated"],
    ["a calculation that was broken off", GOOD, { calculation: '<calcPr calcCompleted="0"/>' }, "The file says that it is to be calculated"],
    ["functions that were not loaded", inside(`<c r="D1" t="e"><f>${MOISTURE}</f><v>#NAME?</v></c>`), {}, "Tray!D1 is saved as #NAME?"],
    ["a value on its way", inside(`<c r="D1" t="e"><f>${MOISTURE}</f><v>#BUSY!</v></c>`), {}, "Tray!D1 is saved while still calculating (#BUSY!)"],
    ["a call in error", inside(`<c r="D1" t="e"><f>${MOISTURE}</f><v>#VALUE!</v></c>`), {}, "Tray!D1 is in error (#VALUE!)"],
    ["a book without calls", inside(`<c r="D1"><f>A1</f><v>25</v></c>`), {}, "No sheet in view of this workbook holds a Retort function"],
  ])("%s", async (_, sheet, beside, says) => {
    const book = files.put("run.xlsx", await bookOf([["Tray", sheet]], beside));
    for (const as of says.startsWith("No sheet") ? ["values"] : ["values", "plain-cells"]) {
      const { code, notes } = await ran("share", book, "--as", as);
      expect({ as, code, notes }).toEqual({ as, code: 1, notes: expect.stringContaining(says) as string });
    }
    expect(readdirSync(files.folder)).toEqual(["run.xlsx"]);
  });

  test("errors are shared as they are by choice", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", inside(`<c r="D1" t="e"><f>${MOISTURE}</f><v>#VALUE!</v></c>`)]]));
    expect((await ran("share", book, "--as", "values", "--keep-errors")).code).toBe(0);
    expect((await cellsOf("run values.xlsx"))["Tray values"]?.D1).toBe("#VALUE!");
  });

  test("the built functions calculate what no program has, where that is asked for", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", inside(`<c r="D1"><f>${MOISTURE}</f></c>`)]]));
    expect((await ran("share", book, "--as", "values", "--recalculate")).code).toBe(0);
    expect((await cellsOf("run values.xlsx"))["Tray values"]?.D1).toBeCloseTo(0.35, 12);
  });

  test.each<[string, string | Uint8Array, string]>([
    ["text", "vessel;moist;dry", "This file is text"],
    ["nothing", "", "This file is empty"],
    ["a broken archive", new Uint8Array([0x50, 0x4b, 3, 4, 1, 2, 3]), "is not an .xlsx workbook or is damaged"],
  ])("%s in place of a workbook", async (_, content, says) => {
    const { code, notes } = await ran("share", files.put("run.xlsx", content), "--as", "values");
    expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining(says) as string });
  });

  test("a file that is not there, and a folder", async () => {
    expect(await ran("share", files.at("no.xlsx"), "--as", "values")).toMatchObject({
      code: 1,
      notes: expect.stringContaining("There is no file") as string,
    });
    expect(await ran("share", files.folder, "--as", "values", "-o", files.at("v.xlsx"))).toMatchObject({
      code: 1,
      notes: expect.stringContaining("is a folder. Give a workbook file.") as string,
    });
  });
});

describe("never writes over", () => {
  test("its input, under whatever name, even when told to", async () => {
    const before = await bookOf([["Tray", GOOD]]);
    const book = files.put("run.xlsx", before);
    symlinkSync(book, files.at("link.xlsx"));
    linkSync(book, files.at("second.xlsx"));
    for (const name of [book, files.at("link.xlsx"), files.at("second.xlsx"), path.join(files.folder, ".", "x", "..", "run.xlsx")]) {
      const { code, notes } = await ran("share", book, "--as", "values", "-o", name, "--overwrite");
      expect({ name, code, notes }).toEqual({ name, code: 1, notes: expect.stringContaining("never written over") as string });
    }
    expect(files.read("run.xlsx")).toEqual(before);
  });

  test("a link that leads nowhere: what it leads to is written, and the link stays", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD]]));
    symlinkSync("later.xlsx", files.at("link.xlsx"));
    const words = ["share", book, "--as", "values", "-o", files.at("link.xlsx")];
    expect((await ran(...words)).code).toBe(1);
    expect((await ran(...words, "--overwrite")).code).toBe(0);
    expect(lstatSync(files.at("link.xlsx")).isSymbolicLink()).toBe(true);
    expect((await readBook(files.read("later.xlsx"))).sheets.length).toBeGreaterThan(0);
    symlinkSync(path.join("nowhere", "later.xlsx"), files.at("lost.xlsx"));
    const lost = await ran("share", book, "--as", "values", "-o", files.at("lost.xlsx"), "--overwrite");
    expect(lost).toMatchObject({ code: 1, notes: expect.stringContaining("nowhere") as string });
  });

  test("another file, unless told to", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD]]));
    files.put("other.xlsx", "mine");
    const words = ["share", book, "--as", "values", "-o", files.at("other.xlsx")];
    expect(await ran(...words)).toMatchObject({ code: 1, notes: expect.stringContaining("is there already") as string });
    expect(Buffer.from(files.read("other.xlsx")).toString()).toBe("mine");
    expect((await ran(...words, "--overwrite")).code).toBe(0);
    expect(readdirSync(files.folder).sort()).toEqual(["other.xlsx", "run.xlsx"]);
  });

  test("where the system does not let it, be it a folder that may not be written to or a name too long", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD]]));
    const name = files.at(`${"x".repeat(300)}.xlsx`);
    expect(await ran("share", book, "--as", "values", "-o", name)).toMatchObject({
      code: 1,
      notes: expect.stringMatching(/could not be written \(E\w+\), so nothing is there/) as string,
    });
    // Whoever may do everything may write into any folder, and Windows has no such folders.
    const mayWriteAnywhere = process.getuid?.() === 0 || process.platform === "win32";
    chmodSync(files.folder, 0o555);
    const { code } = await ran("share", book, "--as", "values");
    chmodSync(files.folder, 0o755);
    expect(code).toBe(mayWriteAnywhere ? 0 : 1);
    expect(readdirSync(files.folder)).toEqual(mayWriteAnywhere ? ["run values.xlsx", "run.xlsx"] : ["run.xlsx"]);
  });

  test("a folder that is not there is named", async () => {
    const book = files.put("run.xlsx", await bookOf([["Tray", GOOD]]));
    const { code, notes } = await ran("share", book, "--as", "values", "-o", files.at("none/v.xlsx"));
    expect({ code, notes }).toEqual({ code: 1, notes: expect.stringContaining("There is no folder") as string });
  });
});

test.each(["It's (a)", "Zinn – 錫", "=1+1", "a&amp;b"])("a sheet named %s is shared under its name", async (name) => {
  const book = files.put("run.xlsx", await bookOf([[name, GOOD]]));
  expect((await ran("share", book, "--as", "values", "--sheet", name)).code).toBe(0);
  expect(Object.keys(await cellsOf("run values.xlsx"))[0]).toBe(`${name} values`);
});

test("what would steer a terminal is not printed", async () => {
  const { notes } = await ran("share", files.at("\u001b[2Jx.xlsx"), "--as", "values");
  expect(notes).not.toContain("\u001b");
});

test("a long book says what is being done, and its filled-down formulas are one line of the record each", async () => {
  const book = files.put("long.xlsx", await longBook(15_000));
  const { code, notes } = await ran("share", book, "--as", "values");
  expect({ code, notes }).toEqual({ code: 0, notes: expect.stringContaining("Recording how 15000 cell formulas came about") as string });
  const record = (await cellsOf("long values.xlsx"))["Trays record"] ?? {};
  expect(Object.values(record)).toContain("D1:D3000");
});
