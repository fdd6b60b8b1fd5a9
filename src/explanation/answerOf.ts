import { callCellFunction } from "../cells/callCellFunction";
import { problemOf, type Answer } from "../cells/CellProblem";
import { NAMESPACE } from "../functions/catalogue";
import type { CellFunction } from "../functions/cellFunction";
import { tooManyArguments } from "../problems/inputProblems";

/** What a call gives; with more arguments than the function takes, what the local workbook says of them. */
export function answerOf(definition: CellFunction, rawArguments: readonly unknown[]): Answer | Answer[][] {
  const most = Object.keys(definition.inputs).length;
  if (rawArguments.length > most) return problemOf(tooManyArguments(`${NAMESPACE}.${definition.name}`, rawArguments.length, most));
  return callCellFunction(definition, rawArguments);
}
