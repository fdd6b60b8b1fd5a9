import type { AstExpression } from "@borgar/fx";
import { BLANK } from "../../inputs/CellValue";
import { cellsOfCall, definitionOf } from "./calledFunction";
import type { BlankForm, Cells } from "./Cells";
import { isTooDeep } from "./everyPart";
import { BINARY, cellByCell, UNARY } from "./operators";
import { each, workedOut, type Arguments, type Rules } from "./workedOut";

/** What an expression is worked out from. */
export interface Surroundings {
  /** What a reference as typed holds, "B7" or for a spill the "B7" of "B7#"; undefined where only the spreadsheet knows. */
  readonly referred: (text: string, isSpill: boolean) => Cells | undefined;
  /** What a function of the spreadsheet gives; left out, or undefined, where only the spreadsheet knows. */
  readonly builtIn?: (name: string, given: readonly Cells[]) => Cells | undefined;
  readonly blankAs: BlankForm;
}

/**
 * The value of an expression, or undefined where only the spreadsheet can work it out (IF, COUNT, names, tables, and what is
 * nested too deeply).
 */
export const evaluate = (expression: AstExpression, around: Surroundings): Cells | undefined =>
  isTooDeep(expression) ? undefined : workedOut(expression, rulesIn(around));

function rulesIn(around: Surroundings): Rules {
  const value = (part: AstExpression): Cells | undefined => workedOut(part, rules);
  const rules: Rules = {
    referred: (text, isSpill) => around.referred(text, isSpill),
    element: (part) => {
      const cells = value(part);
      return cells && (cells[0]?.[0] ?? BLANK);
    },
    unary: (operator, of) => UNARY[operator] && cellByCell(UNARY[operator], [of]),
    binary: (operator, left, right) => BINARY[operator] && cellByCell(BINARY[operator], [left, right]),
    called: (name, given) => called(name, given, value, around),
  };
  return rules;
}

type Worked = (part: AstExpression) => Cells | undefined;

function called(name: string, given: Arguments, value: Worked, { builtIn, blankAs }: Surroundings): Cells | undefined {
  const definition = definitionOf(name);
  if (definition !== undefined) {
    const read = each(given, (part) => (part === null ? null : value(part)));
    return read && cellsOfCall(definition, read, blankAs);
  }
  if (builtIn === undefined) return undefined;
  const read = each(given, (part) => (part === null ? undefined : value(part)));
  return read && builtIn(name.toUpperCase(), read);
}
