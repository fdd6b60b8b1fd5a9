import { asNumber, asTable, inTable, type Answered } from "../call";

/** Calls a cell function as a host does, the answer of a single cell taken out of its rectangle. */
export type Call = (name: string, ...raw: readonly unknown[]) => Answered;

/** What is true of a function whatever it is given, or what an independent library says of it. */
export interface Law {
  /** The functions it holds to account: it breaks if any one of them answers wrongly. */
  readonly functions: readonly string[];
  readonly title: string;
  /** @throws where the law is broken */
  readonly hold: (call: Call) => void;
}

/** `law("MOISTURE.WET", "MOISTURE.DRY")("title", (call) => fc.assert(fc.property(...)))`: the answers come from `call` alone. */
export const law =
  (...functions: readonly string[]) =>
  (title: string, hold: (call: Call) => void): Law => ({ functions, title, hold });

/** A call where a number is expected. */
export const numberBy =
  (call: Call) =>
  (name: string, ...raw: readonly unknown[]): number =>
    asNumber(call(name, ...raw), name);

/** A figure of a table: of the row that begins with the label, in the column from 0. */
export const figureBy =
  (call: Call) =>
  (label: string, column: number, name: string, ...raw: readonly unknown[]): number =>
    inTable(asTable(call(name, ...raw), name), [label, column]) as number;

/** The call, with the answers of one function falsified: every number too large by a hundredth and a bit, words by a mark. */
export const falsified =
  (call: Call, culprit: string): Call =>
  (name, ...raw) => {
    const answer = call(name, ...raw);
    return name === culprit ? falsify(answer) : answer;
  };

const TOO_LARGE = 1.01;
const AND_A_BIT = 0.001;

function falsify(answer: Answered): Answered {
  if (typeof answer === "number") return TOO_LARGE * answer + AND_A_BIT;
  if (typeof answer === "string") return /\d/.test(answer) ? answer.replace(/\d+/g, (digits) => String(Number(digits) + 1)) : `not ${answer}`;
  if (!Array.isArray(answer)) return answer;
  const holdsNumbers = answer.flat().some((one) => typeof one === "number");
  // Labels stay as they are, so that a law breaks over a wrong figure and not over a row it cannot find.
  return answer.map((row) => row.map((one) => (holdsNumbers && typeof one !== "number" ? one : (falsify(one) as typeof one))));
}
