import { BLANK, CellError } from "../../../inputs/CellValue";
import { certainNumber, certainSteps, certainSum, certainTruth, type Certain } from "./certain";
import { firstError, valueOf, valuesOf, type Given, type SureFunction } from "./Given";

const NO_NUMBER = new CellError("#DIV/0!");

/** The numbers among the arguments. Texts in cells are passed over; a truth counts in some programs, and a text that stands in the formula in others. */
function numbersIn(given: readonly Given[]): Certain<readonly number[]> {
  const numbers: number[] = [];
  for (const one of given)
    for (const value of valuesOf(one)) {
      if (typeof value === "number") numbers.push(value);
      else if (typeof value === "boolean" || (typeof value === "string" && !one.isReference)) return undefined;
    }
  return numbers;
}

const ofNumbers =
  (of: (numbers: readonly number[]) => Certain<number | CellError>): SureFunction =>
  (...given) => {
    const numbers = numbersIn(given);
    return firstError(given) ?? (numbers && of(numbers));
  };

/** Of single numbers, one an argument. */
const ofValues =
  (of: (...values: number[]) => Certain<number>): SureFunction =>
  (...given) => {
    const values = given.map((one) => {
      const value = valueOf(one);
      return value === undefined ? undefined : certainNumber(value);
    });
    const error = firstError(given);
    if (error !== undefined) return given.every((one) => valueOf(one) !== undefined) ? error : undefined;
    const answer = values.every((value) => value !== undefined) ? of(...values) : undefined;
    return answer !== undefined && Number.isFinite(answer) ? answer : undefined;
  };

const mean = (numbers: readonly number[]): Certain<number> => {
  const sum = certainSum(numbers);
  return sum === undefined ? undefined : sum / numbers.length;
};

function spread(numbers: readonly number[], less: 0 | 1): Certain<number | CellError> {
  if (numbers.length <= less) return NO_NUMBER;
  const middle = mean(numbers);
  return middle === undefined ? undefined : numbers.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (numbers.length - less);
}

const rootOf = (value: Certain<number | CellError>): Certain<number | CellError> => (typeof value === "number" ? Math.sqrt(value) : value);

const sorted = (numbers: readonly number[]): readonly number[] => [...numbers].sort((one, other) => one - other);

function median(numbers: readonly number[]): Certain<number> {
  const inOrder = sorted(numbers);
  const [low, high] = [inOrder[Math.ceil(inOrder.length / 2) - 1], inOrder[Math.floor(inOrder.length / 2)]];
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}

/** The place-th number in order, counted from 1. */
const placed =
  (order: (numbers: readonly number[]) => readonly number[]): SureFunction =>
  (from, place) => {
    const [numbers, at] = [from && numbersIn([from]), valueOf(place)];
    if (from === undefined || place === undefined) return undefined;
    return firstError([from, place]) ?? (numbers !== undefined && typeof at === "number" ? order(numbers)[at - 1] : undefined);
  };

const TEN = 10;
/** Rounded to decimals by what is taken of the steps, which are counted from 0 outwards. */
const toDecimals = (jumpsAt: 0 | 0.5, take: (steps: number) => number): SureFunction =>
  ofValues((value, decimals = 0) => {
    if (!Number.isInteger(decimals)) return undefined;
    const steps = certainSteps(Math.abs(value) * TEN ** decimals, jumpsAt, take);
    return steps === undefined ? undefined : (Math.sign(value) * steps) / TEN ** decimals;
  });

const truths =
  (of: (truths: readonly boolean[]) => boolean): SureFunction =>
  (...given) => {
    const values = given.flatMap(valuesOf).filter((value) => value !== BLANK);
    const known = values.map((value) => certainTruth(value));
    return firstError(given) ?? (known.length > 0 && known.every((one) => one !== undefined) ? of(known) : undefined);
  };

