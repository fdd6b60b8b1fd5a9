import { execFileSync } from "node:child_process";
import path from "node:path";
import { callLiteral, inTable, type Answered } from "../functions/call";
import { everyPublished } from "./everyPublished";
import { halfLastDigit } from "./halfLastDigit";
import type { Published } from "./Published";

/** The figure of a call's answer that a row is about. */
function figureOf({ cell, at }: Published): Answered | undefined {
  const answer = callLiteral(cell);
  return at !== undefined && Array.isArray(answer) ? inTable(answer, at) : answer;
}

const isInWords = ({ printed }: Published): boolean => Number.isNaN(Number(printed));
const titled = (rows: readonly Published[]): [title: string, row: Published][] =>
  rows.map((row) => {
    const { cell, at, printed, times, kind, source } = row;
    return [`${cell}${at === undefined ? "" : `, ${at[0]},`} gives ${printed}${times === 100 ? " %" : ""} (${kind}: ${source})`, row];
  });

/** "agrees", or our figure beside the printed one and how far apart they may be. */
function besidePrint(ours: number, { printed, within }: Pick<Published, "printed" | "within">): string {
  const allowed = within?.[0] ?? halfLastDigit(printed);
  return Math.abs(ours - Number(printed)) <= allowed ? "agrees" : `ours ${ours}, printed ${printed}, allowed ${Number(allowed.toPrecision(6))} apart`;
}

test.each(titled(everyPublished.filter((row) => !isInWords(row))))("%s", (_title, row) => {
  const figure = figureOf(row);
  expect(figure).toEqual(expect.any(Number));
  expect(besidePrint((figure as number) * (row.times ?? 1), row)).toBe("agrees");
});

test.each(titled(everyPublished.filter(isInWords)))("%s", (_title, row) => {
  expect(figureOf(row)).toEqual(expect.stringContaining(row.printed));
});

const calculations = everyPublished.flatMap((row) => (row.calculation === undefined ? [] : [{ ...row.calculation, row }]));

const printedBy = Object.fromEntries(
  [...new Set(calculations.map(({ script }) => script))].map((script) => [
    script,
    JSON.parse(execFileSync(process.execPath, [path.join(__dirname, "calculations", script)], { encoding: "utf8" })) as Record<string, number>,
  ]),
);

test.each(calculations.map(({ script, figure, row }) => [script, figure, row.printed, row] as const))(
  "%s works out %s as %s",
  (script, figure, printed, { within }) => {
    const worked = printedBy[script]?.[figure];
    expect(worked).toEqual(expect.any(Number));
    expect(Math.abs((worked as number) - Number(printed))).toBeLessThanOrEqual(Math.max(halfLastDigit(printed), within?.[0] ?? 0));
  },
);

test("no script works out a figure that nothing is held against", () => {
  const held = calculations.map(({ script, figure }) => `${script}: ${figure}`);
  const worked = Object.entries(printedBy).flatMap(([script, figures]) => Object.keys(figures).map((figure) => `${script}: ${figure}`));
  expect(worked.filter((one) => !held.includes(one))).toEqual([]);
});

test("every value says in so many words where it comes from, and why where it may stray further than half its last digit", () => {
  for (const { source, within } of everyPublished) {
    expect(source.length).toBeGreaterThan(10);
    if (within !== undefined) expect(within[1].length).toBeGreaterThan(10);
  }
});

test("no row is held twice, but for one that two sources print", () => {
  const rows = everyPublished.map(({ cell, at, printed, kind, source }) => JSON.stringify([cell, at, printed, kind, source]));
  expect(rows.filter((row, index) => rows.indexOf(row) !== index)).toEqual([]);
});

test.each([
  [0.4387, "0.4397", "ours 0.4387, printed 0.4397, allowed 0.00005 apart"],
  [NaN, "0.4397", "ours NaN, printed 0.4397, allowed 0.00005 apart"],
  [0.43968, "0.4397", "agrees"],
])("a figure of %d where %s is printed says: %s", (ours, printed, says) => {
  expect(besidePrint(ours, { printed })).toBe(says);
});
