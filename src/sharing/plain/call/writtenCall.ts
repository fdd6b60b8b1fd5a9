import { everyFunction } from "../../../functions/catalogue";
import { takesRanges, type CellFunction } from "../../../functions/cellFunction";
import type { TableInCells } from "../../../functions/inCells/Workings";
import { refusal } from "../../../functions/inCells/problemInCells";
import { isTypedText } from "../../../functions/inCells/typedInCells";
import { rangesDoNotFit } from "../../../problems/sharing/plainCellProblems";
import type { Call } from "../formula/parts";
import { CannotWrite } from "../writing/CannotWrite";
import { within, type Scope } from "../writing/Scope";
import { isOne, ONE, type Size } from "../writing/sizeOf";
import type { Argument } from "./Argument";
import { argumentOf } from "./argumentOf";
import { forCellsHeld, KNOWN } from "./forCellsHeld";
import { guardedForm } from "./guardedForm";
import { settledAnswer } from "./settledAnswer";
import type { AskedCall, WritingTo, WrittenCall } from "./WritingTo";

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
      const found = forCellsHeld(written, isKnown, writtenFor);
      if (found !== undefined) return found;
    }
    throw thrown;
  }
}

function asked(call: Call, name: string, scope: Scope, to: WritingTo): AskedCall {
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new CannotWrite("unknownFunction");
  if (definition.inCells === undefined && definition.inManyCells === undefined) throw new CannotWrite("noForm");
  const inputs = Object.entries(definition.inputs);
  if (call.arguments.length > inputs.length) throw new CannotWrite("argumentForm");
  const isLifted = takesRanges(definition);
  const isQualified = scope.isQualified || (to.workings !== undefined && hasSteps(definition));
  const inner = isLifted ? scope : within(scope, { isOnEach: false, isSingle: false, isQualified });
  const given = inputs.map(([, input], index) => argumentOf(call.arguments[index], input, inner, to));
  const sizes = given.map((one) => (one.kind === "asked" ? one.size : ONE));
  const misfit = isLifted && !scope.isSingle ? sizeProblem(sizes) : undefined;
  if (misfit === undefined && isLifted && !scope.isSingle && !sizes.every(isOne)) to.needsArray = true;
  if (!isLifted && inputs.some(([, { shape }], index) => shape === "cell" && !isOne(sizes[index] ?? ONE))) throw new CannotWrite("argumentForm");
  return { definition, inputs, given, scope, to, misfit };
}

/** True where steps stand on another sheet. */
const hasSteps = (definition: CellFunction): boolean =>
  definition.hasStepsInCells === true || Object.values(definition.inputs).some(({ shape }) => shape === "column");

function writtenFor(call: AskedCall, given: readonly Argument[]): WrittenCall {
  const text = settledAnswer(call.definition, call.inputs, given) ?? call.misfit;
  return text === undefined ? guardedForm(call, given) : { text };
}

function sizeProblem(sizes: readonly Size[]): string | undefined {
  for (const side of ["rows", "columns"] as const) {
    const most = Math.max(...sizes.map((size) => size[side]));
    if (sizes.some((size) => size[side] !== 1 && size[side] !== most)) return refusal(rangesDoNotFit);
  }
  return undefined;
}

/** A call inside a formula; a table stands on the sheet of workings, where a reference without its sheet would mean the cells there. */
export function writtenInside(call: Call, name: string, scope: Scope, to: WritingTo): string {
  const definition = everyFunction.find((one) => one.name === name);
  const isTable = definition?.gives === "table";
  const isElsewhere = to.workings !== undefined && definition !== undefined && (isTable || hasSteps(definition));
  // Asked from there or from here, the steps are the same.
  const here = isElsewhere ? within(scope, { isQualified: true, ...(isTable && { isOnEach: false }) }) : scope;
  return to.inside.of(call, here, () => textOf(writtenCall(call, name, here, to), here, to));
}

function textOf(call: WrittenCall, scope: Scope, to: WritingTo): string {
  if ("text" in call) return `(${call.text})`;
  if (to.workings === undefined) throw new CannotWrite("noForm");
  const { table, guard } = call;
  const reference = to
    .workings(scope)
    .block("A table", table.length, table[0]?.length ?? 0, (at) =>
      table.map((row, down) => row.map((text, across) => (down + across === 0 ? guard(text) : unlessError(at(0, 0), text)))),
    );
  to.lasting.set(reference, lastingRows(table));
  return reference;
}

/** A row whose first cell is a heading is always there. */
export const lastingRows = (table: TableInCells): number => table.filter((row) => HEADING.test(row[0] ?? "")).length;

const HEADING = /^"(?:[^"]|"")+"$/;

const unlessError = (first: string, text: string): string => `IF(ISERROR(${first}),${first},${text === "" ? '""' : text})`;

/**
 * The cells of a table that fills them, whose first alone asks what is refused. In error the call leaves the others blank, which no formula can: a
 * text stays an empty text, which reads as a blank one does; where a number may stand the error stands, since an empty text is more than any number
 * to a comparison, and nothing to a sum.
 */
export const tableBehind = (table: TableInCells, guard: (first: string) => string, first: string): TableInCells =>
  table.map((row, down) =>
    row.map((text, across) =>
      down + across === 0 ? guard(text) : isTypedText(text) ? `IF(ISERROR(${first}),"",${text})` : unlessError(first, text),
    ),
  );
