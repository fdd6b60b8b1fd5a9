import { readBook } from "../../src/command/book/Book";
import { differsUnchanged, keptThoughChanged, neverCalculatedHere } from "../../src/command/words/refusals";
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const AIR = "_xldudf_RETORT_AIRLEFT";
const names = (text: Readonly<Record<string, string>>, ofFirst: Readonly<Record<string, string>> = {}): string =>
  `<definedNames>${Object.entries(text)
    .map(([name, refersTo]) => `<definedName name="${name}">${refersTo}</definedName>`)
    .join("")}${Object.entries(ofFirst)
    .map(([name, refersTo]) => `<definedName name="${name}" localSheetId="0">${refersTo}</definedName>`)
    .join("")}<definedName name="shadow" localSheetId="1">S2!$A$1</definedName></definedNames>`;

const book = (cells: Readonly<Record<string, OddCell>>, calculation = ""): Uint8Array<ArrayBuffer> =>
  oddBook({
    sheets: [
      { name: "T", cells: { A1: 25, A2: 30, A3: 35, B1: 35, B2: 36, B3: 37, ...cells } },
      { name: "S2", cells: { A1: 20 } },
      { name: "S3", cells: { A1: 24 } },
      { name: "Odd ! name", cells: { A1: 22 } },
    ],
    behind: names({ shadow: "T!$A$2", total: "T!$A$1+T!$A$2", airleft: `_xlfn.LAMBDA(_xlpm.v,${AIR}(_xlpm.v))` }, { shadow: "T!$A$3" }),
    calculation,
  });

const saved = (formula: string, value: number | string | null): OddCell => ({ formula, value });

/** What the copy as values holds, or the refusal. */
async function shared(cells: Readonly<Record<string, OddCell>>, calculation = ""): Promise<Record<string, unknown> | string> {
  const file = files.put("run.xlsx", book({ D1: saved(`${AIR}(2)`, Math.exp(-2)), ...cells }, calculation));
  const { code, notes } = await ran("share", file, "--as", "values", "--recalculate", "--sheet", "T", "-o", files.at("out.xlsx"), "--overwrite");
  if (code !== 0) return notes.trim().replace(/^retort: /, "");
  const { sheets } = await readBook(files.read("out.xlsx"));
  return Object.fromEntries((sheets[0]?.reading.rows ?? []).flat().map(({ cell, value }) => [cell, value]));
}

// Saved as a spreadsheet has them, and misread by the engine here.
const RIGHT: Readonly<Record<string, OddCell>> = {
  E1: saved('IF(shadow&gt;32,"in order","look")'.replace("&gt;", ">"), "in order"),
  E2: saved("SUM('S2:S3'!A1)", 44),
  E3: saved("IFERROR(SUM('S2:S3'!A1),0)", 44),
  E4: saved("COUNT('Odd ! name'!A1)", 1),
  E5: saved("IFERROR('Odd ! name'!A1*2,-1)", 44),
  E6: saved("IFERROR(SUM(A1:B2 B1:B3),0)", 71),
  E7: saved("COUNT((A1:A2,B1))", 3),
  E8: saved("IFERROR(SUM(1:1),0)*0+IFERROR(NOSUCH(1),5)", 7),
  E9: saved("E2*2", 88),
  E10: saved(`${AIR}(shadow/10)`, Math.exp(-3.5)),
};

test("what cannot be calculated rightly here keeps the value of the file where nothing changed", async () => {
  const held = (await shared(RIGHT)) as Record<string, unknown>;
  expect(Object.fromEntries(Object.keys(RIGHT).map((cell) => [cell, held[cell]]))).toEqual(
    Object.fromEntries(Object.entries(RIGHT).map(([cell, content]) => [cell, (content as { value: unknown }).value])),
  );
});

