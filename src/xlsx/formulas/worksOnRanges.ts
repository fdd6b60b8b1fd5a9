import type { AstExpression } from "@borgar/fx";
import { expressionOf } from "../../explanation/formula/expressionOf";
import { parseReference } from "../../explanation/formula/references";
import { everyFunction } from "../../functions/catalogue";
import { takesRanges, type CellFunction } from "../../functions/cellFunction";
import { catalogueName } from "../../sharing/catalogueName";
import { lambdaCalled, nameCalled, type Call, type Lambda, type Let, type Part } from "../../sharing/plain/formula/parts";
import { cellArea, wholeLines, type CellArea } from "../../workbook/cellArea";
import { GIVES_SEVERAL, takesRange } from "./rangePlaces";

/** Names in capitals, each with whether it stands for more than one value. */
export type NamesForSeveral = ReadonlyMap<string, boolean>;

/**
 * True where a range stands in the place of one value: beside an operator, as in SUM(A1:A3*2), or in a function that takes one, as in
 * SUM(LEN(A1:A3)). From a file, a spreadsheet would take the one cell of the range that stands in the formula's own row or column, unless
 * the file says that the formula is one over arrays. What SUMPRODUCT works out cell by cell of itself needs no saying: of a formula that calls
 * us none is said, because over arrays LibreOffice drops the stored answer at once. Gnumeric needs it said all the same. Where it cannot be told, the answer is true: over arrays, one value stays one.
 */
export const worksOnRanges = (formula: string, names: NamesForSeveral = new Map()): boolean => {
  const parsed = expressionOf(formula);
  return hasRangeAsValue(callsOurs(parsed) ? withoutSums(parsed) : parsed, names);
};

/** The same of a formula whose calls of ours are about to be written in built-in functions: no stored answer is at stake. */
export const worksOnRangesWrittenOut = (formula: string, names: NamesForSeveral): boolean => hasRangeAsValue(expressionOf(formula), names);

/** The workbook's names as worksOnRanges takes them; one of several sheets' own stands for several where any of them does. */
export function namesForSeveral(named: readonly { readonly name: string; readonly refersTo: string }[]): NamesForSeveral {
  const found = new Map<string, boolean>();
  for (const { name, refersTo } of named) {
    const key = name.toUpperCase();
    found.set(key, found.get(key) === true || isSeveral(expressionOf(refersTo), found));
  }
  return found;
}

/** These join references to a range. */
const JOINS: readonly string[] = [":", " ", ","];
const ONE_OF_RANGE = "@";
const SPILL = "#";

function hasRangeAsValue(part: Part, names: NamesForSeveral): boolean {
  switch (part?.type) {
    case "UnaryExpression":
      return (part.operator !== ONE_OF_RANGE && part.operator !== SPILL && isSeveral(part.arguments[0], names)) || among(part.arguments, names);
    case "BinaryExpression":
      return (!JOINS.includes(part.operator) && part.arguments.some((one) => isSeveral(one, names))) || among(part.arguments, names);
    case "CallExpression":
      return callHasRangeAsValue(part, names) || among(part.arguments, names);
    case "LambdaExpression":
      return hasRangeAsValue(part.body, given(part, undefined, names));
    case "LetExpression":
      return part.declarations.some(({ init }) => hasRangeAsValue(init, declared(part, names))) || hasRangeAsValue(part.body, declared(part, names));
    default:
      return false;
  }
}

/**
 * Functions that go cell by cell on their own inside SUMPRODUCT, which takes arrays of itself; IF and others do not. (ECMA-376 Part 1,
 * 18.17.7.322, and common practice; from memory.)
 */
const CELL_BY_CELL: ReadonlySet<string> = new Set(["ABS", "COLUMN", "ISBLANK", "ISERROR", "ISFORMULA", "ISNUMBER", "ISTEXT", "MAX", "ROW"]);

/** The same with each SUMPRODUCT that works cell by cell as one value. */
function withoutSums(part: Part): Part {
  if (part?.type === "CallExpression" && nameOf(part) === "SUMPRODUCT" && part.arguments.every(isCellByCell)) return ONE_VALUE;
  if (part?.type === "CallExpression") return { ...part, arguments: part.arguments.map((one) => withoutSums(one) as typeof one) };
  if (part?.type === "BinaryExpression") return { ...part, arguments: part.arguments.map((one) => withoutSums(one) as AstExpression) };
  return part;
}

const callsOurs = (part: Part): boolean =>
  (part?.type === "CallExpression" && (catalogueName(nameOf(part)) !== undefined || part.arguments.some(callsOurs))) ||
  ((part?.type === "BinaryExpression" || part?.type === "UnaryExpression") && part.arguments.some(callsOurs));

const ONE_VALUE: AstExpression = { type: "Literal", value: 0, raw: "0" };

