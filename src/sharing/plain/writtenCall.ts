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
import { changedSinceShared, rangesDoNotFit, refusedInputs } from "../../problems/plainCellProblems";
import type { CellArea } from "../../workbook/cellArea";
import type { CellReading } from "../../workbook/Workbook";
import { CannotWrite, LONGEST_FORMULA } from "./CannotWrite";
import { changed } from "./changed";
import type { Part } from "./formulaTree";
import { RANDOM, TIED_TO_ITS_CELL } from "./functionKinds";
import { within, type Scope } from "./Scope";
import { areaReferred, isOne, namedFormula, ONE, sizeOf, type Call, type Size } from "./sizeOf";
import { usesAny, written, type WriteCall } from "./written";

/** Where calls are written to: the steps of long forms, and whether the whole formula has to work over arrays. */
export interface WritingTo {
  /** Undefined where everything has to stand in one formula. */
  readonly workings: ((scope: Scope) => Workings) | undefined;
  /** Remembers how far the workings reach, and takes back what came after. */
  readonly mark?: () => () => void;
  /** The cells for whose content alone the formula is written. */
  readonly held: { readonly sheet: string; readonly area: CellArea }[];
  needsArray: boolean;
}

/** A call written in built-in functions: one text, or the text of each cell of its table. */
export type WrittenCall = { readonly text: string } | { readonly table: TableInCells; readonly guard: (first: string) => string };

/** One argument: left out or typed, which is decided here and now, or asked of a cell each time the sheet calculates. */
type Argument =
  | { readonly kind: "settled"; readonly value: CellValue; readonly text: string }
  | { readonly kind: "asked"; readonly text: string; readonly size: Size; readonly held: () => HeldCells | undefined };

/** What the cells of a reference held when the workbook was read. */
interface HeldCells extends Size {
  readonly sheet: string;
  readonly area: CellArea;
  readonly at: (row: number, column: number) => CellReading | undefined;
}

/**
 * One call of ours in built-in functions, guarded: #VALUE! where an input is refused or inputs contradict one another, an error cell's own
 * error, and the answer else. Where the form cannot ask the cells, such as for a chemical formula, it is written for what they held when the
 * workbook was read, and they are noted: it holds no longer than they hold that.
 * @throws CannotWrite
 */
export function writtenCall(call: Call, name: string, scope: Scope, to: WritingTo): WrittenCall {
  const written = asked(call, name, scope, to);
  const takeBack = to.mark?.();
  try {
    return writtenFor(written, written.given);
  } catch (thrown) {
    if (!(thrown instanceof CannotWrite) || thrown.why !== "argumentForm") throw thrown;
    for (const isKnown of KNOWN) {
      takeBack?.();
      const found = forCellsHeld(written, isKnown);
      if (found !== undefined) return found;
    }
    throw thrown;
  }
}

/** A call with its arguments looked at. */
interface AskedCall {
  readonly definition: CellFunction;
  readonly inputs: readonly NamedInput[];
  readonly given: readonly Argument[];
  readonly scope: Scope;
  readonly to: WritingTo;
  /** What the call gives whatever its cells hold. */
  readonly misfit: string | undefined;
}

function asked(call: Call, name: string, scope: Scope, to: WritingTo): AskedCall {
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new CannotWrite("unknownFunction");
  if (definition.inCells === undefined && definition.inManyCells === undefined) throw new CannotWrite("noForm");
  const inputs = Object.entries(definition.inputs);
  if (call.arguments.length > inputs.length) throw new CannotWrite("argumentForm");
  const isLifted = takesRanges(definition);
  // Steps stand on another sheet.
  const hasSteps = definition.hasStepsInCells === true || inputs.some(([, { shape }]) => shape === "column");
  const isQualified = scope.isQualified || (to.workings !== undefined && hasSteps);
  const inner = isLifted ? scope : within(scope, { isOnEach: false, isSingle: false, isQualified });
  const given = inputs.map(([, input], index) => argumentOf(call.arguments[index], input, inner, to));
  const sizes = given.map((one) => (one.kind === "asked" ? one.size : ONE));
  const misfit = isLifted && !scope.isSingle ? sizeProblem(sizes) : undefined;
  if (misfit === undefined && isLifted && !scope.isSingle && !sizes.every(isOne)) to.needsArray = true;
  if (!isLifted && inputs.some(([, { shape }], index) => shape === "cell" && !isOne(sizes[index] ?? ONE))) throw new CannotWrite("argumentForm");
  return { definition, inputs, given, scope, to, misfit };
}

