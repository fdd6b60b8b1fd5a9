// What a refusal tells to give has to be an option of the command that refuses, and no option that was given already.
import { oddBook, type OddCell } from "../sharing/odd/oddBook";
import { CommandFolder, ran } from "./inFolder";

jest.setTimeout(120_000);

let files: CommandFolder;
beforeEach(() => (files = new CommandFolder()));
afterEach(() => files.remove());

const WET = "_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)";
const book = (cells: Readonly<Record<string, OddCell>>, calculation = "", before = ""): Uint8Array<ArrayBuffer> =>
  oddBook({
    sheets: [
      { name: "T", cells: { A1: 25, B1: 35, C1: 31.5, D1: { formula: WET, value: 0.35 }, ...cells } },
      { name: "S", cells: { A1: 20 } },
    ],
    calculation,
    before,
  });
const saved = (formula: string, value: number | string | null): OddCell => ({ formula, value });
const inError = (code: string): OddCell => ({ xml: `<c r="D1" t="e"><f>${WET}</f><v>${code}</v></c>` });

const BOOKS: Readonly<Record<string, Uint8Array<ArrayBuffer>>> = {
  "a value from before": book({ D1: saved(WET, 0.99) }),
  "a formula never calculated": book({ D1: saved(WET, null) }),
  "a file to be calculated": book({}, '<calcPr fullCalcOnLoad="1"/>'),
  "a value on its way": book({ D1: inError("#BUSY!") }),
  "functions not loaded": book({ D1: inError("#NAME?") }),
  "a call in error": book({ B1: 25, D1: inError("#VALUE!") }),
  "a circle": book({ E1: saved("F1+D1", 1), F1: saved("E1", 1) }),
  "a circle through a call": book({ A1: saved("D1*0+25", 25) }),
  "what differs here though nothing changed": book({ E1: saved('TEXT(A1,"dd.mm.yyyy")', "24.01.2031") }),
  "what is from before by itself": book({ E1: saved("IF(A1=25,2,3)", 7) }),
  "what cannot be calculated here and changed": book({ E1: saved("SUM('T:S'!A1)", 7), D1: saved(WET, 0.9), F1: saved("SUM('T:S'!D1)", 3) }),
  "what cannot be calculated here and was not": book({ E1: saved("SUM('T:S'!A1)", null) }),
  "a call beside a function that is not known": book({ E1: saved(`NOSUCH(A1)+${WET}`, 7.25) }),
  "a function that is not known": book({ E1: saved("NOSUCH(A1)", 7) }),
  "days from 1904": book({ E1: saved("A1+1", 1488) }, "", '<workbookPr date1904="1"/>'),
  "no call": book({ D1: saved("A1*2", 50) }),
};
const COMMANDS: readonly (readonly [command: string, words: readonly string[]])[] = [
  ["share", ["--as", "values"]],
  ["share", ["--as", "plain-cells"]],
  ["record", []],
  ["explain", ["D1"]],
  ["report", []],
];

const optionsNamed = (text: string): string[] => [...new Set(text.match(/--[a-z][a-z-]+/g) ?? [])];

async function refusals(command: string, more: readonly string[], flags: readonly string[]): Promise<[name: string, said: string][]> {
  const said: [string, string][] = [];
  for (const [name, content] of Object.entries(BOOKS)) {
    const output = command === "explain" ? [] : ["-o", files.at(command === "report" ? "out.html" : "out.xlsx"), "--overwrite"];
    const { code, notes } = await ran(command, files.put("in.xlsx", content), ...more, ...output, ...flags);
    expect([name, [0, 1].includes(code)]).toEqual([name, true]);
    if (code === 1) said.push([name, notes]);
  }
  return said;
}

describe.each(COMMANDS)("retort %s %p", (command, words) => {
  const given: readonly (readonly string[])[] = [[], ["--recalculate"], ...(command === "report" ? [["--no-recalculate"]] : [])];
  test.each(given.map((flags) => [flags] as const))("with %p names options that it has, and asks for none that was given", async (flags) => {
    const known = optionsNamed((await ran(command, "--help")).answer);
    const found = await refusals(command, words, flags);
    const wrong = found.flatMap(([name, said]) => [
      ...optionsNamed(said).filter((option) => !known.includes(option)).map((option) => `${name}: has no ${option}`), // prettier-ignore
      ...flags.filter((flag) => said.includes(`give ${flag}`)).map((flag) => `${name}: ${flag} was given`), // prettier-ignore
    ]);
    expect(wrong).toEqual([]);
    if (command !== "explain") expect(found.length).toBeGreaterThan(3);
  });
});

const REPORT = ["report", "-o"] as const;

test("a report calculates unless it is told to take what the file holds, which then has to be what the formulas give", async () => {
  const of = async (name: string, ...flags: readonly string[]): Promise<string> => {
    const words = [REPORT[0], files.put("in.xlsx", BOOKS[name] ?? ""), REPORT[1], files.at("r.html"), "--overwrite", ...flags];
    const { code, notes } = await ran(...words);
    return code === 0 ? Buffer.from(files.read("r.html")).toString() : notes;
  };
  for (const flags of [[], ["--recalculate"]]) {
    expect(await of("a value from before", ...flags)).toMatch(/0\.35\b/);
    expect(await of("a formula never calculated", ...flags)).toMatch(/0\.35\b/);
    expect(await of("what differs here though nothing changed", ...flags)).toContain(
      "T!E1 comes out otherwise here than saved, though nothing changed that it is calculated from. Give --no-recalculate after saving the workbook in the spreadsheet with the add-in.",
    );
  }
  expect(await of("what is from before by itself", "--no-recalculate")).toContain("T!E1");
  expect(await of("what is from before by itself")).toMatch(/<!doctype html>/i);
  expect(await of("what differs here though nothing changed", "--no-recalculate")).toMatch(/<!doctype html>/i);
  expect(await of("a call beside a function that is not known", "--no-recalculate")).toMatch(/>7\.25</);
  expect(await of("a value from before", "--no-recalculate")).toContain("The file holds another value in T!D1 than the cell formula gives");
  expect(await of("a formula never calculated", "--no-recalculate")).toMatch(/No value was saved .* or give --recalculate\.\n$/);
});
