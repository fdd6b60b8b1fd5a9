import { readBook } from "../../src/command/book/Book";
import type { Calculated } from "../../src/command/book/recalculate";
import { recalculatedBook } from "../../src/command/book/recalculatedBook";
import {
  halfFilled,
  keptThoughChanged,
  misreadHere,
  neverCalculated,
  notLoaded,
  notWhatFormulasGive,
  onTheirWay,
} from "../../src/command/words/refusals";
import { oddBook, type OddCell, type OddSheet } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(120_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const CALL = "_xldudf_RETORT_MOISTURE_WET(B1,B2,B3)";
type Saved = Extract<OddCell, { readonly formula: string }>["value"];
const saved = (formula: string, value: Saved): OddCell => ({ formula, value });
const filling = (cell: string, formula: string, value: number | string, area: string, spills = false): OddCell => ({
  xml: `<c r="${cell}"${typeof value === "string" ? ' t="str"' : ""}${spills ? ' cm="1"' : ""}><f t="array" ref="${area}">${formula}</f><v>${value}</v></c>`,
});
// 25 g vessel, 35 g moist, 31.5 g dry: 3.5/10 = 0.35, worked by hand; 90 g moist: 58.5/65 = 0.9.
const weighed = (moist: number, value: Saved = 0.35): Record<string, OddCell> => ({ B1: 25, B2: moist, B3: 31.5, B4: saved(CALL, value) });

const put = (sheets: readonly OddSheet[], further: Partial<Parameters<typeof oddBook>[0]> = {}): string =>
  files.put("run.xlsx", oddBook({ sheets, ...further }));

const said = async (...words: readonly string[]): Promise<string> => {
  const { code, notes } = await ran(...words);
  return code === 0 ? "done" : notes.trim().split("\n").at(-1)?.replace(/^retort: /, "") ?? ""; // prettier-ignore
};
const share = (book: string, ...more: readonly string[]): Promise<string> =>
  said("share", book, "--as", "values", "-o", files.at("out.xlsx"), "--overwrite", ...more);

async function valuesIn(file: string): Promise<Record<string, unknown>> {
  const { sheets } = await readBook(files.read(file));
  return Object.fromEntries((sheets[0]?.reading.rows ?? []).flat().map(({ cell, value }) => [cell, value]));
}

describe("a value from before on a sheet that is not shared", () => {
  const OWN = { D1: saved("_xldudf_RETORT_AIRLEFT(2)", Math.exp(-2)) };
  const reads: readonly [string, string][] = [
    ["a cell", "Run!B4*100"],
    ["a verdict", 'IF(Run!B4>0.35,"too wet","in order")'],
    ["a name", "tin*100"],
    ["INDIRECT", 'INDIRECT("Run!B4")*100'],
    ["several sheets", "SUM('Run:Last'!B4)*100"],
    ["several sheets without quotation marks", "SUM(Run:Last!B4)*100"],
    ["a cell that reads it", "Between!A1"],
  ];
  const sheets = (formula: string, run: Saved = 0.35, moist = 90, sum: Saved = 35): OddSheet[] => [
    { name: "Sum", cells: { A1: saved(formula, sum), ...OWN } },
    { name: "Run", cells: { ...weighed(moist, run), Z1: saved("1+1", 3) } },
    { name: "Last", cells: {} },
    { name: "Between", cells: { A1: saved("Run!B4*100", 35) } },
  ];
  const names = '<definedNames><definedName name="tin">Run!$B$4</definedName></definedNames>';

  test.each(reads)("that is read through %s", async (_, formula) => {
    const book = put(sheets(formula, 0.35, 90, formula.startsWith("IF(") ? "in order" : 35), { behind: names });
    const says = [notWhatFormulasGive(["Run!B4"]), notWhatFormulasGive(["Run!Z1", "Run!B4"])];
    expect(says).toContain(await share(book, "--sheet", "Sum"));
    expect(says).toContain(await said("record", book, "--sheet", "Sum"));
    expect(says).toContain(await said("explain", book, "A1", "--sheet", "Sum"));
  });

  test("that only a rule for colouring reads", async () => {
    const rule = '<conditionalFormatting sqref="A1:A3"><cfRule type="expression" priority="1"><formula>Run!$B$4&gt;0.35</formula></cfRule></conditionalFormatting>'; // prettier-ignore
    const [sum, ...others] = sheets("1+1");
    const book = put([{ ...(sum as OddSheet), cells: OWN, behind: rule } as OddSheet, ...others]);
    expect(await share(book, "--sheet", "Sum")).toBe(notWhatFormulasGive(["Run!B4"]));
  });

  test("and that nothing shared reads is nobody's business", async () => {
    expect(await share(put(sheets("B9*2+35")), "--sheet", "Sum")).toBe("done");
    expect(await said("explain", put(sheets("B9*2+35")), "A1", "--sheet", "Sum")).toBe("done");
  });

  test("is put right by recalculating", async () => {
    expect(await share(put(sheets("Run!B4*100")), "--sheet", "Sum", "--recalculate")).toBe("done");
    expect(await valuesIn("out.xlsx")).toMatchObject({ A1: 90 });
  });

  test("never calculated, on its way or not loaded counts likewise", async () => {
    const holding = (value: Saved): string => put(sheets('IFERROR(Run!B4*100,"dry")', value, 35, "dry"));
    expect(await share(holding(null), "--sheet", "Sum")).toBe(neverCalculated(["Run!B4"]));
    expect(await share(holding({ error: "#GETTING_DATA" }), "--sheet", "Sum")).toBe(onTheirWay(["Run!B4"], "#GETTING_DATA"));
    expect(await share(holding({ error: "#NAME?" }), "--sheet", "Sum")).toBe(notLoaded(["Run!B4"]));
  });
});

describe("built-in formulas saved with values from before", () => {
  const book = (cells: Record<string, OddCell>, further = {}): string => put([{ name: "T", cells: { ...weighed(35), ...cells } }], further);

  test("before and behind a call of ours are refused by name, and put right", async () => {
    const cells = { A1: 24, B2: saved("A1+10", 35), F1: saved('IF(B4>0.36,"too wet","in order")', "too wet") };
    expect(await share(book(cells))).toBe(notWhatFormulasGive(["T!F1", "T!B2"]));
    expect(await share(book(cells), "--recalculate")).toBe("done");
    // 34 g moist: 2.5/9.
    expect(await valuesIn("out.xlsx")).toMatchObject({ B2: 34, B4: 2.5 / 9, F1: "in order" });
  });

  test("are not looked for where the workbook calculates with numbers rounded as shown", async () => {
    expect(await share(book({ F1: saved("B4*100", 34) }, { calculation: '<calcPr fullPrecision="0"/>' }))).toBe("done");
  });

  test("are not looked for where circles go round until they settle, but where there is none", async () => {
    const calculation = '<calcPr iterate="1"/>';
    expect(await share(book({ F1: saved("B4*100", 34), G1: saved("G1*0.5+1", 2) }, { calculation }))).toBe("done");
    expect(await share(book({ F1: saved("B4*100", 34) }, { calculation }))).toBe(notWhatFormulasGive(["T!F1"]));
    expect(await share(book({ F1: saved("B4*100", 35) }, { calculation }))).toBe("done");
  });

  test("are not replaced by what is calculated here otherwise than every spreadsheet does", async () => {
    const before = await readBook(files.read(book({ F1: saved("B4*100", 34) }).replace(/.*[\\/]/, "")));
    const HERE = { from1904: false, asSaved: "leave out --recalculate" } as const;
    const here = (value: number): Calculated => {
      const cells = before.sheets[0]?.reading.rows.flat().map((one) => [one.cell, one.cell === "F1" ? { ...one, value } : one] as const);
      return new Map([["T", new Map(cells)]]);
    };
    expect(recalculatedBook(before, here(35), HERE).sheets[0]?.reading.rows.flat()).toContainEqual(
      expect.objectContaining({ cell: "F1", value: 35 }),
    );
    expect(() => recalculatedBook(before, here(36), HERE)).toThrow(misreadHere(["T!F1"]));
    expect(misreadHere(["T!F1"])).toBe(
      "T!F1 comes out otherwise here than its cell formula gives. Leave out --recalculate after saving the workbook in the spreadsheet with the add-in.",
    );
  });
});

describe("a formula that fills several cells of which only the first was saved", () => {
  const TABLE = "_xldudf_RETORT_PROXIMATE(B1,B2,B3,28,25.2)";
  const kinds: readonly [string, string, boolean][] = [
    ["an array formula", "M1:O6", false],
    ["one that spills", "M1:O6", true],
    ["one that spills, of which one cell is known", "M1", true],
  ];
  test.each(kinds)("%s", async (_, area, spills) => {
    const book = put([{ name: "T", cells: { ...weighed(35), M1: filling("M1", TABLE, "Share", area, spills) } }]);
    expect(await share(book)).toMatch(/^No value was saved in T!N1, T!O1, T!M2, T!N2, T!O2 and 12 more, which the cell formula of T!M1 fills\./);
    for (const as of ["values", "plain-cells"]) {
      expect(await said("share", book, "--as", as, "-o", files.at("out.xlsx"), "--overwrite", "--recalculate")).toBe("done");
      expect(await valuesIn("out.xlsx")).toMatchObject({ M1: "Share", N1: "As received", M2: "Moisture", N2: 0.35 });
    }
  });

  test("of built-in functions too, whether or not it can be told what they give", async () => {
    const cells = { M1: filling("M1", "B1:B2*2", 50, "M1:M2"), N1: filling("N1", "TRANSPOSE(B1:B2)", 25, "N1:O1") };
    const book = put([{ name: "T", cells: { ...weighed(35), ...cells } }]);
    expect(await share(book)).toBe(halfFilled(["T!M2", "T!O1"], ["T!M1", "T!N1"]));
    expect(await share(book, "--recalculate")).toBe("done");
    expect(await valuesIn("out.xlsx")).toMatchObject({ M1: 50, M2: 70, N1: 25, O1: 35 });
  });
});

test("sheets whose names look like cells are recalculated no more than others through which one reference goes", async () => {
  const book = put([
    { name: "Sum", cells: { A1: saved("AVERAGE(Tin1:Tin2!B4)", 0.35), D1: saved("_xldudf_RETORT_AIRLEFT(2)", Math.exp(-2)) } },
    { name: "Tin1", cells: weighed(90) },
    { name: "Tin2", cells: weighed(35) },
  ]);
  expect(await share(book, "--sheet", "Sum", "--recalculate")).toBe(keptThoughChanged(["Sum!A1"]));
});
