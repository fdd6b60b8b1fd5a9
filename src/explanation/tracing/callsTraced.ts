import type { AstExpression } from "@borgar/fx";
import type { RetortCall } from "../../sharing/findCalls";
import type { BlankForm, Cells, Position } from "../formula/Cells";
import { evaluate } from "../formula/evaluate";
import { isTooDeep } from "../formula/everyPart";
import { expressionOf } from "../formula/expressionOf";
import { referredAmong, type ReadCells } from "../formula/readReferences";
import { parseReference } from "../formula/references";
import type { Argument } from "../workOut";
import type { NamesKnown } from "./namesUsed";
import { traced } from "./Trace";
import type { Made, Traced } from "./Traced";

/** What was read for a cell formula. */
export interface InputsAround {
  readonly cells: ReadCells;
  readonly homeSheet: string;
  /** The selected cell's place in what the formula fills, from 0. */
  readonly position: Position;
}

/** A cell formula worked out with one form of a blank cell. */
export interface Trace {
  readonly blankAs: BlankForm;
  readonly traced: Traced;
}

/** The formula worked out for each form of a blank cell; none for one that cannot be read or is nested too deeply. */
export function tracesOf(formula: string, whole: AstExpression | undefined, around: InputsAround, names: NamesKnown): readonly Trace[] {
  if (whole === undefined || isTooDeep(whole)) return [];
  const { cells, homeSheet, position } = around;
  return ([0, null] as const).map((blankAs) => ({
    blankAs,
    traced: traced(whole, formula, {
      blankAs,
      position,
      referred: referredAmong(cells, homeSheet),
      place: (text, spill) => {
        const reference = parseReference(text, homeSheet);
        return reference && { ...reference, spill };
      },
      nameFormula: names.formulaOf,
    }),
  }));
}

/** Which time is explained of several that a LAMBDA works a call out: that of the selected cell where each cell has its own, else the first. */
export function timeOf(times: number, value: Cells | undefined, { row, column }: Position): number {
  const columns = value?.[0]?.length ?? 1;
  return value !== undefined && value.length * columns === times ? row * columns + column : 0;
}

/**
 * The arguments of a call as the formula worked them out.
 * @param made left out for a call on which the formula's own working throws no light: each argument is then worked out by itself
 */
export function argumentsOf(
  { argumentTexts }: RetortCall,
  made: Made | undefined,
  { cells, homeSheet }: InputsAround,
  blankAs: BlankForm,
): readonly Argument[] {
  return argumentTexts.map((text, index): Argument => {
    const expression = text === "" ? undefined : expressionOf(text);
    if (made === undefined)
      return { text, expression, cells: expression && evaluate(expression, { referred: referredAmong(cells, homeSheet), blankAs }) };
    const value = made.given[index] ?? undefined;
    const isTyped = expression?.type === "ReferenceIdentifier" && value?.named === undefined;
    return { text, expression, cells: value?.cells, named: value?.named, place: isTyped ? undefined : value?.place };
  });
}
