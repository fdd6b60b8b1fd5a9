import { readBook } from "../../src/command/book/Book";
import { differsUnchanged, notProvenHere } from "../../src/command/words/refusals";
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(60_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const [AIR, WET] = ["_xldudf_RETORT_AIRLEFT", "_xldudf_RETORT_MOISTURE_WET"];
const INPUTS: Readonly<Record<string, OddCell>> = {
  ...{ A1: 25, B1: 35, C1: 31.5, A2: 25, B2: 36, C2: 30, A3: 25, B3: 37, C3: 33, A4: 24, B4: 34, C4: 30.5 },
  ...{ F1: 25, F2: 25.001, F3: 25.002, G1: 1, G2: 2, G3: 4, D1: "oak", D2: "ash", D3: "oak", D4: "elm" },
};
const held = (formula: string, value: number | string | boolean | null): OddCell => ({ formula, value });

/** What a cell of the copy as values holds, or the refusal. */
async function shared(cells: Readonly<Record<string, OddCell>>, calculation = ""): Promise<Record<string, unknown> | string> {
  const file = files.put("run.xlsx", oddBook({ sheets: [{ name: "T", cells: { ...INPUTS, ...cells } }], calculation }));
  const { code, notes } = await ran("share", file, "--as", "values", "--recalculate", "--sheet", "T", "-o", files.at("out.xlsx"), "--overwrite");
  if (code !== 0) return notes.trim().replace(/^retort: /, "");
  const { sheets } = await readBook(files.read("out.xlsx"));
  return Object.fromEntries((sheets[0]?.reading.rows ?? []).flat().map(({ cell, value }) => [cell, value]));
}

// As LibreOffice and Gnumeric calculate the built-in functions of them.
const RIGHT: readonly (readonly [string, number | string])[] = [
  [`IF(SUMPRODUCT(N(${WET}(A1:A4,B1:B4,C1:C4)>0.34))=3,"three moist","not three")`, "three moist"],
  [`${AIR}(SUMPRODUCT(N(A1:A4>24)))`, Math.exp(-3)],
  [`IF(SLOPE(F1:F3,G1:G3)>-1E-3,"steady ","still losing ")&ROUND(${AIR}(2),2)`, "steady 0.14"],
  [`IF(SLOPE(F1:F3,G1:G3)>-1E-3,${AIR}(2),${AIR}(3))`, Math.exp(-2)],
];

test("a length of 15 figures keeps its value, and is refused without one, since some programs write 17 figures", async () => {
  expect(await shared({ H1: held(`LEN(${AIR}(2))`, 17) })).toMatchObject({ H1: 17 });
  expect(await shared({ H1: held(`LEN(${AIR}(2))`, null) })).toBe(notProvenHere(["T!H1"], false));
});

test.each(RIGHT)("%s is calculated as elsewhere, whether the file holds a value or not", async (formula, value) => {
  for (const before of [value, null]) {
    const found = await shared({ H1: held(formula, before) });
    expect(found).toMatchObject({ H1: typeof value === "number" ? (expect.closeTo(value, 12) as number) : value });
  }
});

// Each is misread by the engine, or not known to be read as elsewhere.
const UNPROVEN: readonly (readonly [formula: string, right: number | string])[] = [
  [`${AIR}(SUMPRODUCT(N(OFFSET(A1,ROW(A1:A4)-1,0)))/33)`, Math.exp(-3)],
  [`${AIR}(TRUNC(-2.5)+TREND(F1:F3)*0+4)`, Math.exp(-2)],
  [`LOOKUP(2.5,G1:G3)+${AIR}(2)*0`, 2],
  [`IF(MODE(A1:A4)=25,${AIR}(2),${AIR}(3))`, Math.exp(-2)],
];

describe("a formula that the engine is not known to answer as every spreadsheet", () => {
  test.each(UNPROVEN)("%s is refused where the file holds no value, or says that it may be from before", async (formula, right) => {
    expect(await shared({ H1: held(formula, null) })).toBe(notProvenHere(["T!H1"], false));
    expect(await shared({ H1: held(formula, right) }, '<calcPr fullCalcOnLoad="1"/>')).toBe(notProvenHere(["T!H1"], true));
  });

  test("is refused once something changed that it is calculated from", async () => {
    const cells = { E1: held(`${AIR}(2)`, 0.5), H1: held("MODE(E1,2,2)", 2) };
    expect(await shared(cells)).toBe(notProvenHere(["T!H1"], true));
  });

  test("keeps its value where the engine gives the same, and is refused where it gives another", async () => {
    const formula = `MODE(A1:A4)*${AIR}(2)`;
    expect(await shared({ H1: held(formula, 25 * Math.exp(-2)) })).toMatchObject({ H1: expect.closeTo(25 * Math.exp(-2), 12) as number });
    expect(await shared({ H1: held(formula, 3) })).toBe(differsUnchanged(["T!H1"]));
  });
});

test("the remedy is said", () => {
  expect(notProvenHere(["T!H1"], false)).toBe(
    "T!H1 holds a cell formula of which it is not known that every spreadsheet gives what is calculated here, and the file holds no value. Let a spreadsheet calculate it first: leave out --recalculate after saving the workbook in the spreadsheet with the add-in.",
  );
});

test("ordinary formulas of a book that was never calculated are calculated", async () => {
  const cells = {
    H1: held(`${WET}(A1,B1,C1)`, null),
    H2: held('IF(H1>0.3,"moist","dry")', null),
    H3: held('"Moisture "&TEXT(H1*100,"0.0")&" %"', null),
    H4: held("ROUND(AVERAGE(A1:A4),1)", null),
    H5: held('IFERROR(VLOOKUP("ash",D1:D4,1,FALSE),"none")', null),
    H6: held('COUNTIF(D1:D4,"oak")', null),
    H7: held("STDEV(F1:F3)", null),
    H8: held('"moist: "&H1', null),
    H9: held("SLOPE(F1:F3,G1:G3)", null),
    H10: held("TINV(0.05,2)*H7/SQRT(3)", null),
    H11: held("_xlfn.LET(_xlpm.m,H1,_xlpm.m*100)", null),
    H12: held("MAX(F1:F3)-MIN(F1:F3)", null),
    H13: held('IF(ISNUMBER(H9),IF(H9<0.01,"steady","rising"),"")', null),
    H14: held(`SUM(${WET}(A:A,B:B,C:C))*0+2`, null),
    H15: held('IFERROR(INDEX(_xldudf_RETORT_BURN_PRODUCTS("CaCO3",0.2),2,2),"none")', null),
  };
  const found = await shared(cells);
  expect(found).toMatchObject({
    H1: 0.35,
    H2: "moist",
    H3: "Moisture 35.0 %",
    H4: 24.8,
    H5: "ash",
    H6: 2,
    H8: "moist: 0.35",
    H11: 35,
    H13: "steady",
  });
});

describe("one cell explained of a book in which others cannot be calculated here", () => {
  const cells = {
    ...INPUTS,
    H1: held(`${WET}(A1,B1,C1)`, null),
    H2: held("MODE(A1:A4)", null),
    H3: held("MODE(A1:A4)", 3),
    H4: held("_xldudf_RETORT_NOSUCH(1)", null),
    H5: held(`${AIR}(H2)`, null),
  };
  const explained = async (cell: string): Promise<{ readonly code: number; readonly notes: string }> =>
    ran("explain", files.put("run.xlsx", oddBook({ sheets: [{ name: "T", cells }] })), cell, "--recalculate");

  test("is explained where it is not calculated from those", async () => {
    expect(await explained("H1")).toMatchObject({ code: 0, notes: "", answer: expect.stringContaining("0.35") as string });
  });

  test("is refused by their names where it is", async () => {
    expect(await explained("H5")).toMatchObject({ code: 1, notes: `retort: ${notProvenHere(["T!H2"], false)}\n` });
    expect(await explained("H3")).toMatchObject({ code: 1, notes: `retort: ${differsUnchanged(["T!H3"])}\n` });
  });
});
