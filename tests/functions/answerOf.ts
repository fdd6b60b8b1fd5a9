import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { burning } from "../../src/functions/burning";

/** What a burning function answers to arguments as a host hands them over; a single cell is taken out of its rectangle. */
export function answerOf(name: string, ...raw: readonly unknown[]): Answer | Answer[][] {
  const definition = burning.find((candidate) => candidate.name === name);
  if (definition === undefined) throw new Error(`no burning function is called ${name}`);
  const answer = callCellFunction(definition, raw);
  return Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
}

/** The same where a number is expected. */
export function numberOf(name: string, ...raw: readonly unknown[]): number {
  const answer = answerOf(name, ...raw);
  if (typeof answer !== "number") throw new Error(`${name}: ${JSON.stringify(answer)} is not a number`);
  return answer;
}

/** The code and message of the problem a call answers with. */
export function problemOf(name: string, ...raw: readonly unknown[]): string {
  const answer = answerOf(name, ...raw);
  if (!(answer instanceof CellProblem)) throw new Error(`${name}: ${JSON.stringify(answer)} is not a problem`);
  return `${answer.code} ${answer.message}`;
}

/** The table a call answers with, row label first. */
export function tableOf(name: string, ...raw: readonly unknown[]): readonly (readonly Answer[])[] {
  const answer = answerOf(name, ...raw);
  if (!Array.isArray(answer)) throw new Error(`${name}: ${JSON.stringify(answer)} is not a table`);
  return answer;
}
