import type { AstExpression } from "@borgar/fx";
import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { nameCalled, type Lambda, type Let } from "../../../sharing/plain/formula/parts";
import type { CellFunction } from "../../../functions/cellFunction";
import { definitionOf } from "../../formula/calledFunction";
import type { Cells } from "../../formula/Cells";
import { fromFirstOperand, isTooDeep } from "../../formula/everyPart";
import { isWorkedOutSurely } from "../sure/builtInSurely";
import type { SureSurroundings } from "../sure/SureSurroundings";
import { sureValue } from "../sure/sureValue";
import { PROVEN, type Kinds, type Place, type ProvenFunction } from "./provenFunctions";

/** What a part of a formula may give. */
interface Shape {
  readonly kinds: Kinds;
  /** Rows and columns, undefined where that is not known. */
  readonly size: readonly [number, number] | undefined;
  /** True where the value is worked out for certain. */
  readonly isCertain: boolean;
}

const SINGLE: readonly [number, number] = [1, 1];
const isOne = ({ size }: Shape): boolean => size?.[0] === 1 && size[1] === 1;

/**
 * True where every function, operator and literal of an expression is one that the grid's engine is known to answer as other spreadsheets do, for the
 * values that it stands before here, or where its value is certain by itself.
 * @param isOverArrays false where a spreadsheet takes one cell of a range that stands in the place of one value
 */
export const isProven = (expression: AstExpression, around: ProvenSurroundings, isOverArrays: boolean): boolean => {
  if (isTooDeep(expression)) return false;
  const shape = shapeOf(expression, { around, isOverArrays, variables: new Map() });
  // What one of our functions gives is taken whole, or its first value, whatever the file says.
  const isOurs = expression.type === "CallExpression" && definitionOf(nameCalled(expression)) !== undefined;
  return shape !== undefined && (isOverArrays || isOurs || isOne(shape));
};

interface Where {
  readonly around: ProvenSurroundings;
  readonly isOverArrays: boolean;
  /** The variables of LET and LAMBDA, in small letters. */
  readonly variables: ReadonlyMap<string, Shape>;
}

export interface ProvenSurroundings extends SureSurroundings {
  /** The LAMBDA that a defined name stands for; undefined for any other name. */
  readonly lambdaNamed: (name: string) => Lambda | undefined;
}

function shapeOf(part: AstExpression, where: Where): Shape | undefined {
  const certain = sureValue(part, where.around);
  if (certain !== undefined) return shapeOfCells(certain);
  switch (part.type) {
    case "UnaryExpression":
      return part.operator === "#" || part.operator === "@" ? undefined : lifted([["nbdltex", part.arguments[0]]], "nx", where);
    case "BinaryExpression":
      return shapeOfOperation(part, where);
    case "CallExpression":
      return shapeOfCall(nameCalled(part).toUpperCase(), part.arguments, where);
    case "ReferenceIdentifier":
      return where.variables.get(part.value.toLowerCase());
    case "LetExpression":
      return shapeOfLet(part, where);
    default:
      // References and names that cannot be followed, LAMBDAs as values, lists with an uncertain part.
      return undefined;
  }
}

function shapeOfCells(cells: Cells): Shape {
  const kinds = new Set(cells.flat().map(kindOf));
  return { kinds: [...kinds].join(""), size: [cells.length, cells[0]?.length ?? 0], isCertain: true };
}

/** With variables, which hide defined names of the same letters. */
function having(variables: ReadonlyMap<string, Shape>, where: Where): Where {
  const all = new Map([...where.variables, ...variables]);
  const around = {
    ...where.around,
    referred: (text: string, isSpill: boolean) => (all.has(text.toLowerCase()) ? undefined : where.around.referred(text, isSpill)),
  };
  return { ...where, around, variables: all };
}

function shapeOfLet({ declarations, body }: Let, where: Where): Shape | undefined {
  let inside = where;
  for (const { id, init } of declarations) {
    const shape = init === null ? undefined : shapeOf(init, inside);
    if (shape === undefined) return undefined;
    inside = having(new Map([[id.name.toLowerCase(), { ...shape, isCertain: false }]]), inside);
  }
  return body === null ? undefined : shapeOf(body, inside);
}

