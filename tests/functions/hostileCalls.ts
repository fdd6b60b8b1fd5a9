import { callCellFunction } from "../../src/cells/callCellFunction";
import { type Answer, CellProblem, INTERNAL_ERROR } from "../../src/cells/CellProblem";
import type { CellFunction } from "../../src/functions/cellFunction";
import type { Input } from "../../src/inputs/Input";
import { InputProblem } from "../../src/problems/InputProblem";
import { literalArguments } from "./call";

/** What a person, a slip or a spreadsheet puts into a cell where a good value should stand, as a host hands it over. */
const HOSTILE = {
  "a blank cell": null,
  "empty text": "",
  spaces: "  ",
  "a 0": 0,
  text: "n/a",
  "a number with a decimal comma, as text": "35,1",
  "a number with its unit, as text": "35.1 g",
  TRUE: true,
  "an error cell": { type: "Error", basicValue: "#DIV/0!" },
  "a negative number": -1,
  infinity: Infinity,
  "a huge number": 1e300,
  "a percentage": 35,
  kelvin: 293.15,
} as const;

export type Hostile = keyof typeof HOSTILE;

/** What a kind of input is, for this test. */
export interface Kind {
  /** Which hostile values are good ones here, each with the reason. */
  readonly takes?: Readonly<Partial<Record<Hostile, string>>>;
  /** True for a share of something, for which a percentage typed as a plain number is a slip. */
  readonly share?: true;
}

export interface Outcome {
  /** Calls with a hostile value whose answer is not to be had, and what is wrong with it. */
  readonly failures: readonly string[];
  /** The allowances that were needed, as `kind: hostile value`. */
  readonly needed: ReadonlySet<string>;
}

/** The kind of an input as its own reader tells it: what a message calls it, and what it makes of a 0. */
export function kindOf(input: Input<unknown>): string {
  if (input.shape === "column") return `a column: ${input.called}`;
  try {
    const zero = input.read(0, "x");
    if (zero instanceof InputProblem) return input.called;
    return zero === undefined ? `${input.called}, 0 counts as left out` : `${input.called}, 0 is a value`;
  } catch {
    return input.called;
  }
}

/** What holds for a kind that nothing is said of: every hostile value is a slip, a percentage too. */
const STRICTEST: Kind = { share: true };

/**
 * Calls the function with each hostile value in each of its inputs, all else as in the example that gives that input.
 * @param kinds the allowances of each kind; one that is not there has none
 */
export function attack(definition: CellFunction, kinds: Readonly<Record<string, Kind>>): Outcome {
  const failures: string[] = [];
  const needed = new Set<string>();
  Object.entries(definition.inputs).forEach(([argument, input], index) => {
    const kind = kindOf(input);
    const rule = kinds[kind] ?? STRICTEST;
    for (const hostile of hostileTo(input, rule)) {
      const raw = withHostile(definition, index, hostile);
      const answer = callCellFunction(definition, raw);
      const call = `${definition.name}(${argument}: ${hostile})`;
      const defect = defectIn(answer);
      if (namesIt(answer, argument, hostile)) continue;
      if (defect !== undefined) failures.push(`${call} ${defect}`);
      else if (rule.takes?.[hostile] === undefined) failures.push(`${call} answers ${JSON.stringify(answer).slice(0, 120)}; ${allowance(kind)}`);
      else needed.add(`${kind}: ${hostile}`);
    }
  });
  return { failures, needed };
}

/** The arguments of a call with one hostile value in this input, all else as in the example that gives the input. */
function withHostile({ examples, inputs }: CellFunction, index: number, hostile: Hostile): unknown[] {
  // Empty text stands for an input that an example leaves out.
  const given = examples.map(({ cell }) => literalArguments(cell).map((value) => (value === "" ? null : value)));
  const example = given.find((one) => (one[index] ?? null) !== null) ?? given[0] ?? [];
  return Object.values(inputs).map((input, place) => (place === index ? spoilt(input, example, index, hostile) : (example[place] ?? null)));
}

/** The arguments of one such call for each hostile value there is. */
export const hostileArguments = (definition: CellFunction, index: number): unknown[][] =>
  (Object.keys(HOSTILE) as Hostile[]).map((hostile) => withHostile(definition, index, hostile));

/** What to do where the answer is right after all. */
export const allowance = (kind: string): string => `if "${kind}" takes it, give the reason in KINDS of tests/functions/hostile.test.ts`;

const BLANKS: readonly Hostile[] = ["a blank cell", "empty text", "spaces"];

const hostileTo = (input: Input<unknown>, { share }: Kind): readonly Hostile[] =>
  (Object.keys(HOSTILE) as Hostile[]).filter((hostile) => {
    if (hostile === "a percentage") return share === true;
    if (hostile === "kelvin") return input.unit === "°C";
    // A blank where nothing need be given is no slip.
    return !(input.optional && BLANKS.includes(hostile));
  });

/** A column has the value in its second cell, or is blank from end to end; one that no example gives is as long as the first that is given. */
function spoilt(input: Input<unknown>, example: readonly unknown[], index: number, hostile: Hostile): unknown {
  const value = HOSTILE[hostile];
  if (input.shape === "cell") return value;
  const column = Array.isArray(example[index]) ? example[index] : example.find(Array.isArray);
  if (!Array.isArray(column)) throw new Error("no example gives a column");
  return column.map((row: unknown, place) => (BLANKS.includes(hostile) || place === 1 ? [value] : row));
}

const cellsOf = (answer: Answer | Answer[][]): readonly Answer[] => (Array.isArray(answer) ? answer.flat() : [answer]);

/** What may never be answered, whatever was asked. */
function defectIn(answer: Answer | Answer[][]): string | undefined {
  const cells = cellsOf(answer);
  if (cells.length === 0) return "answers nothing";
  if (cells.some((cell) => typeof cell === "number" && !Number.isFinite(cell))) return "answers a number that is none";
  if (cells.some((cell) => typeof cell === "string" && /\b(NaN|Infinity|undefined)\b/.test(cell))) return "speaks of a number that is none";
  if (cells.some((cell) => cell instanceof CellProblem && cell.message === INTERNAL_ERROR)) return "is an internal error";
  return undefined;
}

/** A problem with this argument, or the sentence on it from a function that answers every slip in words. */
function namesIt(answer: Answer | Answer[][], argument: string, hostile: Hostile): boolean {
  const [only, ...more] = cellsOf(answer);
  if (more.length > 0) return false;
  if (!(only instanceof CellProblem)) return typeof only === "string" && hostile !== "an error cell" && only.startsWith(`${argument}: `);
  const code = hostile === "an error cell" ? "#DIV/0!" : "#VALUE!";
  return only.argument === argument && only.message.startsWith(`${argument}: `) && only.code === code;
}
