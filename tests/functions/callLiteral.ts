import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { everyFunction } from "../../src/functions/catalogue";

/** Answers a call whose arguments are numbers, words in quotation marks, TRUE or FALSE, columns in braces, or left out. */
export function callLiteral(cell: string): Answer | Answer[][] {
  const { name, inside } = parts(cell);
  const definition = everyFunction.find((one) => one.name === name);
  if (definition === undefined) throw new Error(`no such function: ${cell}`);
  const answer = callCellFunction(definition, argumentsIn(inside));
  return Array.isArray(answer) && answer.length === 1 && answer[0]?.length === 1 ? (answer[0][0] as Answer) : answer;
}

/** The arguments of such a call as a host hands them over. */
export const literalArguments = (cell: string): unknown[] => argumentsIn(parts(cell).inside);

function parts(cell: string): { name: string; inside: string } {
  const { groups } = /^=RETORT\.(?<name>[A-Z.]+)\((?<inside>.*)\)$/.exec(cell) ?? {};
  if (groups === undefined) throw new Error(`not a call: ${cell}`);
  return { name: groups.name ?? "", inside: groups.inside ?? "" };
}

/** The message of the problem a call answers with, after its code. */
export function problemIn(cell: string): string {
  const answer = callLiteral(cell);
  if (!(answer instanceof CellProblem)) throw new Error(`${cell} gives ${JSON.stringify(answer)}, not a problem`);
  return `${answer.code} ${answer.message}`;
}

const argumentsIn = (inside: string): unknown[] =>
  (inside.match(/(\{[^}]*\}|"[^"]*"|[^,])+|(?<=,|^)(?=,|$)/g) ?? []).map((text) =>
    text.trim().startsWith("{")
      ? text
          .trim()
          .slice(1, -1)
          .split(";")
          .map((item) => [literal(item)])
      : literal(text),
  );

function literal(text: string): unknown {
  const word = text.trim();
  if (word === "") return null;
  if (word.startsWith('"')) return word.slice(1, -1);
  if (word === "TRUE" || word === "FALSE") return word === "TRUE";
  if (word.startsWith("#")) return { type: "Error", basicValue: word };
  return Number(word);
}