/** Whether a part of a SUMPRODUCT is worked out cell by cell without being marked as one over arrays. */
function isCellByCell(part: Part): boolean {
  switch (part?.type) {
    case "ReferenceIdentifier":
      return isReference(part.value);
    case "Literal":
      return true;
    case "BinaryExpression":
      return !JOINS.includes(part.operator) && part.arguments.every(isCellByCell);
    case "CallExpression":
      return CELL_BY_CELL.has(nameOf(part)) && part.arguments.every(isCellByCell);
    default:
      return false;
  }
}

function callHasRangeAsValue(call: Call, names: NamesForSeveral): boolean {
  const lambda = lambdaCalled(call);
  if (lambda !== undefined) return hasRangeAsValue(lambda.body, given(lambda, call, names));
  return call.arguments.some((one, place) => !takesWhole(call, place) && isSeveral(one, names));
}

const among = (parts: readonly Part[], names: NamesForSeveral): boolean => parts.some((part) => hasRangeAsValue(part, names));

function isSeveral(part: Part, names: NamesForSeveral): boolean {
  switch (part?.type) {
    case "ReferenceIdentifier":
      // A name may stand behind the sheet that knows it, and may look like a cell.
      return names.get(part.value.slice(part.value.lastIndexOf("!") + 1).toUpperCase()) ?? isRange(part.value);
    case "UnaryExpression":
      return part.operator === SPILL || (part.operator !== ONE_OF_RANGE && isSeveral(part.arguments[0], names));
    case "BinaryExpression":
      return JOINS.includes(part.operator) || part.arguments.some((one) => isSeveral(one, names));
    case "CallExpression":
      return callGivesSeveral(part, names);
    case "LetExpression":
      return isSeveral(part.body, declared(part, names));
    default:
      // A list in braces is a value of its own kind: no spreadsheet takes one of it where one value is wanted.
      return false;
  }
}

function callGivesSeveral(call: Call, names: NamesForSeveral): boolean {
  const lambda = lambdaCalled(call);
  if (lambda !== undefined) return isSeveral(lambda.body, given(lambda, call, names));
  const name = nameOf(call);
  const places = call.arguments.map((_, place) => place);
  const isSeveralAt = (place: number): boolean => isSeveral(call.arguments[place], names);
  const own = ownFunction(name);
  // Of ours, those that give a table, and those of single cells, which go row by row.
  if (own !== undefined) return own.gives === "table" || (takesRanges(own) && places.some(isSeveralAt));
  if (GIVES_SEVERAL.has(name)) return true;
  if (name === "IF" || name === "CHOOSE") return places.some(isSeveralAt);
  if (name === "OFFSET") return places.length > 3 || places.some(isSeveralAt);
  if (name === "XLOOKUP") return isSeveralAt(0) || !isLine(call.arguments[2]);
  if (name !== "INDEX") return places.some((place) => !takesWhole(call, place) && isSeveralAt(place));
  const [area, ...wanted] = call.arguments;
  return wanted.some((one, at) => isSeveralAt(at + 1) || isWhole(one)) || (wanted.length < 2 && !isLine(area));
}

/** True for what INDEX takes for a whole row or column: nothing, or 0. */
const isWhole = (part: Part): boolean => part == null || (part.type === "Literal" && part.value === 0);

const takesWhole = (call: Call, place: number): boolean => catalogueName(nameOf(call)) !== undefined || takesRange(nameOf(call), place);

/** "" for a function written where its name would stand. */
const nameOf = (call: Call): string => nameCalled(call).toUpperCase();

function ownFunction(called: string): CellFunction | undefined {
  const own = catalogueName(called);
  return own === undefined ? undefined : everyFunction.find(({ name }) => name === own);
}

/** The names that hold in a LET: its own first. */
function declared({ declarations }: Let, names: NamesForSeveral): NamesForSeveral {
  const found = new Map(names);
  for (const { id, init } of declarations) found.set(id.name.toUpperCase(), isSeveral(init, found));
  return found;
}

/** The names that hold in a LAMBDA; what it is given by another function may be a row or a column. */
const given = ({ params }: Lambda, call: Pick<Call, "arguments"> | undefined, names: NamesForSeveral): NamesForSeveral =>
  new Map([
    ...names,
    ...params.map(({ name }, place) => [name.toUpperCase(), call === undefined || isSeveral(call.arguments[place], names)] as const),
  ]);

/** False for a name, which may stand for a formula. */
const isReference = (reference: string): boolean => parseReference(reference, "")?.range !== undefined;

function isRange(reference: string): boolean {
  const range = parseReference(reference, "")?.range;
  return range !== undefined && !(areaOf(range)?.rows === 1 && areaOf(range)?.columns === 1);
}

/** True for a reference to one row or one column. */
function isLine(part: Part): boolean {
  const range = part?.type === "ReferenceIdentifier" ? parseReference(part.value, "")?.range : undefined;
  const area = range === undefined ? undefined : areaOf(range);
  return area?.rows === 1 || area?.columns === 1;
}

const areaOf = (range: string): CellArea | undefined => cellArea(range) ?? wholeLines(range);
