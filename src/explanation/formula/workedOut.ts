import type { AstExpression } from "@borgar/fx";
import { CellError, type CellValue } from "../../inputs/CellValue";
import { nameCalled, type Call, type Let } from "../../sharing/plain/formula/parts";
import { isSingle, oneCell, type Cells } from "./Cells";
import { fromFirstOperand, type Binary } from "./everyPart";

export type Arguments = readonly (AstExpression | null)[];

/** How the parts of an expression are worked out; undefined from any of them is undefined for the whole. */
export interface Rules {
  /** What a reference as typed holds, "B7" or for a spill the "B7" of "B7#". */
  readonly referred: (text: string, isSpill: boolean) => Cells | undefined;
  /** An element of a list in braces. */
  readonly element: (part: AstExpression) => CellValue | undefined;
  /** Signs and percent, of one operand. */
  readonly unary: (operator: string, of: Cells) => Cells | undefined;
  readonly binary: (operator: string, left: Cells, right: Cells) => Cells | undefined;
  readonly called: (name: string, given: Arguments, call: Call) => Cells | undefined;
  /** LET; left out where variables are not followed. */
  readonly letting?: (part: Let) => Cells | undefined;
  /** The one cell that @ takes of a part; left out where nothing is known of the place of the formula. */
  readonly intersected?: (part: AstExpression) => Cells | undefined;
}

/** The value of an expression that is not nested too deeply; undefined also for a LAMBDA by itself. */
export function workedOut(expression: AstExpression, rules: Rules): Cells | undefined {
  switch (expression.type) {
    case "Literal":
      return oneCell(expression.value);
    case "ErrorLiteral":
      return oneCell(new CellError(expression.value));
    case "ArrayExpression":
      return each(expression.elements, (row) => each(row, rules.element));
    case "ReferenceIdentifier":
      return rules.referred(expression.value, false);
    case "UnaryExpression":
      return unary(expression.operator, expression.arguments[0], rules);
    case "BinaryExpression":
      return binary(expression, rules);
    case "CallExpression":
      return rules.called(nameCalled(expression), expression.arguments, expression);
    case "LetExpression":
      return rules.letting?.(expression);
    default:
      return undefined;
  }
}

function unary(operator: string, operand: AstExpression | undefined, rules: Rules): Cells | undefined {
  if (operator === "#") return operand?.type === "ReferenceIdentifier" ? rules.referred(operand.value, true) : undefined;
  if (operator === "@" && operand !== undefined && rules.intersected !== undefined) return rules.intersected(operand);
  const cells = operand && workedOut(operand, rules);
  if (cells === undefined) return undefined;
  if (operator === "@") return isSingle(cells) ? cells : undefined;
  return rules.unary(operator, cells);
}

function binary(expression: Binary, rules: Rules): Cells | undefined {
  const { first, steps } = fromFirstOperand(expression);
  let value = first && workedOut(first, rules);
  for (const { operator, arguments: operands } of steps) {
    const right = value && operands[1] && workedOut(operands[1], rules);
    if (value === undefined || right === undefined) return undefined;
    value = rules.binary(operator, value, right);
  }
  return value;
}

/** What is made of each; undefined as soon as one is. */
export function each<From, To>(all: readonly From[], make: (one: From, place: number) => To | undefined): To[] | undefined {
  const made: To[] = [];
  for (let place = 0; place < all.length; place++) {
    const now = make(all[place] as From, place);
    if (now === undefined) return undefined;
    made.push(now);
  }
  return made;
}
