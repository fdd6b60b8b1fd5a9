import { readBook } from "../../src/command/book/Book";
import { textOf } from "../xlsx/package/partsIn";
import { oddBook, xml } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const CALL = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
const INPUTS = { A1: 25, B1: 35, C1: 31.5 };
const names = (refersTo: string): string => `<definedNames><definedName name="wet">${xml(refersTo)}</definedName></definedNames>`;
const ABSOLUTE = "_xldudf_RETORT_MOISTURE_WET(Tray!$A$1,Tray!$B$1,Tray!$C$1)";
const colouring = `<conditionalFormatting sqref="D1"><cfRule type="expression" dxfId="0" priority="1"><formula>${xml(`${CALL}>0.3`)}</formula></cfRule></conditionalFormatting>`;
const entry = `<dataValidations count="1"><dataValidation type="custom" sqref="F1"><formula1>${xml(`${CALL}>F1`)}</formula1></dataValidation></dataValidations>`;
const tray = (behind = "", cells = {}) => [{ name: "Notes", cells: { A1: "kiln" } }, { name: "Tray", cells: { ...INPUTS, ...cells }, behind }]; // prettier-ignore

/** Books that call us in no formula of a cell, and the sheets that are shared of them. */
const BOOKS: Readonly<Record<string, readonly [book: Uint8Array<ArrayBuffer>, sheets: readonly string[]]>> = {
  "a rule for colouring": [oddBook({ sheets: tray(colouring) }), ["Tray"]],
  "a rule for entries": [oddBook({ sheets: tray(entry) }), ["Tray"]],
  "a name that a cell uses": [oddBook({ sheets: tray("", { D1: { formula: "wet*2", value: 0.7 } }), behind: names(ABSOLUTE) }), ["Tray"]],
  "a name that nothing uses": [oddBook({ sheets: tray(), behind: names(ABSOLUTE) }), ["Notes", "Tray"]],
  "a name over relative cells": [
    oddBook({ sheets: tray(), behind: names("_xldudf_RETORT_MOISTURE_WET(Tray!A1,Tray!B1,Tray!C1)") }),
    ["Notes", "Tray"],
  ],
};

describe.each(Object.entries(BOOKS))("a workbook whose one call stands in %s", (_, [book, shared]) => {
  test.each(["values", "plain-cells"])("is shared as %s, without the call, and recorded", async (as) => {
    const { code, notes } = await ran("share", files.put("in.xlsx", book), "--as", as, "-o", files.at("out.xlsx"));
    expect({ code, notes }).toEqual({ code: 0, notes: expect.stringContaining("Wrote ") as string });
    const { sheets } = await readBook(files.read("out.xlsx"));
    const records = sheets.map(({ name }) => name).filter((name) => name.endsWith(" record"));
    expect(records).toEqual(shared.map((name) => `${name} record`));
    for (const place of sheets.keys()) expect(await textOf(files.read("out.xlsx"), `xl/worksheets/sheet${place + 1}.xml`)).not.toMatch(/<[^>]*(?:f|formula\d?)>[^<]*RETORT/i); // prettier-ignore
    expect(await textOf(files.read("out.xlsx"), "xl/workbook.xml")).not.toMatch(/retort/i);
    const tray2 = sheets.find(({ name }) => name.startsWith("Tray"))?.reading.rows.flat();
    expect(tray2?.find(({ cell }) => cell === "B1")?.value).toBe(35);
  });

  test("has a record of its own", async () => {
    const { code, answer } = await ran("record", files.put("in.xlsx", book));
    expect(code).toBe(0);
    expect(answer).toContain('Calculation record of "Tray"');
  });
});

test("a record lists rules and names that call Retort, with what becomes of them", async () => {
  const [both] = [oddBook({ sheets: tray(colouring), behind: names("_xldudf_RETORT_MOISTURE_WET(Tray!A1,Tray!B1,Tray!C1)") })];
  const { answer } = await ran("record", files.put("in.xlsx", both), "--json", "--sheet", "Tray");
  const [sheet] = JSON.parse(answer) as { rules: { where: string; kind: string; typed: string; now: string }[] }[];
  expect(sheet?.rules).toEqual([
    { where: "D1", kind: "colours cells", typed: "=RETORT.MOISTURE.WET(A1,B1,C1)>0.3", now: expect.stringMatching(/^=\(?IF\(/) as string },
    {
      ...{ where: "wet", kind: "defined name", typed: expect.stringContaining("RETORT.MOISTURE.WET(Tray!A1,Tray!B1,Tray!C1)") as string },
      now: "taken out: these arguments have no form in built-in functions",
    },
  ]);
  expect((await ran("record", files.at("in.xlsx"), "--sheet", "Tray")).answer).toContain(
    "D1 (colours cells)\n  =RETORT.MOISTURE.WET(A1,B1,C1)>0.3\n",
  );
});

test("a workbook without any call is refused as before, and one whose other name merely holds the word", async () => {
  const book = oddBook({
    sheets: tray("", { D1: { formula: "wetter*2", value: 2 } }),
    behind: names('"RETORT.MOISTURE.WET(1)"').replaceAll("wet", "wetter"),
  });
  for (const as of ["values", "plain-cells"])
    expect((await ran("share", files.put("in.xlsx", book), "--as", as, "-o", files.at("out.xlsx"))).code).toBe(1);
});
