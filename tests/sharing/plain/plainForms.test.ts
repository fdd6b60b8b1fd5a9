import { CellProblem, type Answer } from "../../../src/cells/CellProblem";
import { callCellFunction } from "../../../src/cells/callCellFunction";
import { everyFunction } from "../../../src/functions/catalogue";
import { refusedInCells } from "../../../src/inputs/refusedInCells";
import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import { cellAt } from "../../../src/workbook/cellArea";
import type { CellContent } from "../../../src/workbook/Workbook";
import { functionNamed } from "../../functions/call";
import { FIRST_SHEET, openHeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { plainCases, type PlainCase } from "../../spreadsheets/plainCases";
import { isSame } from "./liveAndPlain";

jest.setTimeout(60_000);

// A sample for every run of the tests; `npm run check:spreadsheets` has all of them calculated by two other spreadsheets.
const EVERY = 29;
const ROWS = 190;

const isOneCell = (value: unknown): value is CellContent => value === null || typeof value !== "object";
const simple = plainCases().filter(
  ({ name, raw }) => functionNamed(name).gives === "value" && functionNamed(name).inCells !== undefined && raw.every(isOneCell),
);
const sample = simple.filter((_, index) => index % EVERY === 0).slice(0, ROWS);

const answerTo = ({ name, raw }: PlainCase): Answer => {
  const answer = callCellFunction(functionNamed(name), raw);
  return (Array.isArray(answer) ? answer[0]?.[0] : answer) as Answer;
};

test("where a function refuses, its plain form shows an error and never a number; where it answers, the same answer", async () => {
  const open = await openHeadlessWorkbook();
  for (const [row, { name, raw }] of sample.entries()) {
    const references = raw.map((_, column) => cellAt(row, column));
    for (const [column, value] of raw.entries())
      if (value !== null) await open.type(FIRST_SHEET, cellAt(row, column), typeof value === "string" ? `'${value}` : (value as CellContent));
    const cell = cellAt(row, 12);
    const place = { sheet: FIRST_SHEET, cell, area: cell, nameOf: () => undefined, tableOf: () => undefined, spillOf: () => undefined };
    const plain = plainFormula(`=RETORT.${name}(${references.join(",")})`, place);
    if (plain.kind === "formula") await open.type(FIRST_SHEET, cell, plain.formula);
  }
  await open.settled();
  const shown = (await open.workbook.read(FIRST_SHEET, `M1:M${sample.length}`)).rows.map(([cell]) => cell?.value ?? null);
  open.close();
  const ours = sample.map((one) => answerTo(one));
  const different = sample.flatMap((one, row) => {
    const [answer, other] = [ours[row], shown[row] ?? null];
    const agrees = answer instanceof CellProblem ? typeof other === "string" && other.startsWith("#") : isSame(answer ?? null, other);
    return agrees ? [] : [{ ...one, ours: answer instanceof CellProblem ? answer.message : answer, other }];
  });
  expect(different).toEqual([]);
  expect(ours.filter((answer) => answer instanceof CellProblem).length).toBeGreaterThan(80);
  expect(ours.filter((answer) => !(answer instanceof CellProblem)).length).toBeGreaterThan(20);
});

test("every input of a function with a plain form has a guard in cells, or can only be typed", () => {
  const without = everyFunction
    .filter(({ inCells }) => inCells !== undefined)
    .flatMap(({ name, inputs }) =>
      Object.entries(inputs).flatMap(([input, one]) =>
        one.shape === "cell" && refusedInCells(one, "A1") === undefined ? [`${name}: ${input}`] : [],
      ),
    );
  expect(without).toEqual([]);
});

test("every function has a plain form or says why there is none", () => {
  const without = everyFunction.filter(({ inCells, inManyCells }) => inCells === undefined && inManyCells === undefined);
  expect(without.map(({ name }) => name)).toEqual(["DRYING.END", "DRYING.FIT", "COMPARE.GROUPS"]);
  expect(everyFunction.filter(({ fixedBecause }) => fixedBecause !== undefined)).toEqual(without);
});
