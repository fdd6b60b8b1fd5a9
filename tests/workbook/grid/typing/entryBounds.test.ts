import { nothingPasted } from "../../../../src/problems/workbook/entryProblems";
import { whyNotTyped } from "../../../../src/workbook/grid/typing/entryBounds";

const ones = (count: number, between: string): string => Array.from({ length: count }, () => "1").join(between);
const nested = (levels: number): string => `=${"SUM(".repeat(levels)}1${")".repeat(levels)}`;
const argumentsOf = (count: number): string => `=SUM(${ones(count, ",")})`;

// The limits of a cell: Excel specifications and limits (Microsoft), from memory; operators and words without a space are this page's own.
test.each([
  ["8,192 characters", `=${"A".repeat(8191)}`, undefined],
  ["8,193 characters", `=${"A".repeat(8192)}`, "this formula has 8193 characters; a cell takes 8192 at most. Write it in several cells."],
  ["64 levels", nested(64), undefined],
  [
    "65 levels",
    nested(65),
    "this formula has 65 levels of brackets within one another; 64 is the most. Work the inner ones out in cells of their own.",
  ],
  ["64 levels and their ends not yet typed", "=SUM(".repeat(1) + "SUM(".repeat(63), undefined],
  ["500 plain brackets", `=${"(".repeat(500)}1${")".repeat(500)}`, undefined],
  [
    "501 plain brackets",
    `=${"(".repeat(501)}1${")".repeat(501)}`,
    "this formula has 501 levels of brackets within one another; 500 is the most. Work the inner ones out in cells of their own.",
  ],
  ["255 arguments", argumentsOf(255), undefined],
  ["256 arguments", argumentsOf(256), "a function in this formula has 256 arguments; it takes 255 at most. Give it a range of cells."],
  ["300 numbers of an array constant", `=SUM({${ones(300, ",")}})`, undefined],
  ["a text of 255", `="${"x".repeat(255)}"`, undefined],
  ["a text of 256", `="${"x".repeat(256)}"`, "a text in this formula has 256 characters; 255 is the most. Put the text into a cell and refer to it."],
  [
    "a text of 256 whose end is not yet typed",
    `="${"x".repeat(256)}`,
    "a text in this formula has 256 characters; 255 is the most. Put the text into a cell and refer to it.",
  ],
  ["a sheet's name of 256", `='${"x".repeat(256)}'!A1`, undefined],
  ["1,000 operators", `=${ones(1001, "+")}`, undefined],
  [
    "1,001 operators",
    `=${ones(1002, "+")}`,
    "this formula has 1001 operators; this page takes 1000 at most. Use SUM over a range, or several cells.",
  ],
  ["operators and brackets in a text", `="${"+(,".repeat(80)}"`, undefined],
  ["32,767 characters", `${"oak ".repeat(8191)}oak`, undefined],
  ["32,768 characters", "oak ".repeat(8192), "this text has 32768 characters; a cell takes 32767 at most. Divide it over several cells."],
  ["a word of 4,000", "x".repeat(4000), undefined],
  ["a word of 4,001", `oak ${"x".repeat(4001)}`, "this text has 4001 characters without a space between; this page takes 4000 at most."],
] as const)("%s", (_what, text, said) => expect(whyNotTyped(text)).toBe(said && `Not entered: ${said} The cell stays as it was.`));

test("what is pasted onto cells is refused whole", () =>
  expect(nothingPasted(whyNotTyped("x".repeat(4001)) ?? "")).toBe(
    "Nothing was pasted. This text has 4001 characters without a space between; this page takes 4000 at most. The cell stays as it was.",
  ));
