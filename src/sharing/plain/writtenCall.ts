import { everyFunction } from "../../functions/catalogue";
import { takesRanges, type CellFunction } from "../../functions/cellFunction";
import type { TableInCells, Workings } from "../../functions/inCells/Workings";
import { problemInCells, refusal } from "../../functions/inCells/problemInCells";
import { textInCells } from "../../functions/inCells/sentenceInCells";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { CellInput, Input } from "../../inputs/Input";
import { answerTo, refusedInCells } from "../../inputs/refusedInCells";
import { numberText } from "../../inputs/numberText";
import { ArgumentProblem } from "../../problems/ArgumentProblem";
import { rangesDoNotFit, refusedInputs } from "../../problems/plainCellProblems";
import { CannotWrite, LONGEST_FORMULA } from "./CannotWrite";
import type { Part } from "./formulaTree";
import { RANDOM, TIED_TO_ITS_CELL } from "./functionKinds";
import { within, type Scope } from "./Scope";
import { isOne, ONE, sizeOf, type Call, type Size } from "./sizeOf";
import { usesAny, written, type WriteCall } from "./written";

/** Where calls are written to: the steps of long forms, and whether the whole formula has to work over arrays. */
export interface WritingTo {
  /** Undefined where everything has to stand in one formula. */
  readonly workings: ((scope: Scope) => Workings) | undefined;
  needsArray: boolean;
}

/** A call written in built-in functions: one text, or the text of each cell of its table. */
export type WrittenCall = { readonly text: string } | { readonly table: TableInCells; readonly guard: (first: string) => string };

/** One argument: left out or typed, which is decided here and now, or asked of a cell each time the sheet calculates. */
type Argument =
  | { readonly kind: "settled"; readonly value: CellValue; readonly text: string }
  | { readonly kind: "asked"; readonly text: string; readonly size: Size };

/**
 * One call of ours in built-in functions, guarded: #VALUE! where an input is refused or inputs contradict one another, an error cell's own
 * error, and the answer else.
 * @throws CannotWrite
 */
export function writtenCall(call: Call, name: string, scope: Scope, to: WritingTo): WrittenCall {
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new CannotWrite("unknownFunction");
  if (definition.inCells === undefined && definition.inManyCells === undefined) throw new CannotWrite("noForm");
  const inputs = Object.entries(definition.inputs);
  if (call.arguments.length > inputs.length) throw new CannotWrite("argumentForm");
  const isLifted = takesRanges(definition);
  // The steps of a series stand on another sheet.
  const isQualified = scope.isQualified || (to.workings !== undefined && inputs.some(([, { shape }]) => shape === "column"));
  const inner = isLifted ? scope : within(scope, { isOnEach: false, isSingle: false, isQualified });
  const given = inputs.map(([, input], index) => argumentOf(call.arguments[index], input, inner, to));
  const problem = settledProblem(definition, inputs, given);
  if (problem !== undefined) return { text: problem };
  const settledText = settledWords(definition, inputs, given);
  if (settledText !== undefined) return { text: settledText };
  const sizes = given.map((one) => (one.kind === "asked" ? one.size : ONE));
  const misfit = isLifted && !scope.isSingle ? sizeProblem(sizes) : undefined;
  if (misfit !== undefined) return { text: misfit };
  if (isLifted && !scope.isSingle && !sizes.every(isOne)) to.needsArray = true;
  if (!isLifted && inputs.some(([, { shape }], index) => shape === "cell" && !isOne(sizes[index] ?? ONE))) throw new CannotWrite("argumentForm");
  return guarded(definition, inputs, given, scope, to);
}

function argumentOf(part: Part, input: Input<unknown>, scope: Scope, to: WritingTo): Argument {
  const variable = part?.type === "ReferenceIdentifier" && part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  if (variable !== undefined && (!variable.isKept || scope.isQualified)) {
    const { isSingle, isOnEach, isQualified } = scope;
    return argumentOf(variable.value, input, within(variable.scope, { isSingle, isOnEach, isQualified }), to);
  }
  const value = settledValue(part, scope);
  if (value !== undefined && (input.shape === "cell" || value === BLANK)) return settled(value);
  const size = scope.isSingle ? ONE : sizeOf(part, scope);
  const writeCall: WriteCall = (call, name, inner) => {
    const text = textOf(writtenCall(call, name, inner, to), inner, to);
    // Each call writes its arguments several times, so a few within one another fill any memory.
    if (text.length > LONGEST_FORMULA) throw new CannotWrite("tooLong");
    return text;
  };
  const isRepeatable = isCheap(part, scope);
  if (!isRepeatable && input.shape === "cell" && isOne(size) && to.workings !== undefined) {
    const text = written(part, scope, writeCall);
    if (text.length <= LONGEST_REPEATED && !usesAny(part, RANDOM, scope)) return { kind: "asked", text: `(${text})`, size };
    if (!usesAny(part, TIED_TO_ITS_CELL, scope) && scope.variables.size === 0) {
      const elsewhere = written(part, within(scope, { isQualified: true, isOnEach: false }), writeCall);
      return { kind: "asked", text: to.workings(scope).block("An argument", 1, 1, () => [[elsewhere]]), size };
    }
  }
  if (!isRepeatable && usesAny(part, RANDOM, scope)) throw new CannotWrite("random");
  const text = written(part, scope, writeCall);
  return { kind: "asked", text: isRepeatable ? text : `(${text})`, size };
}