function writtenFor({ definition, inputs, scope, to, misfit }: AskedCall, given: readonly Argument[]): WrittenCall {
  const problem = settledProblem(definition, inputs, given);
  if (problem !== undefined) return { text: problem };
  const settledText = settledWords(definition, inputs, given);
  if (settledText !== undefined) return { text: settledText };
  if (misfit !== undefined) return { text: misfit };
  return guarded(definition, inputs, given, scope, to);
}

type IsKnown = (input: Input<unknown>) => boolean;

/** Of which inputs the cells' own content is taken, the least of them first: what only the program reads, then all that are no column. */
const KNOWN: readonly IsKnown[] = [
  (input) => input.shape === "cell" && input.takes?.kind === "text",
  (input) => input.shape === "cell" && (input.takes?.kind === "text" || input.takes?.kind === "choice" || input.takes?.kind === "anything"),
  ({ shape }) => shape === "cell",
];

// Each other content of the cells has a form of its own in the formula.
const MOST_CONTENTS = 20;

/** The call for what the cells held; undefined where they were blank, or held too many things. */
function forCellsHeld(written: AskedCall, isKnown: IsKnown): WrittenCall | undefined {
  const { definition, inputs, given, to, misfit } = written;
  const known = given.flatMap((one, index) => {
    const input = inputs[index]?.[1];
    const cells = one.kind === "asked" && input !== undefined && isKnown(input) ? one.held() : undefined;
    return one.kind === "asked" && cells !== undefined ? [{ index, one, held: cells }] : [];
  });
  if (known.length === 0 || misfit !== undefined) return undefined;
  const contents = contentsOf(known.map(({ held }) => held));
  if (contents.length === 0 || contents.length > MOST_CONTENTS) return undefined;
  if (written.scope.place.isUnfilled === true && contents.some((content) => content.some((one) => held(one) === BLANK))) return undefined;
  const forms = contents.flatMap((content) => {
    const settledHere = content.map((reading) => settled(held(reading)));
    // A required cell that is blank may be filled in yet, with whatever.
    if (settledHere.some(({ value }, index) => value === BLANK && !isOptional(inputs[known[index]?.index ?? 0]))) return [];
    const here = given.map((one, index) => settledHere[known.findIndex((other) => other.index === index)] ?? one);
    const isChanged = known.map(({ one }, index) => `(${changed(one.text, content[index])})`).join("+");
    return [{ isChanged, form: formOrNone(written, here) }];
  });
  if (forms.length === 0 || forms.some(({ form }) => form === undefined)) return undefined;
  const says = refusal(changedSinceShared(known.map(({ index }) => inputs[index]?.[0] ?? "")));
  const note = (): void => void to.held.push(...known.map(({ held: { sheet, area } }) => ({ sheet, area })));
  const [only] = forms;
  if (only?.form !== undefined && forms.length === 1 && contents.length === 1) {
    note();
    return only.form;
  }
  if (forms.some(({ form }) => form !== undefined && "table" in form)) return undefined;
  note();
  const text = forms.reduceRight(
    (rest, { isChanged, form }) => `IF(${isChanged},${rest},${form !== undefined && "text" in form ? form.text : ""})`,
    says,
  );
  return { text: unlessUnfilled(askedOf(inputs, given), definition, given, text) };
}

function formOrNone(written: AskedCall, given: readonly Argument[]): WrittenCall | undefined {
  try {
    return writtenFor(written, given);
  } catch (thrown) {
    if (thrown instanceof CannotWrite && thrown.why === "argumentForm") return undefined;
    throw thrown;
  }
}

const isOptional = (input: NamedInput | undefined): boolean => input?.[1].shape === "cell" && input[1].optional;

function held(reading: CellReading | undefined): CellValue {
  if (reading === undefined) return BLANK;
  if (reading.error !== "") return new CellError(reading.error);
  return reading.value === null || reading.value === "" ? BLANK : reading.value;
}