function shapeOfLambda({ params, body }: Lambda, given: readonly (AstExpression | null)[], where: Where): Shape | undefined {
  if (params.length !== given.length) return undefined;
  const variables = new Map<string, Shape>();
  for (const [place, part] of given.entries()) {
    const shape = part === null ? undefined : shapeOf(part, where);
    if (shape === undefined) return undefined;
    variables.set(params[place]?.name.toLowerCase() ?? "", { ...shape, isCertain: false });
  }
  // A LAMBDA that calls itself by its name has no end here.
  const around = { ...where.around, lambdaNamed: () => undefined };
  return body === null ? undefined : shapeOf(body, having(variables, { ...where, around }));
}

const WILD = /[*?~]/;

function kindOf(value: CellValue): string {
  if (value === BLANK) return "b";
  if (value instanceof CellError) return "x";
  if (typeof value !== "string") return typeof value === "number" ? "n" : "l";
  if (value === "") return "e";
  return WILD.test(value) ? "w" : /\d/.test(value) ? "d" : "t";
}

const holds = (kinds: Kinds, one: Kinds): boolean => [...one].some((kind) => kinds.includes(kind));
const within = (kinds: Kinds, allowed: Kinds): boolean => [...kinds].every((kind) => allowed.includes(kind));

/** Several shapes beside one another, one value at a time. */
function together(shapes: readonly Shape[], gives: Kinds, { isOverArrays }: Where): Shape | undefined {
  const several = shapes.filter((shape) => !isOne(shape));
  if (several.length > 0 && !isOverArrays) return undefined;
  const [first] = several;
  const isAlike = several.every(({ size }) => size?.[0] === first?.size?.[0] && size?.[1] === first?.size?.[1]);
  return { kinds: gives, size: first === undefined ? SINGLE : isAlike ? first.size : undefined, isCertain: false };
}

function lifted(parts: readonly (readonly [Kinds, AstExpression | null | undefined])[], gives: Kinds, where: Where): Shape | undefined {
  const shapes: Shape[] = [];
  for (const [allowed, part] of parts) {
    const shape = part ? shapeOf(part, where) : undefined;
    if (shape === undefined || !within(shape.kinds, allowed)) return undefined;
    shapes.push(shape);
  }
  return together(shapes, gives, where);
}

/** The terms of a long sum hang on one another at its left side, so each is looked at once. */
function shapeOfOperation(whole: Extract<AstExpression, { type: "BinaryExpression" }>, where: Where): Shape | undefined {
  const { first, steps } = fromFirstOperand(whole);
  let left = first && shapeOf(first, where);
  for (const { operator, arguments: operands } of steps) {
    const right = operands[1] && shapeOf(operands[1], where);
    if (left === undefined || right === undefined) return undefined;
    const gives = givenBy(operator, left, right);
    left = gives === undefined ? undefined : together([left, right], gives, where);
  }
  return left;
}

/** What an operation gives; undefined where programs differ. */
function givenBy(operator: string, left: Shape, right: Shape): Kinds | undefined {
  // What is certain of each and not of both is what the last digits, the language or the program decides.
  if (left.isCertain && right.isCertain && isOne(left) && isOne(right) && operator !== "&") return undefined;
  const [one, other] = [left.kinds, right.kinds];
  const mixes = (these: Kinds, those: Kinds): boolean => (holds(one, these) && holds(other, those)) || (holds(one, those) && holds(other, these));
  switch (operator) {
    case "+":
    case "-":
    case "*":
    case "/":
      // Of an error and a text in one sum, each program gives another error.
      return mixes("tew", "x") || mixes("w", "nbdltew") ? undefined : "nx";
    case "&":
      return holds(one + other, "l") ? undefined : "tdewx";
    case "=":
    case "<>":
      return holds(one + other, "wd") || mixes("l", "nbte") ? undefined : "lx";
    case "<":
    case ">":
    case "<=":
    case ">=":
      // Texts are ordered by the language.
      return holds(one + other, "wdl") || mixes("te", "te") ? undefined : "lx";
    default:
      return undefined;
  }
}