// A longer argument is calculated once, in a cell of its own, where that can be.
const LONGEST_REPEATED = 40;

/** A table inside a formula stands on the sheet of workings. */
export function textOf(call: WrittenCall, scope: Scope, to: WritingTo): string {
  if ("text" in call) return `(${call.text})`;
  if (to.workings === undefined) throw new CannotWrite("noForm");
  const { table, guard } = call;
  return to.workings(scope).block("A table", table.length, table[0]?.length ?? 0, (at) => tableBehind(table, guard, at(0, 0)));
}

/** The cells of a table whose first cell alone asks what is refused. */
export const tableBehind = (table: TableInCells, guard: (first: string) => string, first: string): TableInCells =>
  table.map((row, down) => row.map((text, across) => (down + across === 0 ? guard(text) : `IF(ISERROR(${first}),"",${text})`)));

/** True for a reference or a name, which may be written several times. */
function isCheap(part: Part, scope: Scope): boolean {
  if (part?.type === "UnaryExpression" && part.operator === "#") return true;
  if (part?.type === "ArrayExpression") return true;
  if (part?.type !== "ReferenceIdentifier") return false;
  const variable = part.kind === "name" ? scope.variables.get(part.value.toLowerCase()) : undefined;
  return variable === undefined || (variable.isKept && !scope.isQualified);
}

/** What is typed into the call itself; undefined for anything that a cell decides. */
function settledValue(part: Part, scope: Scope): CellValue | undefined {
  if (part === null || part === undefined) return BLANK;
  if (part.type === "ErrorLiteral") return new CellError(scope.tree.textOf(part).toUpperCase());
  if (part.type === "UnaryExpression" && part.operator !== "#" && part.operator !== "@") {
    const inner = settledValue(part.arguments[0], scope);
    if (typeof inner !== "number") return undefined;
    return part.operator === "-" ? -inner : part.operator === "%" ? inner / 100 : inner;
  }
  if (part.type === "ReferenceIdentifier" && part.kind === "name") {
    const variable = scope.variables.get(part.value.toLowerCase());
    return variable === undefined ? undefined : settledValue(variable.value, variable.scope);
  }
  if (part.type !== "Literal") return undefined;
  const text = scope.tree.textOf(part);
  if (text.startsWith('"')) return text === '""' ? BLANK : text.slice(1, -1).replaceAll('""', '"');
  return part.value;
}

const settled = (value: CellValue): Argument => ({ kind: "settled", value, text: settledText(value) });

function settledText(value: CellValue): string {
  if (typeof value === "number") return numberText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "string" ? inQuotes(value) : "";
}

/** A text in a cell formula. */
export const inQuotes = (text: string): string => `"${text.replaceAll('"', '""')}"`;

type NamedInput = readonly [name: string, input: Input<unknown>];

/** The error that the call gives whatever the cells hold, because of what is typed into it or left out; errors before all else. */
function settledProblem(definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[]): string | undefined {
  const error = given.find((one) => one.kind === "settled" && one.value instanceof CellError);
  if (error?.kind === "settled" && error.value instanceof CellError) return error.value.code;
  try {
    const read: Record<string, unknown> = {};
    for (const [index, [name, input]] of inputs.entries()) {
      const one = given[index];
      if (one?.kind === "settled") read[name] = input.shape === "cell" ? input.read(one.value, name) : input.read(columnOf(one.value), name);
    }
    if (given.every(({ kind }) => kind === "settled")) void (definition.gives === "table" ? definition.computeTable(read) : definition.compute(read));
  } catch (thrown) {
    if (thrown instanceof ArgumentProblem) return problemInCells(thrown);
    throw thrown;
  }
  return undefined;
}

/** What a function says in words about nothing but what is typed into the call. */
function settledWords(definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[]): string | undefined {
  if (definition.gives !== "value" || !given.every(({ kind }) => kind === "settled")) return undefined;
  const read = inputs.map(([name, input], index) => {
    const { value } = given[index] as Extract<Argument, { kind: "settled" }>;
    return [name, input.shape === "cell" ? input.read(value, name) : input.read(columnOf(value), name)] as const;
  });
  const answer = definition.compute(Object.fromEntries(read));
  return typeof answer === "string" ? textInCells(answer) : undefined;
}

