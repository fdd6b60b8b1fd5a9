import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { givenInputs } from "../../src/cells/GivenInput";
import { readInputs } from "../../src/cells/readInputs";
import { everyFunction } from "../../src/functions/catalogue";
import type { CellFunction } from "../../src/functions/cellFunction";

/** What a cell function answers: one value, or a table of them. */
export type Answered = Answer | Answer[][];

export function functionNamed(name: string): CellFunction {
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new Error(`no cell function is called ${name}`);
  return definition;
}

/** The lines in which a function works its answer out, with these values read. */
export const workingOf = (name: string, read: Readonly<Record<string, unknown>>): readonly string[] | undefined =>
  functionNamed(name).working?.(read);

/** The same for a call, its arguments read as they are before it computes. */
export function workingIn(cell: string): readonly string[] | undefined {
  const definition = functionNamed(nameIn(cell));
  return definition.working?.(readInputs(givenInputs(definition, literalArguments(cell))));
}

/** What a call is rewritten to in built-in functions, given the texts of its arguments. */
export const inCellsOf = (name: string, texts: Readonly<Record<string, string>>): string | undefined => functionNamed(name).inCells?.(texts);

/** What a function answers to arguments as a host hands them over; a single cell is taken out of its rectangle. */
export function answerOf(name: string, ...raw: readonly unknown[]): Answered {
  const answer = callCellFunction(functionNamed(name), raw);
  return Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
}

/** The same where a number is expected. */
export const numberOf = (name: string, ...raw: readonly unknown[]): number => asNumber(answerOf(name, ...raw), name);

/** The same where a table is expected, row label first. */
export const tableOf = (name: string, ...raw: readonly unknown[]): Answer[][] => asTable(answerOf(name, ...raw), name);

/** The code and message of the problem it answers with. */
export const problemOf = (name: string, ...raw: readonly unknown[]): string => asProblem(answerOf(name, ...raw), name);

/** Answers a call whose arguments are numbers, words in quotation marks, TRUE or FALSE, columns in braces, or left out. */
export function callLiteral(cell: string): Answered {
  const { name, inside } = parts(cell);
  return answerOf(name, ...argumentsIn(inside));
}

export const numberIn = (cell: string): number => asNumber(callLiteral(cell), cell);
export const tableIn = (cell: string): Answer[][] => asTable(callLiteral(cell), cell);
export const problemIn = (cell: string): string => asProblem(callLiteral(cell), cell);

/** The name of the function that such a call is of. */
export const nameIn = (cell: string): string => parts(cell).name;

/** The arguments of such a call as a host hands them over. */
export const literalArguments = (cell: string): unknown[] => argumentsIn(parts(cell).inside);

/** Cells one below the other, as a host hands a range over. */
export const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

export function asNumber(answer: Answered, call: string): number {
  if (typeof answer !== "number") throw new Error(`${call}: ${told(answer)} is not a number`);
  return answer;
}

export function asTable(answer: Answered, call: string): Answer[][] {
  if (!Array.isArray(answer)) throw new Error(`${call}: ${told(answer)} is not a table`);
  return answer;
}

function asProblem(answer: Answered, call: string): string {
  if (!(answer instanceof CellProblem)) throw new Error(`${call}: ${told(answer)} is not a problem`);
  return `${answer.code} ${answer.message}`;
}

/** A value of a table: the row by its number from 0 or by the beginning of its label, which only one row may have. */
export function inTable(table: readonly (readonly Answer[])[], [row, place]: readonly [row: number | string, column: number]): Answer | undefined {
  if (typeof row === "number") return table[row]?.[place];
  const labelled = table.filter(([label]) => typeof label === "string" && label.startsWith(row));
  if (labelled.length !== 1) throw new Error(`${labelled.length} rows begin with "${row}"`);
  return labelled[0]?.[place];
}

const told = (answer: Answered): string => (answer instanceof CellProblem ? `${answer.code} ${answer.message}` : JSON.stringify(answer));

function parts(cell: string): { name: string; inside: string } {
  const { groups } = /^=RETORT\.(?<name>[A-Z.]+)\((?<inside>.*)\)$/.exec(cell) ?? {};
  if (groups === undefined) throw new Error(`not a call: ${cell}`);
  return { name: groups.name ?? "", inside: groups.inside ?? "" };
}

/** The texts of the arguments of such a call, "" for one left out. */
export const argumentTexts = (cell: string): string[] => textsIn(parts(cell).inside);

const textsIn = (inside: string): string[] => (inside.match(/(\{[^}]*\}|"[^"]*"|[^,])+|(?<=,|^)(?=,|$)/g) ?? []).map((text) => text.trim());

const argumentsIn = (inside: string): unknown[] =>
  textsIn(inside).map((text) => (text.startsWith("{") ? column(text.slice(1, -1).split(";").map(literal)) : literal(text)));

function literal(text: string): unknown {
  const word = text.trim();
  if (word === "") return null;
  if (word.startsWith('"')) return word.slice(1, -1);
  if (word === "TRUE" || word === "FALSE") return word === "TRUE";
  if (word.startsWith("#")) return { type: "Error", basicValue: word };
  const number = Number(word);
  if (Number.isNaN(number)) throw new Error(`not a literal: ${word}`);
  return number;
}
