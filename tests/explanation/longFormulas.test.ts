import { explainCell } from "../../src/explanation/explainCell";
import type { CellExplanation } from "../../src/explanation/CellExplanation";
import { findCalls } from "../../src/sharing/findCalls";
import { inBuiltInFunctions } from "../sharing/inBuiltInFunctions";
import { whatIsWrong } from "../../src/workbench/whatIsWrong";
import { SheetInMemory } from "./SheetInMemory";

const explained = (formula: string, value: number): Promise<CellExplanation> =>
  explainCell(new SheetInMemory({ Run: { A1: 1, B9: { formula, value } } }), { sheet: "Run", cell: "B9" });

const times = (count: number, text: string): string => text.repeat(count);
const sum = (count: number, term: string): string => Array.from({ length: count }, () => term).join("+");
const WATER = 'RETORT.MOLARMASS("H2O")';

// A fifth of a second at the most on a quiet machine; what was mended took the square of the length, or the whole stack.
const SECONDS = 3;

async function inTime<T>(work: () => Promise<T> | T): Promise<T> {
  const start = performance.now();
  const done = await work();
  expect((performance.now() - start) / 1000).toBeLessThan(SECONDS);
  return done;
}

describe("a long cell formula is explained, or refused in words", () => {
  test("a sum of 3,000 numbers and a call is worked out and agrees with the cell", async () => {
    const { calls, notes } = await inTime(() => explained(`=${sum(3000, "1")}+${WATER}`, 3018.015));
    expect([calls.map(({ result }) => result), notes]).toEqual([["18.015 g/mol"], []]);
  });

  test("a sum of 3,000 cells inside an argument is worked out", async () => {
    const { calls } = await inTime(() => explained(`=RETORT.MOISTURE.CONVERT((${sum(3000, "A1")})/15000,"wet","dry")`, 0.25));
    expect(calls[0]?.result).toBe("0.25 (25 %)");
  });

  test("of 3,000 calls the first 50 are explained, and the value is that of all", async () => {
    const { calls, notes } = await inTime(() => explained(`=${sum(3000, WATER)}`, 54045.00000000169));
    expect(calls).toHaveLength(50);
    expect(notes).toEqual(["The first 50 of 3000 Retort calls are explained here. Put the others into cells of their own to see them explained."]);
  });

  test("200 brackets and 200 calls inside one another", async () => {
    expect((await inTime(() => explained(`=${times(200, "(")}${WATER}${times(200, ")")}`, 18.015))).notes).toEqual([]);
    const nested = `=${times(200, "RETORT.MOISTURE.CONVERT(")}0.1${times(200, ',"wet","wet")')}`;
    const { calls } = await inTime(() => explained(nested, 0.1));
    expect(calls[0]?.result).toBe("0.1 (10 %)");
  });

  test("3,000 signs in a row are too deep, and the call among them is explained all the same", async () => {
    const { calls, notes } = await inTime(() => explained(`=${times(3000, "-")}${WATER}`, 18.015));
    expect(calls.map(({ result }) => result)).toEqual(["18.015 g/mol"]);
    expect(notes).toEqual([
      "This formula is nested too deeply to be worked out here, so its value is not compared with the cell. Spread it over several cells.",
    ]);
  });

  test.each([
    ["spaces", `=RETORT.MOLARMASS("${times(8000, " ")}")`, "formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
    ["too many arguments", `=RETORT.MOLARMASS(${times(4000, "1,")}1)`, "RETORT.MOLARMASS: 4001 arguments given; it takes 1 at most."],
  ])("8,000 characters of %s", async (_title, formula, message) => {
    const { calls } = await inTime(() => explained(formula, 0));
    expect(calls[0]?.problem?.message).toContain(message);
  });

  test("of a thousand names that are not known five are spelt out, a long one shortened", async () => {
    const unknown = Array.from({ length: 1000 }, (_, index) => `RETORT.MOLARMAS${index}(1)`).join("+");
    const { notes } = await inTime(() => explained(`=${unknown}`, 0));
    expect(notes).toHaveLength(6);
    expect(notes[5]).toBe("995 more names of this formula are not known either.");
    const [long] = (await inTime(() => explained(`=RETORT.${times(900, "MOISTURE")}(1)`, 0))).notes;
    expect(long).toBe("RETORT.MOISTUREMOIST…TUREMOISTUREMOISTURE: there is no such function in this version. Look it up in the Functions tab.");
  });
});

describe("the readers below it", () => {
  test("calls inside one another are found in one pass, closed or not", async () => {
    expect(await inTime(() => findCalls(`=${times(3000, "RETORT.X(")}1${times(3000, ")")}`).length)).toBe(3000);
    expect(await inTime(() => findCalls(`=${times(3000, "RETORT.X(")}1`).length)).toBe(0);
  });

  test("a broken link is looked for at the name alone, however many quotation marks stand before it", async () => {
    const [call] = await inTime(() => findCalls(`=${times(2000, "''")}&'C:/x.xla'!RETORT.X(1)`));
    expect(call?.start).toBe(4002);
  });

  test("what would be longer than a cell formula may be is not written out in built-in functions", async () => {
    const nested = (depth: number): string => `=${times(depth, "RETORT.MOISTURE.CONVERT(")}A1${times(depth, ',"wet","dry")')}`;
    expect(await inTime(() => inBuiltInFunctions(nested(200)))).toBeUndefined();
    expect(inBuiltInFunctions(nested(2))).toMatch(/^=IF\(/);
  });

  test("the local workbook sees whether a long sum needs its own cell", async () => {
    const cell = { cell: "B9", value: 1, error: "", message: "", shown: "1", format: "", spill: "" };
    expect(await inTime(() => whatIsWrong({ ...cell, formula: `=${sum(3000, "A1")}+B9` }, "Run"))).toMatch(/refers to its own cell/);
    expect(await inTime(() => whatIsWrong({ ...cell, formula: `=${sum(3000, "A1")}+ROW(B9)` }, "Run"))).toBe("");
  });
});
