// What the grid's engine gives for the built-in functions that are believed of it, beside two other spreadsheets: each kind of value at each place.
import { Workbook } from "exceljs";
import { calculatedSheets } from "../../src/command/book/recalculate";
import { PROVEN, type Place } from "../../src/explanation/saved/proven/provenFunctions";
import { cellAt } from "../../src/workbook/cellArea";
import { storedFormula } from "../../src/xlsx/formulas/storedFormula";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(600_000);

const SHEET = "T";
/** Single values of each kind, those of numbers within what every function takes. */
const ONE: Readonly<Record<string, readonly string[]>> = {
  ...{ n: ["A1", "A2", "2", "1E-3", "-1E-3", "-A2", "A1%"], b: ["A4"], t: ["A5", '"oak"'], d: ["A6"], e: ["A7"], w: ["A11"], l: ["A8", "FALSE"] },
  x: ["A9", "A10"],
};
/** Ranges that hold numbers and values of one kind. */
const AMONG: Readonly<Record<string, readonly string[]>> = {
  ...{ n: ["B1:B6"], b: ["C1:C6"], t: ["D1:D6"], e: ["E1:E6"], x: ["F1:F6"], l: ["G1:G6"], d: ["H1:H6"] },
};
const COLUMNS: Readonly<Record<string, readonly (string | number | boolean | null)[]>> = {
  A: [3, -2, 0.25, null, "oak", "3", '=""', true, "=NA()", "=1/0", "a*b"],
  B: [3, 1.5, -2, 7, 0.25, 4],
  C: [3, null, -2, 7, null, 4],
  D: [3, "oak", -2, 7, "ash", 4],
  E: [3, '=""', -2, 7, '=""', 4],
  F: [3, 1, "=NA()", 2, 5, 4],
  G: [3, true, -2, 7, false, 4],
  H: [3, "5", -2, 7, 1, 4],
  O: [1, 2, 4, 5, 7, 8],
};
/** What stands at the other places of a function while one is varied. */
const ORDINARY: Readonly<Record<string, readonly string[]>> = {
  ...{ "NORM.DIST": ["3", "2", "1.5", "TRUE"], NORMDIST: ["3", "2", "1.5", "TRUE"], "NORM.INV": ["0.3", "2", "1.5"], NORMINV: ["0.3", "2", "1.5"] },
  ...{ TINV: ["0.05", "4"], "T.INV.2T": ["0.05", "4"], "T.INV": ["0.9", "4"], COUNTIF: ["B1:B6", '">1"'], MID: ['"oaken"', "2", "2"] },
  ...{ FIND: ['"a"', '"oak"'], SEARCH: ['"A"', '"oak"'], "PERCENTILE.INC": ["B1:B6", "0.3"], PERCENTILE: ["B1:B6", "0.3"], LEFT: ['"oak"', "2"] },
  ...{ QUARTILE: ["B1:B6", "1"], "QUARTILE.INC": ["B1:B6", "1"], LARGE: ["B1:B6", "2"], SMALL: ["B1:B6", "2"], RIGHT: ['"oak"', "2"] },
};
/** Places where a number is a count or a number of decimals: what is no such number is refused by each program in its own way. */
const WHOLE = ["TINV", "T.INV.2T", "T.INV", "LEFT", "RIGHT", "MID"];

const ordinary = (name: string, places: readonly Place[]): readonly string[] =>
  ORDINARY[name] ?? places.map(({ among }, index) => (among === undefined ? "2" : index === 0 ? "B1:B6" : "O1:O6"));

const formulas = [...PROVEN].flatMap(([name, { places }]) => {
  const usual = ordinary(name, places);
  const varied = places.flatMap(({ one, among = "" }, at) => {
    const singles = [...one].flatMap((kind) => (WHOLE.includes(name) && at > 0 ? (kind === "n" ? ["2"] : []) : (ONE[kind] ?? [])));
    const ranges = [...among].flatMap((kind) => AMONG[kind] ?? []);
    return [...singles, ...ranges].map((given) => `${name}(${usual.map((text, place) => (place === at ? given : text)).join(",")})`);
  });
  return [`${name}(${usual.join(",")})`, ...varied];
});
// The clock and chance are no two programs' the same.
const CASES = [...new Set(formulas)].filter((formula) => !/^(?:TODAY|NOW|RAND)\(/.test(formula));
const ROWS = 200;
const placeOf = (index: number): string => cellAt(index % ROWS, 20 + Math.floor(index / ROWS));

function book(): Workbook {
  const file = new Workbook();
  const sheet = file.addWorksheet(SHEET);
  for (const [column, values] of Object.entries(COLUMNS))
    for (const [row, value] of values.entries()) {
      if (value === null) continue;
      sheet.getCell(`${column}${row + 1}`).value = typeof value === "string" && value.startsWith("=") ? { formula: value.slice(1) } : value;
    }
  for (const [index, formula] of CASES.entries()) sheet.getCell(placeOf(index)).value = { formula: storedFormula(`=${formula}`) };
  return file;
}

const isError = (value: unknown): boolean => typeof value === "object" && value !== null && "error" in value;
const ALIKE = 1e-9;

function agree(here: unknown, there: unknown): boolean {
  if (isError(here) || isError(there)) return isError(here) && isError(there);
  if (typeof here === "number" && typeof there === "number") return Math.abs(here - there) <= ALIKE * Math.max(1, Math.abs(here));
  return (here ?? "") === (there ?? "");
}

test("built-in functions that are believed of the grid's engine are answered alike by two other spreadsheets", async () => {
  const content = new Uint8Array((await book().xlsx.writeBuffer()) as ArrayBuffer);
  const read = (await calculatedSheets(content)).find(({ sheet }) => sheet === SHEET)?.rows.flat() ?? [];
  const here = new Map(read.map(({ cell, value, error }) => [cell, error === "" ? value : { error }]));
  const differing: string[] = [];
  for (const program of PROGRAMS) {
    const there = (await recalculatedBy(program, content)).getWorksheet(SHEET);
    for (const [index, formula] of CASES.entries()) {
      const cell = placeOf(index);
      const answer: unknown = there?.getCell(cell).result;
      if (!agree(here.get(cell), answer)) differing.push(`${program} ${formula}: ${JSON.stringify(here.get(cell))}, ${JSON.stringify(answer)}`);
    }
  }
  expect(CASES.length).toBeGreaterThan(500);
  expect(differing).toEqual([]);
});
