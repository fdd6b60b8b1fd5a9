import { callCellFunction } from "../../cells/callCellFunction";
import { CellProblem, type Answer, problemOf } from "../../cells/CellProblem";
import { everyFunction, NAMESPACE } from "../../functions/catalogue";
import type { CellFunction } from "../../functions/cellFunction";
import { CellError, type CellValue } from "../../inputs/CellValue";
import { tooManyArguments } from "../../problems/inputProblems";
import { catalogueName } from "../../sharing/catalogueName";
import { handedOver, oneCell, type BlankForm, type Cells } from "./Cells";

/** The cell function that a name in a cell formula calls, in typed or stored form; undefined for any other function. */
export function definitionOf(callee: string): CellFunction | undefined {
  const name = catalogueName(callee);
  return name === undefined ? undefined : byName.get(name);
}

const byName: ReadonlyMap<string, CellFunction> = new Map(everyFunction.map((definition) => [definition.name, definition]));

/** What a call gives; with more arguments than the function takes, what the local workbook says of them. */
export function answerOf(definition: CellFunction, rawArguments: readonly unknown[]): Answer | Answer[][] {
  const most = Object.keys(definition.inputs).length;
  if (rawArguments.length > most) return problemOf(tooManyArguments(`${NAMESPACE}.${definition.name}`, rawArguments.length, most));
  return callCellFunction(definition, rawArguments);
}

/** The same in cells, of arguments in cells, null for one left out. */
export function cellsOfCall(definition: CellFunction, given: readonly (Cells | null)[], blankAs: BlankForm): Cells {
  const answer = answerOf(
    definition,
    given.map((cells) => cells && handedOver(cells, blankAs)),
  );
  return Array.isArray(answer) ? answer.map((row) => row.map(cellValueOf)) : oneCell(cellValueOf(answer));
}

const cellValueOf = (answer: Answer): CellValue => (answer instanceof CellProblem ? new CellError(answer.code) : answer);