test.each<[string, string]>([
  ["IFERROR(SUM('S2:S3'!D1),0)+D1*shadow", "T!E1"],
  ["SUM(D1:D2,(A1,B1))", "T!E1"],
  ["IFERROR(NOSUCH(D1),5)", "T!E1"],
  ['IFERROR(INDIRECT("D1")+shadow,5)', "T!E1"],
  ["RAND()+shadow", "T!E1"],
])("%s is refused once anything changed that it is calculated from", async (formula, cell) => {
  expect(await shared({ D1: saved(`${AIR}(2)`, 0.5), E1: saved(formula, 1) })).toBe(keptThoughChanged([cell]));
});

test("and where the file holds no value, or says that its values are from before", async () => {
  expect(await shared({ E1: saved("SUM('S2:S3'!A1)", null), E2: saved("shadow", null) })).toBe(neverCalculatedHere(["T!E1", "T!E2"]));
  expect(await shared({ E1: saved("SUM('S2:S3'!A1)", 44) }, '<calcPr fullCalcOnLoad="1"/>')).toBe(keptThoughChanged(["T!E1"]));
  expect(await shared({ E1: saved("A1*2", 44) }, '<calcPr fullCalcOnLoad="1"/>')).toMatchObject({ E1: 50 });
});

test("a value that differs here though nothing changed is refused and not written over", async () => {
  // A day in words and what is between two values are written and looked for otherwise in one program than in another.
  const cells = { E1: saved('TEXT(A1,"dd.mm.yyyy")', "24.01.2031"), E2: saved("LOOKUP(27,A1:A3)", 30) };
  expect(await shared(cells)).toBe(differsUnchanged(["T!E1", "T!E2"]));
});

test("but what every spreadsheet works out alike shows by itself that it is from before, and is put right", async () => {
  const cells = { E1: saved("A1*2", 51), E2: saved('IF(A1>20,"in order","look")', "look"), E3: saved("E1+1", 52) };
  expect(await shared(cells)).toMatchObject({ E1: 50, E2: "in order", E3: 51 });
});

test("what changed for a reason is calculated", async () => {
  const cells = {
    D1: saved(`${AIR}(2)`, 0.5),
    E1: saved("D1*2", 1),
    E2: saved("total*2", 110),
    E3: saved("0.1+0.2-0.3", 0),
    E4: saved("SUM(D:D)", 0.5),
    E5: saved("airleft(2)", null),
  };
  expect(await shared(cells)).toMatchObject({ D1: Math.exp(-2), E1: 2 * Math.exp(-2), E2: 110, E3: 0, E4: Math.exp(-2), E5: Math.exp(-2) });
});

test("a sheet name that no spreadsheet gives is none that recalculating could help", async () => {
  const file = files.put(
    "run.xlsx",
    oddBook({ sheets: [{ name: "It's (a) [b]", cells: { A1: 2, D1: saved(`${AIR}(A1)`, null), D2: saved("'It''s (a) [b]'!A1", null) } }] }),
  );
  const { code, notes } = await ran("share", file, "--as", "plain-cells", "--recalculate", "-o", files.at("out.xlsx"));
  expect({ code, notes }).toEqual({ code: 1, notes: `retort: ${neverCalculatedHere(["'It''s (a) [b]'!D2"])}\n` });
});

test("a sheet whose name no added sheet could have is shared all the same", async () => {
  const cells = { A1: 2, D1: saved(`${AIR}(A1)`, null), D2: saved("_xldudf_RETORT_MOLARMASS(A9)", null), A9: "CaCO3" };
  const file = files.put("run.xlsx", oddBook({ sheets: [{ name: "It's (a) [b]", cells }] }));
  expect((await ran("share", file, "--as", "plain-cells", "--recalculate", "-o", files.at("out.xlsx"))).code).toBe(0);
  const { sheets } = await readBook(files.read("out.xlsx"));
  expect(sheets.map(({ name }) => name)).toEqual(["It's (a) [b]", "It's (a) (b) record", "It's (a) (b) changes"]);
});