export const sureNumbers: Readonly<Record<string, SureFunction>> = {
  SUM: ofNumbers(certainSum),
  PRODUCT: ofNumbers((numbers) => (numbers.length === 0 ? undefined : numbers.reduce((product, value) => product * value, 1))),
  SUMSQ: ofNumbers((numbers) => numbers.reduce((sum, value) => sum + value ** 2, 0)),
  MIN: ofNumbers((numbers) => (numbers.length === 0 ? 0 : numbers.reduce((least, value) => Math.min(least, value), Infinity))),
  MAX: ofNumbers((numbers) => (numbers.length === 0 ? 0 : numbers.reduce((most, value) => Math.max(most, value), -Infinity))),
  AVERAGE: ofNumbers((numbers) => (numbers.length === 0 ? NO_NUMBER : mean(numbers))),
  MEDIAN: ofNumbers(median),
  "VAR.S": ofNumbers((numbers) => spread(numbers, 1)),
  VAR: ofNumbers((numbers) => spread(numbers, 1)),
  "VAR.P": ofNumbers((numbers) => spread(numbers, 0)),
  VARP: ofNumbers((numbers) => spread(numbers, 0)),
  "STDEV.S": ofNumbers((numbers) => rootOf(spread(numbers, 1))),
  STDEV: ofNumbers((numbers) => rootOf(spread(numbers, 1))),
  "STDEV.P": ofNumbers((numbers) => rootOf(spread(numbers, 0))),
  STDEVP: ofNumbers((numbers) => rootOf(spread(numbers, 0))),
  LARGE: placed((numbers) => [...sorted(numbers)].reverse()),
  SMALL: placed(sorted),
  // What a range holds in error is passed over.
  COUNT: (...given) => numbersIn(given)?.length,
  COUNTA: (...given) => given.flatMap(valuesOf).filter((value) => value !== BLANK).length,
  COUNTBLANK: (given) => given && valuesOf(given).filter((value) => value === BLANK || value === "").length,
  SUMPRODUCT: (...given) => {
    const [first, ...others] = given.map(({ cells }) => cells);
    if (first === undefined || others.some((cells) => cells.length !== first.length || cells[0]?.length !== first[0]?.length)) return undefined;
    const error = firstError(given);
    if (error !== undefined) return error;
    const terms = first.map((row, down) => row.map((value, across) => [value, ...others.map((cells) => cells[down]?.[across] ?? BLANK)])).flat();
    if (terms.flat().some((value) => typeof value === "boolean")) return undefined;
    return certainSum(terms.map((factors) => factors.reduce<number>((product, value) => product * (typeof value === "number" ? value : 0), 1)));
  },
  ABS: ofValues(Math.abs),
  SIGN: ofValues(Math.sign),
  SQRT: ofValues((value) => (value < 0 ? undefined : Math.sqrt(value))),
  EXP: ofValues(Math.exp),
  LN: ofValues((value) => (value > 0 ? Math.log(value) : undefined)),
  LOG10: ofValues((value) => (value > 0 ? Math.log10(value) : undefined)),
  LOG: ofValues((value, base = TEN) => (value > 0 && base > 0 && base !== 1 ? Math.log(value) / Math.log(base) : undefined)),
  POWER: ofValues((value, power) => (value > 0 || (Number.isInteger(power) && (power ?? 0) > 0) ? value ** (power ?? 0) : undefined)),
  PI: (...given) => (given.length === 0 ? Math.PI : undefined),
  ROUND: toDecimals(0.5, Math.round),
  ROUNDUP: toDecimals(0, Math.ceil),
  ROUNDDOWN: toDecimals(0, Math.floor),
  TRUNC: toDecimals(0, Math.floor),
  INT: ofValues((value) => certainSteps(value, 0, Math.floor)),
  MOD: ofValues((value, by) => {
    const steps = by === undefined || by === 0 ? undefined : certainSteps(value / by, 0, Math.floor);
    return steps === undefined || by === undefined ? undefined : value - by * steps;
  }),
  AND: truths((all) => all.every(Boolean)),
  OR: truths((all) => all.some(Boolean)),
  NOT: (given) => {
    const value = valueOf(given);
    const truth = value === undefined || value instanceof CellError ? undefined : certainTruth(value);
    return value instanceof CellError ? value : truth === undefined ? undefined : !truth;
  },
  TRUE: (...given) => (given.length === 0 ? true : undefined),
  FALSE: (...given) => (given.length === 0 ? false : undefined),
};
