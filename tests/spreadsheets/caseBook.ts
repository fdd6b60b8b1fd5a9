import { Workbook, type Worksheet } from "exceljs";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import type { CellFunction } from "../../src/functions/cellFunction";
import type { Input } from "../../src/inputs/Input";
import { inQuotes } from "../../src/sharing/plain/call/Argument";
import { plainFormula } from "../../src/sharing/plain/plainFormula";
import type { Surroundings } from "../../src/sharing/plain/reading/Surroundings";
import { WorkingsSheet } from "../../src/sharing/plain/WorkingsSheet";
import { cellAt, rangeOf } from "../../src/workbook/cellArea";
import { storedFormula } from "../../src/xlsx/formulas/storedFormula";
import { functionNamed } from "../functions/call";
import type { PlainCase } from "./plainCases";

/** A call in plain cells beside what the function itself answers. */
export interface Compared {
  readonly call: string;
  readonly form: Form;
  readonly ours: Answer | Answer[][];
  readonly sheet: string;
  readonly row: number;
  /** Columns and rows of the answer, from 1. */
  readonly column: number;
}

const WORKINGS = "Workings";
const ROWS_FOR_A_CASE = 16;
const ANSWER_COLUMN = 40;
const TABLE_COLUMNS = 6;
/** Where the arguments stand: in cells, in the call, or what only the program reads in the call and all else in cells. */
const FORMS = ["in cells", "typed", "formulas typed"] as const;
type Form = (typeof FORMS)[number];

/** True for an argument that stands in the call itself. */
const isTypedIn = (form: Form, input: Input<unknown> | undefined): boolean =>
  form === "typed" || (form === "formulas typed" && input?.shape === "cell" && input.takes?.kind === "text");

/** The third form is one of its own only where some arguments are such and some are not. */
const formsOf = ({ inputs }: CellFunction): readonly Form[] => {
  const typed = Object.values(inputs).filter((input) => isTypedIn("formulas typed", input)).length;
  return typed > 0 && typed < Object.keys(inputs).length ? FORMS : FORMS.slice(0, 2);
};

/** A workbook of cases: their arguments in cells, the plain form over those cells, and the plain form with the arguments typed in. */
export function caseBook(cases: readonly PlainCase[]): {
  readonly file: Workbook;
  readonly compared: readonly Compared[];
  readonly fixed: readonly string[];
} {
  const file = new Workbook();
  const workings = new WorkingsSheet(WORKINGS);
  const [compared, fixed]: [Compared[], string[]] = [[], []];
  const rows = new Map<string, number>();
  for (const { name, raw } of cases) {
    const sheet = file.getWorksheet(name) ?? file.addWorksheet(name);
    const row = rows.get(name) ?? 1;
    rows.set(name, row + ROWS_FOR_A_CASE);
    const answer = callCellFunction(functionNamed(name), raw);
    const ours = Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
    const references = raw.map((value, index) => put(sheet, row, index, value));
    const inputs = Object.values(functionNamed(name).inputs);
    for (const [index, form] of formsOf(functionNamed(name)).entries()) {
      const texts = raw.map((value, place) => (isTypedIn(form, inputs[place]) ? typed(value) : (references[place] as string)));
      const call = `=RETORT.${name}(${texts.join(",")})`;
      const column = ANSWER_COLUMN + index * TABLE_COLUMNS;
      const [down, across] = Array.isArray(ours) ? [ours.length, ours[0]?.length ?? 1] : [1, 1];
      const place = placed(name, row, column, down, across);
      const plain = plainFormula(call, place, {}, workings);
      if (plain.kind === "none") fixed.push(`${call}: ${plain.why}`);
      else {
        const formulas = plain.kind === "cells" ? plain.formulas : [[plain.formula]];
        formulas.forEach((line, y) => line.forEach((formula, x) => (sheet.getCell(row + y, column + x).value = { formula: storedFormula(formula) })));
        compared.push({ call: `${call} ${JSON.stringify(raw)}`, form, ours, sheet: name, row, column });
      }
    }
  }
  const steps = file.addWorksheet(WORKINGS);
  for (const { cell, content } of workings.cells) steps.getCell(cell).value = content.startsWith("=") ? { formula: storedFormula(content) } : content;
  return { file, compared, fixed };
}

const placed = (sheet: string, row: number, column: number, rows: number, columns: number): Surroundings => ({
  sheet,
  cell: cellAt(row - 1, column - 1),
  area: rangeOf({ row: row - 1, column: column - 1, rows, columns }),
  nameOf: () => undefined,
  tableOf: () => undefined,
  spillOf: () => undefined,
});

/** Puts an argument into cells, a column downwards, and gives their reference. */
function put(sheet: Worksheet, row: number, index: number, value: unknown): string {
  const values = Array.isArray(value) ? (value as unknown[][]).flat() : [value];
  values.forEach((one, down) => {
    if (one === null || one === undefined) return;
    sheet.getCell(row + down, index + 1).value = isError(one) ? { formula: ERRORS[one.basicValue] ?? "NA()" } : (one as string | number | boolean);
  });
  return rangeOf({ row: row - 1, column: index, rows: values.length, columns: 1 });
}

const ERRORS: Readonly<Record<string, string>> = { "#DIV/0!": "1/0", "#N/A": "NA()", "#VALUE!": 'VALUE("x")', "#NUM!": "SQRT(-1)" };

const isError = (value: unknown): value is { readonly basicValue: string } => typeof value === "object" && value !== null && "basicValue" in value;

function typed(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (Array.isArray(value)) return `{${(value as unknown[][]).map(([one]) => typed(one) || '""').join(";")}}`;
  if (isError(value)) return value.basicValue;
  return typeof value === "string" ? inQuotes(value) : String(value).toUpperCase().replace("E+", "E");
}

/** 15 digits come back from a file; differences of nearly equal weighings cost a few. */
const WITHIN = 1e-11;

export const agrees = (other: unknown, ours: Answer): boolean => {
  if (ours instanceof CellProblem) return isErrorShown(other);
  if (typeof ours === "number") return typeof other === "number" && Math.abs(other - ours) <= WITHIN * Math.max(1, Math.abs(ours));
  return typeof ours === "string" && typeof other === "string" ? rounded(other) === rounded(ours) : (other ?? "") === ours;
};

/** A number inside a text is written with four decimals in cells, with all its figures by the function. */
const rounded = (text: string): string => text.replace(/\d+\.\d{5,}/g, (number) => String(Number(Number(number).toFixed(4))));

const isErrorShown = (other: unknown): boolean => typeof other === "object" && other !== null && "error" in other;

export const codeShown = (other: unknown): unknown => (isErrorShown(other) ? (other as { error: unknown }).error : other);

/** What stands in the cells of a compared call where it differs from what the function answers. */
export function differences(back: Workbook, { sheet, row, column, ours }: Compared): { other: unknown; ours: unknown } | undefined {
  const table = Array.isArray(ours) ? ours : [[ours]];
  for (const [down, line] of table.entries())
    for (const [across, one] of line.entries()) {
      const other = back.getWorksheet(sheet)?.getCell(row + down, column + across).result as unknown;
      if (!agrees(other, one)) return { other: codeShown(other), ours: one instanceof CellProblem ? one.code : one };
    }
  return undefined;
}