const columnOf = (value: CellValue): readonly CellValue[] => (value === BLANK ? [] : [value]);

function sizeProblem(sizes: readonly Size[]): string | undefined {
  for (const side of ["rows", "columns"] as const) {
    const most = Math.max(...sizes.map((size) => size[side]));
    if (sizes.some((size) => size[side] !== 1 && size[side] !== most)) return refusal(rangesDoNotFit);
  }
  return undefined;
}

function guarded(definition: CellFunction, inputs: readonly NamedInput[], given: readonly Argument[], scope: Scope, to: WritingTo): WrittenCall {
  const texts = Object.fromEntries(inputs.map(([name, input], index) => [name, textFor(input, given[index] as Argument)]));
  let answer: string | TableInCells;
  try {
    answer = definition.inCells?.(texts) ?? inManyCells(definition, texts, scope, to);
  } catch (thrown) {
    // Such as a chemical formula that does not read.
    if (thrown instanceof ArgumentProblem) return { text: problemInCells(thrown) };
    throw thrown;
  }
  const asked = inputs.flatMap(([name, input], index) => {
    const one = given[index] as Argument;
    return one.kind === "asked" && input.shape === "cell" ? [{ name, input, text: one.text, size: one.size }] : [];
  });
  const guard = (text: string): string => unlessUnfilled(asked, definition, given, unlessRefused(asked, unlessContradicted(definition, texts, text)));
  return typeof answer === "string" ? { text: guard(answer) } : { table: answer, guard };
}

/** A settled input that reads as left out is handed on as left out. */
function textFor(input: Input<unknown>, given: Argument): string {
  if (given.kind === "asked") return given.text;
  return input.shape === "cell" && input.optional && input.read(given.value, "") === undefined ? "" : given.text;
}

function inManyCells(definition: CellFunction, texts: Readonly<Record<string, string>>, scope: Scope, to: WritingTo): string | TableInCells {
  const workings: Workings = to.workings?.(scope) ?? {
    block: () => {
      throw new CannotWrite("noForm");
    },
    cellsOf: () => undefined,
  };
  const found = definition.inManyCells?.(texts, workings);
  if (found === undefined) throw new CannotWrite("argumentForm");
  return found;
}

interface Asked {
  readonly name: string;
  readonly input: CellInput<unknown>;
  readonly text: string;
  readonly size: Size;
}

function unlessRefused(asked: readonly Asked[], text: string): string {
  const looked = asked.flatMap((one) => {
    const refused = refusedInCells(one.input, one.text);
    if (refused === undefined) throw new CannotWrite("argumentForm");
    return refused === "" ? [] : [{ ...one, refused }];
  });
  if (looked.length === 0) return text;
  const why = looked.reduceRight(
    (rest, one) => `IF(ISERROR(${one.text}),${one.text},${rest})`,
    refusal(refusedInputs(looked.map(({ name }) => name))),
  );
  return `IF(${looked.map(({ refused }) => refused).join("+")},${why},${text})`;
}

function unlessContradicted(definition: CellFunction, texts: Readonly<Record<string, string>>, text: string): string {
  const refusals = definition.refusesInCells?.(texts) ?? [];
  return refusals.reduceRight(
    (rest, { when, says, noAnswer }) => (when === "0" ? rest : `IF(${when},${noAnswer ? "NA()" : refusal(says)},${rest})`),
    text,
  );
}

/** In a range, a row with none of its required cells filled stays empty, as `cells/overRanges` has it. */
function unlessUnfilled(asked: readonly Asked[], definition: CellFunction, given: readonly Argument[], text: string): string {
  if (!takesRanges(definition) || given.every((one) => one.kind === "settled" || isOne(one.size))) return text;
  const awaited = asked.filter(({ input, size }) => !input.optional && !isOne(size));
  if (awaited.length === 0) return text;
  const isZeroBlank = (one: Asked): boolean => answerTo(one.input, 0) !== "value" || one.input.isBlank(0);
  const nothing = awaited.map((one) => `IF(ISNUMBER(${one.text}),${one.text}=0,TRIM(${one.text})="")`);
  const blanks = awaited.every(isZeroBlank)
    ? []
    : [`(${awaited.map((one) => `IF(ISNUMBER(${one.text}),${isZeroBlank(one) ? `${one.text}=0` : "0"},TRIM(${one.text})="")`).join("+")}>0)`];
  return `IF(${[...nothing, ...blanks].join("*")},"",${text})`;
}
