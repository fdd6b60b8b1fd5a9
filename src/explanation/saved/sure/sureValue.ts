import type { AstExpression } from "@borgar/fx";
import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { cellsOfCall, definitionOf } from "../../formula/calledFunction";
import { isSingle, oneCell, valueAt, type BlankForm, type Cells } from "../../formula/Cells";
import { isTooDeep } from "../../formula/everyPart";
import { each, workedOut, type Arguments, type Rules } from "../../formula/workedOut";
import { certainTruth, type Certain } from "./certain";
import type { Given, SureFunction } from "./Given";
import { sureLookups } from "./sureLookups";
import { sureNumbers } from "./sureNumbers";
import { SURE_BINARY, SURE_UNARY } from "./sureOperators";
import { sureTexts } from "./sureTexts";

/** What an expression is worked out from. */
export interface SureSurroundings {
  /** What a reference as typed holds, "B7" or for a spill the "B7" of "B7#"; undefined where that is not known. */
  readonly referred: (text: string, isSpill: boolean) => Cells | undefined;
  /** What a reference to several sheets holds, one sheet's cells below the other's; undefined for any other reference. */
  readonly onSheets: (text: string) => Cells | undefined;
  readonly blankAs: BlankForm;
}

const FUNCTIONS: ReadonlyMap<string, SureFunction> = new Map(Object.entries({ ...sureNumbers, ...sureTexts, ...sureLookups }));

/** True for a built-in function that is worked out here wherever nothing is in doubt. */
export const isWorkedOutSurely = (name: string): boolean => FUNCTIONS.has(name);

// Works on arrays wherever it stands; other functions take one cell of what an operator makes of a range, or all of it, as the file says.
const OVER_ARRAYS = "SUMPRODUCT";
// Those that take a reference to several sheets (Excel's own list, "Create a reference to the same cell range on multiple worksheets", from memory).
const OVER_SHEETS = /^(?:SUM|AVERAGE|COUNT|COUNTA|MIN|MAX|PRODUCT|STDEV(?:P|\.P|\.S)?|VAR(?:P|\.P|\.S)?)$/;

/**
 * What an expression gives in every spreadsheet, from what its cells hold: conditions are worked out, and days, chance, other languages' signs, last
 * digits that decide, and functions that programs take differently are left alone.
 * @returns undefined for what is not certain
 */
export const sureValue = (expression: AstExpression, around: SureSurroundings): Certain<Cells> =>
  isTooDeep(expression) ? undefined : workedOut(expression, rulesIn(around, true));

/** @param isOverArrays false where a range behind an operator may be taken for one of its cells */
const rulesIn = (around: SureSurroundings, isOverArrays: boolean): Rules => ({
  referred: (text, isSpill) => around.referred(text, isSpill),
  element: (part) => single(workedOut(part, rulesIn(around, false))),
  unary: (operator, of) => byCells(SURE_UNARY[operator], [of], isOverArrays),
  binary: (operator, left, right) => byCells(SURE_BINARY[operator], [left, right], isOverArrays),
  called: (name, given) => called(name, given, around, isOverArrays),
});

const firstError = (...values: readonly CellValue[]): CellError | undefined => values.find((value): value is CellError => value instanceof CellError);

type Operation = (one: CellValue, other: CellValue) => Certain<CellValue>;

/** Cell by cell; undefined as soon as one is uncertain. */
function byCells(operation: Operation | undefined, operands: readonly Cells[], isOverArrays: boolean): Certain<Cells> {
  if (operation === undefined || (!isOverArrays && !operands.every(isSingle))) return undefined;
  const rows = Math.max(...operands.map((cells) => cells.length));
  const columns = Math.max(...operands.map((cells) => cells[0]?.length ?? 1));
  const missing = new CellError("#N/A");
  const places = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => ({ row, column })));
  return each(places, (line) =>
    each(line, (place) => {
      const [one = missing, other = BLANK] = operands.map((cells) => valueAt(cells, place) ?? missing);
      return firstError(one, other) ?? operation(one, other);
    }),
  );
}

function called(callee: string, given: Arguments, around: SureSurroundings, isOverArrays: boolean): Certain<Cells> {
  const definition = definitionOf(callee);
  const name = callee.toUpperCase();
  const choice = definition === undefined ? CHOICES[name] : undefined;
  if (choice !== undefined) return choice(given, (part) => (part === null ? oneCell(0) : workedOut(part, rulesIn(around, isOverArrays))));
  const rules = rulesIn(around, definition !== undefined || name === OVER_ARRAYS);
  const read = each(given, (part) => (part === null ? null : (onSheets(name, part, around) ?? workedOut(part, rules))));
  if (read === undefined) return undefined;
  return definition === undefined ? builtIn(name, given, read) : cellsOfCall(definition, read, around.blankAs);
}

/** Sheets whose names look like cells are taken apart as a range from one to the other. */
function onSheets(name: string, part: AstExpression, { onSheets: of }: SureSurroundings): Certain<Cells> {
  if (!OVER_SHEETS.test(name)) return undefined;
  if (part.type === "ReferenceIdentifier") return part.value.includes("!") ? of(part.value) : undefined;
  if (part.type !== "BinaryExpression" || part.operator !== ":") return undefined;
  const [first, last] = part.arguments.map((end) => (end.type === "ReferenceIdentifier" ? end.value : ""));
  const [, sheet, cells] = /^([^!']+)!([^!]+)$/.exec(last ?? "") ?? [];
  return first === undefined || sheet === undefined || first.includes("!") ? undefined : of(`'${first}:${sheet}'!${cells}`);
}

function builtIn(name: string, parts: Arguments, read: readonly (Cells | null)[]): Certain<Cells> {
  const of = FUNCTIONS.get(name);
  if (of === undefined || !read.every((cells) => cells !== null)) return undefined;
  const given = read.map((cells, place): Given => ({ cells, isReference: isReference(parts[place]) }));
  const answer = of(...given);
  return answer === undefined ? undefined : oneCell(answer);
}

const isReference = (part: AstExpression | null | undefined): boolean =>
  part?.type === "ReferenceIdentifier" || (part?.type === "BinaryExpression" && part.operator === ":");

type Choice = (given: Arguments, worked: (part: AstExpression | null) => Certain<Cells>) => Certain<Cells>;

/** The single value of a part. */
const single = (cells: Certain<Cells>): Certain<CellValue> => (cells !== undefined && isSingle(cells) ? cells[0]?.[0] : undefined);

/** What the first part gives, or the second where it is such an error. */
const unless =
  (isSuch: (code: string) => boolean): Choice =>
  ([first = null, second = null], worked) => {
    const cells = worked(first);
    const value = single(cells);
    return value === undefined ? undefined : value instanceof CellError && isSuch(value.code) ? worked(second) : cells;
  };

/** Functions that give one of their parts, and work out no other. */
const CHOICES: Readonly<Record<string, Choice>> = {
  IF: ([condition = null, then = null, otherwise], worked) => {
    const value = single(worked(condition));
    if (value === undefined || value instanceof CellError) return value && oneCell(value);
    const holds = certainTruth(value);
    if (holds === undefined) return undefined;
    return holds ? worked(then) : otherwise === undefined ? oneCell(false) : worked(otherwise);
  },
  IFERROR: unless(() => true),
  IFNA: unless((code) => code === "#N/A"),
  CHOOSE: ([which = null, ...choices], worked) => {
    const value = single(worked(which));
    if (value instanceof CellError) return oneCell(value);
    const chosen = typeof value === "number" && Number.isInteger(value) ? choices[value - 1] : undefined;
    return chosen === undefined ? undefined : worked(chosen);
  },
};