function shapeOfCall(name: string, given: readonly (AstExpression | null)[], where: Where): Shape | undefined {
  const definition = definitionOf(name);
  if (definition !== undefined) return shapeOfOurs(definition, given, where);
  const lambda = where.around.lambdaNamed(name);
  if (lambda !== undefined) return shapeOfLambda(lambda, given, where);
  const choice = CHOICES[name];
  if (choice !== undefined) return choice(given, where);
  const proven = PROVEN.get(name);
  if (proven === undefined) return undefined;
  const isOverArrays = where.isOverArrays || name === "SUMPRODUCT";
  const shapes = given.map((part) => (part === null ? undefined : shapeOf(part, { ...where, isOverArrays })));
  if (!shapes.every((shape) => shape !== undefined)) return undefined;
  const isListed = shapes.some((shape, index) => !isOne(shape) && (proven.places[index] ?? proven.places.at(-1))?.among === undefined);
  // What is certain of each argument and not of the whole is in doubt; of lists one by one nothing is certain here.
  const isInDoubt = shapes.length > 0 && isWorkedOutSurely(name) && !isListed && shapes.every((shape) => shape.isCertain);
  if (isInDoubt && !proven.isComparedAtEdges) return undefined;
  return shapeOfProven(proven, shapes, where);
}

function shapeOfProven({ places, repeats, alike, gives }: ProvenFunction, shapes: readonly Shape[], where: Where): Shape | undefined {
  const singles: Shape[] = [];
  const sizes = new Set<string>();
  for (const [index, shape] of shapes.entries()) {
    const place: Place | undefined = places[index] ?? (repeats ? places.at(-1) : undefined);
    if (place === undefined) return undefined;
    if (place.among !== undefined && !isOne(shape)) {
      if (!within(shape.kinds, place.among)) return undefined;
      sizes.add(String(shape.size));
    } else if (within(shape.kinds, place.one)) singles.push(shape);
    else return undefined;
  }
  if (alike && (sizes.size > 1 || sizes.has("undefined"))) return undefined;
  return together(singles, gives, where);
}

/** Our functions are the same wherever they are called; what they give may be a table. */
function shapeOfOurs({ gives, result }: CellFunction, given: readonly (AstExpression | null)[], where: Where): Shape | undefined {
  const over = { ...where, isOverArrays: true };
  const shapes = given.map((part) => (part === null ? { kinds: "", size: SINGLE, isCertain: true } : shapeOf(part, over)));
  if (!shapes.every((shape) => shape !== undefined)) return undefined;
  const size = gives === "table" || !shapes.every(isOne) ? undefined : SINGLE;
  return { kinds: gives === "table" || result.unit === "" ? "ntdelx" : "nex", size, isCertain: false };
}

type Choice = (given: readonly (AstExpression | null)[], where: Where) => Shape | undefined;

/** One of some shapes, whichever; a blank cell comes out as 0. */
function eitherOf(parts: readonly (AstExpression | null)[], where: Where): Shape | undefined {
  const shapes = parts.map((part) => (part === null ? { kinds: "n", size: SINGLE, isCertain: true } : shapeOf(part, where)));
  if (shapes.length === 0 || !shapes.every((shape) => shape !== undefined)) return undefined;
  const kinds = [...new Set(shapes.flatMap((shape) => [...shape.kinds.replace("b", "bn")]))].join("");
  return together(shapes, kinds, where);
}

// Such as hold no sign that a language changes.
const PLAIN_PATTERN = /^0(?:\.0+)?%?$/;

const CHOICES: Readonly<Record<string, Choice>> = {
  TEXT: ([value = null, pattern], where) => {
    const isPlain = pattern?.type === "Literal" && typeof pattern.value === "string" && PLAIN_PATTERN.test(pattern.value);
    return isPlain ? lifted([["nbx", value]], "tdx", where) : undefined;
  },
  IF: ([condition = null, ...branches], where) => {
    const asked = condition && shapeOf(condition, where);
    if (!asked || !within(asked.kinds, "nblx") || branches.length === 0) return undefined;
    const either = eitherOf(branches, where);
    return either && together([asked, either], either.kinds + (branches.length < 2 ? "l" : "") + (asked.kinds.includes("x") ? "x" : ""), where);
  },
  IFERROR: (given, where) => (given.length === 2 ? eitherOf(given, where) : undefined),
  IFNA: (given, where) => (given.length === 2 ? eitherOf(given, where) : undefined),
};
