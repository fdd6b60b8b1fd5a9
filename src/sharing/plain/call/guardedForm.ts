import { takesRanges, type CellFunction } from "../../../functions/cellFunction";
import type { TableInCells, Workings } from "../../../functions/inCells/Workings";
import { problemInCells, refusal } from "../../../functions/inCells/problemInCells";
import type { CellInput, Input } from "../../../inputs/Input";
import { answerTo, isNumberOf, refusedInCells } from "../../../inputs/refusedInCells";
import { ArgumentProblem } from "../../../problems/ArgumentProblem";
import { refusedInputs } from "../../../problems/sharing/plainCellProblems";
import { CannotWrite } from "../writing/CannotWrite";
import type { Scope } from "../writing/Scope";
import { isOne, type Size } from "../writing/sizeOf";
import type { Argument, NamedInput } from "./Argument";
import type { AskedCall, WritingTo, WrittenCall } from "./WritingTo";

/** The form of a call over its cells, behind what the function refuses of them. */
export function guardedForm({ definition, inputs, scope, to }: AskedCall, given: readonly Argument[]): WrittenCall {
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

export const askedOf = (inputs: readonly NamedInput[], given: readonly Argument[]): Asked[] =>
  inputs.flatMap(([name, input], index) => {
    const one = given[index] as Argument;
    return one.kind === "asked" && input.shape === "cell" ? [{ name, input, text: one.text, size: one.size, truths: one.truths }] : [];
  });

/** A settled input that reads as left out is handed on as left out. */
function textFor(input: Input<unknown>, given: Argument): string {
  if (given.kind === "asked") return input.shape === "cell" && input.takes?.kind === "anything" ? namedAsTruth(given) : given.text;
  return input.shape === "cell" && input.optional && input.read(given.value, "") === undefined ? "" : given.text;
}

/** What takes anything is handed a text for a truth that is a number to the program. */
function namedAsTruth({ text, truths }: Extract<Argument, { readonly kind: "asked" }>): string {
  return truths === undefined ? text : `IF(ISNUMBER(MATCH(${text},${truths},0)),"TRUE",${text})`;
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
  readonly truths: string | undefined;
}

function unlessRefused(asked: readonly Asked[], text: string): string {
  const looked = asked.flatMap((one) => {
    const refused = refusedInCells(one.input, one.text, one.truths);
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
export function unlessUnfilled(asked: readonly Asked[], definition: CellFunction, given: readonly Argument[], text: string): string {
  if (!takesRanges(definition) || given.every((one) => one.kind === "settled" || isOne(one.size))) return text;
  const awaited = asked.filter(({ input, size }) => !input.optional && !isOne(size));
  if (awaited.length === 0) return text;
  const isZeroBlank = (one: Asked): boolean => answerTo(one.input, 0) !== "value" || one.input.isBlank(0);
  const isNumber = ({ text: cells, truths }: Asked): string => isNumberOf(cells, truths);
  const nothing = awaited.map((one) => `IF(${isNumber(one)},${one.text}=0,TRIM(${one.text})="")`);
  const blanks = awaited.every(isZeroBlank)
    ? []
    : [`(${awaited.map((one) => `IF(${isNumber(one)},${isZeroBlank(one) ? `${one.text}=0` : "0"},TRIM(${one.text})="")`).join("+")}>0)`];
  return `IF(${[...nothing, ...blanks].join("*")},"",${text})`;
}
