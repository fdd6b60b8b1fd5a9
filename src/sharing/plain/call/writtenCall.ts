import { everyFunction } from "../../../functions/catalogue";
import { takesRanges } from "../../../functions/cellFunction";
import type { TableInCells } from "../../../functions/inCells/Workings";
import { refusal } from "../../../functions/inCells/problemInCells";
import { rangesDoNotFit } from "../../../problems/plainCellProblems";
import { CannotWrite, LONGEST_FORMULA } from "../CannotWrite";
import { within, type Scope } from "../Scope";
import { isOne, ONE, type Call, type Size } from "../sizeOf";
import type { WriteCall } from "../written";
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
  // Steps stand on another sheet.
  const hasSteps = definition.hasStepsInCells === true || inputs.some(([, { shape }]) => shape === "column");
  const isQualified = scope.isQualified || (to.workings !== undefined && hasSteps);
  const inner = isLifted ? scope : within(scope, { isOnEach: false, isSingle: false, isQualified });
  const writeCall: WriteCall = (one, called, within) => {
    const text = writtenInside(one, called, within, to);
    // Each call writes its arguments several times, so a few within one another fill any memory.
    if (text.length > LONGEST_FORMULA) throw new CannotWrite("tooLong");
    return text;
  };
  const given = inputs.map(([, input], index) => argumentOf(call.arguments[index], input, inner, to, writeCall));
  const sizes = given.map((one) => (one.kind === "asked" ? one.size : ONE));
  const misfit = isLifted && !scope.isSingle ? sizeProblem(sizes) : undefined;
  if (misfit === undefined && isLifted && !scope.isSingle && !sizes.every(isOne)) to.needsArray = true;
  if (!isLifted && inputs.some(([, { shape }], index) => shape === "cell" && !isOne(sizes[index] ?? ONE))) throw new CannotWrite("argumentForm");
  return { definition, inputs, given, scope, to, misfit };
}

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
  const isElsewhere = to.workings !== undefined && everyFunction.some((one) => one.name === name && one.gives === "table");
  return textOf(writtenCall(call, name, isElsewhere ? within(scope, { isQualified: true }) : scope, to), scope, to);
}

function textOf(call: WrittenCall, scope: Scope, to: WritingTo): string {
  if ("text" in call) return `(${call.text})`;
  if (to.workings === undefined) throw new CannotWrite("noForm");
  const { table, guard } = call;
  return to.workings(scope).block("A table", table.length, table[0]?.length ?? 0, (at) => {
    const first = at(0, 0);
    // What reads the table reads the error of the call, whichever cell it takes.
    return tableBehind(table, guard, first, first);
  });
}

/** The cells of a table whose first cell alone asks what is refused. @param refused what the others show where that one is in error */
export const tableBehind = (table: TableInCells, guard: (first: string) => string, first: string, refused = '""'): TableInCells =>
  table.map((row, down) => row.map((text, across) => (down + across === 0 ? guard(text) : `IF(ISERROR(${first}),${refused},${text})`)));