/** The different rows of contents that stand beside one another, a single cell beside each. */
function contentsOf(cells: readonly HeldCells[]): readonly (readonly (CellReading | undefined)[])[] {
  const [rows, columns] = (["rows", "columns"] as const).map((side) => Math.max(...cells.map((one) => one[side]))) as [number, number];
  const found = new Map<string, readonly (CellReading | undefined)[]>();
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const content = cells.map((one) => one.at(one.rows === 1 ? 0 : row, one.columns === 1 ? 0 : column));
      const key = JSON.stringify(content.map((one) => [one?.value ?? null, one?.error ?? ""]));
      if (!found.has(key)) found.set(key, content);
      if (found.size > MOST_CONTENTS) return [...found.values()];
    }
  return [...found.values()];
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
    const text = writtenInside(call, name, inner, to);
    // Each call writes its arguments several times, so a few within one another fill any memory.
    if (text.length > LONGEST_FORMULA) throw new CannotWrite("tooLong");
    return text;
  };
  const isRepeatable = isCheap(part, scope);
  if (!isRepeatable && input.shape === "cell" && isOne(size) && to.workings !== undefined) {
    const text = written(part, scope, writeCall);
    if (text.length <= LONGEST_REPEATED && !usesAny(part, RANDOM, scope)) return { kind: "asked", text: `(${text})`, size, held: () => undefined };
    if (!usesAny(part, TIED_TO_ITS_CELL, scope) && scope.variables.size === 0) {
      const elsewhere = written(part, within(scope, { isQualified: true, isOnEach: false }), writeCall);
      return { kind: "asked", text: to.workings(scope).block("An argument", 1, 1, () => [[elsewhere]]), size, held: () => undefined };
    }
  }
  if (!isRepeatable && usesAny(part, RANDOM, scope)) throw new CannotWrite("random");
  const text = written(part, scope, writeCall);
  return { kind: "asked", text: isRepeatable ? text : `(${text})`, size, held: () => heldBy(part, scope) };
}

function heldBy(part: Part, scope: Scope): HeldCells | undefined {
  const { heldAt } = scope.place;
  if (part?.type !== "ReferenceIdentifier" || heldAt === undefined) return undefined;
  const named = part.kind === "name" ? namedFormula(scope.tree.textOf(part), scope) : scope;
  const referred = part.kind === "name" ? named.tree.root : part;
  if (referred.type !== "ReferenceIdentifier" || referred.kind === "name") return undefined;
  const { sheet, area } = areaReferred(referred, named);
  if (sheet === undefined) return undefined;
  const [rows, columns] = scope.isSingle ? [1, 1] : [Math.min(area.rows, LONGEST_HELD), area.columns];
  return { sheet, area: { ...area, rows, columns }, rows, columns, at: (row, column) => heldAt(sheet, area.row + row, area.column + column) };
}

// A whole column is looked at no further than that: what stands below refuses.
const LONGEST_HELD = 10_000;

// A longer argument is calculated once, in a cell of its own, where that can be.
const LONGEST_REPEATED = 40;

/** A call inside a formula; a table stands on the sheet of workings, where a reference without its sheet would mean the cells there. */
export function writtenInside(call: Call, name: string, scope: Scope, to: WritingTo): string {
  const isElsewhere = to.workings !== undefined && everyFunction.some((one) => one.name === name && one.gives === "table");
  return textOf(writtenCall(call, name, isElsewhere ? within(scope, { isQualified: true }) : scope, to), scope, to);
}

function textOf(call: WrittenCall, scope: Scope, to: WritingTo): string {
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

const settled = (value: CellValue): Extract<Argument, { readonly kind: "settled" }> => ({ kind: "settled", value, text: settledText(value) });

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
  const asked = askedOf(inputs, given);
  const guard = (text: string): string => unlessUnfilled(asked, definition, given, unlessRefused(asked, unlessContradicted(definition, texts, text)));
  return typeof answer === "string" ? { text: guard(answer) } : { table: answer, guard };
}

const askedOf = (inputs: readonly NamedInput[], given: readonly Argument[]): Asked[] =>
  inputs.flatMap(([name, input], index) => {
    const one = given[index] as Argument;
    return one.kind === "asked" && input.shape === "cell" ? [{ name, input, text: one.text, size: one.size }] : [];
  });

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
