import type { AstExpression } from "@borgar/fx";
import { CellProblem, type Answer } from "../../cells/CellProblem";
import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import { nameCalled } from "../../sharing/plain/formula/parts";
import { answerOf, definitionOf } from "./calledFunction";
import { handedOver, oneCell, type BlankForm, type Cells } from "./Cells";
import { BINARY, cellByCell, UNARY } from "./operators";
import { fromFirstOperand, isTooDeep, type Binary } from "./everyPart";

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
  isTooDeep(expression) ? undefined : valueOf(expression, around);

function valueOf(expression: AstExpression, around: Surroundings): Cells | undefined {
  switch (expression.type) {
    case "Literal":
      return oneCell(expression.value);
    case "ErrorLiteral":
      return oneCell(new CellError(expression.value));
    case "ArrayExpression":
      return arrayOf(expression.elements, around);
    case "ReferenceIdentifier":
      return around.referred(expression.value, false);
    case "UnaryExpression":
      return unary(expression.operator, expression.arguments[0], around);
    case "BinaryExpression":
      return binary(expression, around);
    case "CallExpression":
      return called(nameCalled(expression), expression.arguments, around);
    default:
      return undefined;
  }
}

function binary(expression: Binary, around: Surroundings): Cells | undefined {
  const { first, steps } = fromFirstOperand(expression);
  let value = first && valueOf(first, around);
  for (const { operator, arguments: operands } of steps) {
    const operation = BINARY[operator];
    const right = value && operands[1] && valueOf(operands[1], around);
    if (operation === undefined || value === undefined || right === undefined) return undefined;
    value = cellByCell(operation, [value, right]);
  }
  return value;
}

function unary(operator: string, operand: AstExpression | undefined, around: Surroundings): Cells | undefined {
  if (operand === undefined) return undefined;
  if (operator === "#") return operand.type === "ReferenceIdentifier" ? around.referred(operand.value, true) : undefined;
  const cells = valueOf(operand, around);
  if (cells === undefined) return undefined;
  if (operator === "@") return cells.length === 1 && cells[0]?.length === 1 ? cells : undefined;
  const operation = UNARY[operator];
  return operation === undefined ? undefined : cellByCell(operation, [cells]);
}

function called(callee: string, given: readonly (AstExpression | null)[], around: Surroundings): Cells | undefined {
  const definition = definitionOf(callee);
  if (definition === undefined) return builtIn(callee, given, around);
  const read = given.map((argument) => (argument === null ? null : valueOf(argument, around)));
  if (read.includes(undefined)) return undefined;
  const answer = answerOf(
    definition,
    read.map((cells) => (cells ? handedOver(cells, around.blankAs) : null)),
  );
  return Array.isArray(answer) ? answer.map((row) => row.map(cellValueOf)) : oneCell(cellValueOf(answer));
}

function builtIn(callee: string, given: readonly (AstExpression | null)[], around: Surroundings): Cells | undefined {
  if (around.builtIn === undefined || given.includes(null)) return undefined;
  const read = evaluateEach(given as readonly AstExpression[], around);
  return read && around.builtIn(callee.toUpperCase(), read);
}

const cellValueOf = (answer: Answer): CellValue => (answer instanceof CellProblem ? new CellError(answer.code) : answer);

function evaluateEach(expressions: readonly AstExpression[], around: Surroundings): Cells[] | undefined {
  const values = expressions.map((expression) => valueOf(expression, around));
  return values.every((value) => value !== undefined) ? values : undefined;
}

function arrayOf(elements: readonly (readonly AstExpression[])[], around: Surroundings): Cells | undefined {
  const rows = elements.map((row) => evaluateEach(row, around)?.map((cells) => cells[0]?.[0] ?? BLANK));
  return rows.every((row) => row !== undefined) ? rows : undefined;
}
