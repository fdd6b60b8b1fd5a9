import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";

/** What every spreadsheet gives; undefined where they differ, or where the last digits that they differ in decide. */
export type Certain<T> = T | undefined;

// Spreadsheets keep 15 figures and differ behind them.
const NEXT_TO = 1e-9;
// A difference that is so small beside what it was taken of is 0 in one program and not in another.
const NOTHING_BESIDE = 1e-12;

/** True for numbers that one program may call equal and another not. */
export const areNextTo = (one: number, other: number): boolean => one !== other && Math.abs(one - other) <= NEXT_TO * Math.max(Math.abs(one), Math.abs(other)); // prettier-ignore

/** A sum or difference; undefined where it is all but 0 beside its terms. */
export function certainSum(terms: readonly number[]): Certain<number> {
  let [sum, size] = [0, 0];
  for (const term of terms) {
    sum += term;
    size += Math.abs(term);
  }
  return sum !== 0 && Math.abs(sum) <= NOTHING_BESIDE * size ? undefined : sum;
}

/** The number that stands in arithmetic: a blank is 0. Undefined for a text, which programs take differently. */
export const certainNumber = (value: CellValue): Certain<number> =>
  value === BLANK ? 0 : typeof value === "boolean" ? Number(value) : typeof value === "number" ? value : undefined;

/** What a condition comes to. */
export const certainTruth = (value: CellValue): Certain<boolean> => {
  const number = certainNumber(value);
  return number === undefined ? undefined : number !== 0;
};

// As many figures as every program writes of a number in a text, and the sizes that none writes with an exponent.
const FIGURES = 12;
const [SMALLEST, LARGEST] = [1e-4, 1e12];

/** The text that stands for a value in a text, decimals behind a point; undefined where programs or languages write it differently. */
export function certainText(value: CellValue): Certain<string> {
  if (value === BLANK) return "";
  if (typeof value === "string") return value;
  if (typeof value !== "number") return undefined;
  const isPlain = value === 0 || (Math.abs(value) >= SMALLEST && Math.abs(value) < LARGEST);
  return isPlain && Number(value.toPrecision(FIGURES)) === value ? String(value) : undefined;
}

/** Below 0, 0 or above 0, as one value comes before another; undefined where that depends on the program or the language. */
export function certainOrder(one: CellValue, other: CellValue, isForEquality: boolean): Certain<number> {
  const [left, right] = [one === BLANK ? blankBeside(other) : one, other === BLANK ? blankBeside(one) : other];
  if (left instanceof CellError || right instanceof CellError || typeof left === "symbol" || typeof right === "symbol") return undefined;
  if (typeof left === "number" && typeof right === "number") return areNextTo(left, right) ? undefined : left - right;
  if (typeof left === "string" && typeof right === "string") {
    if (left.toLowerCase() === right.toLowerCase()) return 0;
    return isForEquality ? 1 : undefined;
  }
  // Numbers come before texts, and texts before TRUE and FALSE; some programs have no truths but 0 and 1.
  if (typeof left === "boolean" || typeof right === "boolean") return typeof left === typeof right ? Number(left) - Number(right) : undefined;
  return typeof left === "number" ? -1 : 1;
}

const blankBeside = (other: CellValue): CellValue => (typeof other === "string" ? "" : typeof other === "boolean" ? false : 0);

/** A number cut or rounded to steps by a function; undefined beside the place where it jumps. @param jumpsAt 0 at whole steps, 0.5 half-way between */
export function certainSteps(value: number, jumpsAt: 0 | 0.5, take: (steps: number) => number): Certain<number> {
  const whole = Math.round(value);
  // A whole number of steps is one in every program where it needed no arithmetic to be one.
  if (jumpsAt === 0 && value === whole) return whole;
  const distance = Math.abs(Math.abs(value - Math.floor(value)) - jumpsAt);
  const isBeside = Math.min(distance, 1 - distance) <= NEXT_TO * Math.max(1, Math.abs(value));
  return isBeside ? undefined : take(value);
}
