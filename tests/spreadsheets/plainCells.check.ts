// What Retort writes out in built-in functions, calculated by an independent spreadsheet and set against the function itself.
import { Workbook } from "exceljs";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";
import { storedFormula } from "../../src/workbench/xlsx/storedFormula";
import { cellAt } from "../../src/workbook/cellArea";
import { argumentCases, CASES, type Given } from "./argumentCases";
import { throughLibreOffice } from "./recalculated";

jest.setTimeout(180_000);

/** The file that comes back gives 15 digits; differences of nearly equal weighings cost a few. */
const WITHIN = 1e-11;
const BLANK_CELL = "$Z$1";

const rewritable = everyFunction.filter(({ inCells }) => inCells !== undefined);
// Cells are given as references and typed into the formula in turn; an argument left out is nothing, or a blank cell.
const FORMS = ["references", "typed"] as const;

const typed = (given: Given): string => {
  if (given === null) return "";
  return typeof given === "string" ? `"${given}"` : String(given).toUpperCase();
};

/** Nothing after the last argument that is given. */
const withoutEnd = (given: readonly Given[]): readonly Given[] => (given.at(-1) === null ? withoutEnd(given.slice(0, -1)) : given);

const answered = new Map<string, unknown>();
beforeAll(async () => {
  const file = new Workbook();
  for (const { name, inputs, inCells } of rewritable) {
    const sheet = file.addWorksheet(name);
    for (const [index, given] of argumentCases(name).entries()) {
      given.forEach((one, column) => void (one !== null && (sheet.getCell(index + 1, column + 1).value = one)));
      const references = withoutEnd(given).map((one, column) =>
        one === null && index % 4 < 2 ? BLANK_CELL : one === null ? "" : cellAt(index, column),
      );
      for (const [form, texts] of [references, given.map(typed)].entries()) {
        const named = Object.fromEntries(Object.keys(inputs).map((input, position) => [input, texts[position] ?? ""]));
        sheet.getCell(index + 1, 11 + form).value = { formula: storedFormula(`=${inCells?.(named)}`) };
      }
    }
  }
  const calculated = await throughLibreOffice(file);
  for (const { name } of rewritable) {
    for (let index = 0; index < CASES; index++)
      for (const form of FORMS.keys()) answered.set(`${name} ${index} ${form}`, calculated.getWorksheet(name)?.getCell(index + 1, 11 + form).result);
  }
});

const own = (name: string, given: readonly Given[]): unknown => {
  const definition = rewritable.find((candidate) => candidate.name === name);
  const answer = definition && callCellFunction(definition, given);
  const [[only]] = (Array.isArray(answer) ? answer : [[answer]]) as [[unknown]];
  if (only instanceof CellProblem) throw new Error(`${name} refuses ${JSON.stringify(given)}: ${only.message}`);
  return only;
};

const agrees = (other: unknown, ours: unknown): boolean =>
  typeof ours === "number" && typeof other === "number" ? Math.abs(other - ours) <= WITHIN * Math.max(Math.abs(ours), WITHIN) : other === ours;

test("there are functions to try", () => {
  expect(rewritable.length).toBeGreaterThan(15);
});

test.each(rewritable.map(({ name }) => name))(`LibreOffice gives what %s gives, on ${CASES} lists of arguments, in cells and typed`, (name) => {
  const differences = argumentCases(name).flatMap((given, index) => {
    const ours = own(name, given);
    return [...FORMS.entries()].flatMap(([form, called]) => {
      const other = answered.get(`${name} ${index} ${form}`);
      return agrees(other, ours) ? [] : [{ given, called, ours, other }];
    });
  });
  expect(differences).toEqual([]);
});
