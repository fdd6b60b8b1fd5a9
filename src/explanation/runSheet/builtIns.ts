import { studentTQuantile } from "../../numerics/studentTQuantile";
import type { BuiltIn } from "../../runsheet/expressions/Expression";
import type { CellProblem } from "../../cells/CellProblem";
import { compared, elementwise, error, isError, isTable, number, textOf, type Plain, type Table } from "./Plain";

export type Worked = Exclude<BuiltIn, "IF" | "IFERROR" | "ROW" | "ROWS" | "COLUMN" | "ISFORMULA">;

const all = (values: readonly (Plain | Table)[]): Plain[] => values.flatMap((value) => (isTable(value) ? value.flat() : [value]));
const numbersIn = (values: readonly (Plain | Table)[]): number[] => all(values).filter((value) => typeof value === "number");

/** Of the numbers among the arguments; an error among them is the answer. */
const ofNumbers =
  (of: (numbers: readonly number[]) => Plain) =>
  (...values: (Plain | Table)[]): Plain =>
    all(values).find(isError) ?? of(numbersIn(values));

/** Of plain values, one an argument; an error among them is the answer. */
const ofValues =
  (of: (...values: number[]) => Plain) =>
  (...values: (Plain | Table)[]): Plain => {
    const plain = values.map((value) => (isTable(value) ? error("#VALUE!") : number(value)));
    return (
      (values.find((value) => !isTable(value) && isError(value)) as CellProblem | undefined) ?? plain.find(isError) ?? of(...(plain as number[]))
    );
  };

const each = (of: (value: Plain) => Plain) => (value: Plain | Table | undefined) => elementwise(value ?? null, null, of);

/** Half away from zero, as the decimal that is shown. */
function rounded(value: number, decimals: number): number {
  const shifted = Number(`${Math.abs(value)}e${decimals}`);
  const whole = Math.round(Number.isNaN(shifted) ? Math.abs(value) * 10 ** decimals : shifted);
  return (Math.sign(value) * whole) / 10 ** decimals;
}

const mean = (numbers: readonly number[]): number => numbers.reduce((sum, value) => sum + value, 0) / numbers.length;

const texts =
  (of: (text: string, ...numbers: number[]) => Plain) =>
  (value: Plain | Table = null, ...numbers: (Plain | Table)[]): Plain => {
    const failed = [value, ...numbers].find((one) => !isTable(one) && isError(one));
    return failed === undefined ? of(textOf(value as Plain), ...numbers.map(Number)) : (failed as Plain);
  };

/** Whether a text is that of a criterion, in which * stands for any characters and ? for one, whatever the letter case. */
function matches(value: Plain, wanted: Plain): boolean {
  if (typeof value !== "string" || typeof wanted !== "string") return value !== null && value === wanted;
  const [text, pattern] = [value.toLowerCase(), wanted.toLowerCase()];
  // What the pattern has come to can end at each of these places.
  let ends = new Set([0]);
  for (const sign of pattern) {
    const next = new Set<number>();
    for (const end of ends) {
      if (sign === "*") for (let later = end; later <= text.length; later++) next.add(later);
      else if (end < text.length && (sign === "?" || sign === text.charAt(end))) next.add(end + 1);
    }
    ends = next;
  }
  return ends.has(text.length);
}

/** The same of a criterion that may begin with <>, which all else meets. */
const meets = (value: Plain, wanted: Plain): boolean =>
  typeof wanted === "string" && wanted.startsWith("<>") ? !matches(value, wanted.slice(2)) : !isError(value) && matches(value, wanted);

const MINUTES_PER_DAY = 1440;
const minutesOf = (time: number): number => Math.floor((time - Math.floor(time)) * MINUTES_PER_DAY + 1e-6);

// As spreadsheets number their errors (ECMA-376 Part 1, 18.17.7.96, from memory).
const ERROR_TYPES: Readonly<Record<string, number>> = { "#NULL!": 1, "#DIV/0!": 2, "#VALUE!": 3, "#REF!": 4, "#NAME?": 5, "#NUM!": 6, "#N/A": 7 };

const nth = (sorted: readonly number[], place: Plain): Plain => sorted[Number(place) - 1] ?? error("#NUM!");

const remainder = ofValues((value, by) => (by === 0 ? error("#DIV/0!") : value - by * Math.floor(value / by)));

/** Built-in functions but for those that choose what is worked out, and those that ask where a cell stands. */
export const builtIn: Readonly<Record<Worked, (...values: (Plain | Table)[]) => Plain | Table>> = {
  AND: (...values) => all(values).find(isError) ?? all(values).every(Boolean),
  OR: (...values) => all(values).find(isError) ?? all(values).some(Boolean),
  ISNUMBER: each((value) => typeof value === "number"),
  ISBLANK: each((value) => value === null),
  ISTEXT: each((value) => typeof value === "string"),
  ISERROR: each(isError),
  "ERROR.TYPE": each((value) => (isError(value) ? (ERROR_TYPES[value.code] ?? error("#N/A")) : error("#N/A"))),
  COUNT: (...values) => numbersIn(values).length,
  COUNTA: (...values) => all(values).filter((value) => value !== null).length,
  COUNTIF: (range = [], wanted = null) => all([range]).filter((value) => !isError(value) && matches(value, wanted as Plain)).length,
  COUNTIFS: (...pairs) => {
    const tests = pairs.flatMap((range, index) => (index % 2 === 0 ? [all([range]).map((value) => meets(value, pairs[index + 1] as Plain))] : []));
    return (tests[0] ?? []).filter((_, place) => tests.every((test) => test[place] === true)).length;
  },
  INDEX: (table = [], row = null, column = 1) => {
    if (!isTable(table)) return table;
    const [down, right] = [Number(row), Number(column)];
    if (down === 0) return table;
    return table[down - 1]?.[right - 1] ?? (down >= 1 && down <= table.length ? null : error("#VALUE!"));
  },
  MATCH: (wanted = null, range = []) => {
    const found = all([range]).findIndex(
      (value) => wanted !== null && value !== null && !isError(value) && typeof value === typeof wanted && compared(value, wanted as Plain) === 0,
    );
    return isError(wanted as Plain) ? (wanted as Plain) : found === -1 ? error("#N/A") : found + 1;
  },
  SUM: ofNumbers((numbers) => numbers.reduce((sum, value) => sum + value, 0)),
  SUMPRODUCT: ofNumbers((numbers) => numbers.reduce((sum, value) => sum + value, 0)),
  MAX: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.max(...numbers))),
  MIN: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.min(...numbers))),
  AVERAGE: ofNumbers((numbers) => (numbers.length === 0 ? error("#DIV/0!") : mean(numbers))),
  STDEV: ofNumbers((numbers) =>
    numbers.length < 2 ? error("#DIV/0!") : Math.sqrt(numbers.reduce((sum, value) => sum + (value - mean(numbers)) ** 2, 0) / (numbers.length - 1)),
  ),
  MOD: (value = null, by = null) => elementwise(value, by, (one, other) => remainder(one, other)),
  ROUND: (value = null, decimals = 0) =>
    elementwise(value, null, (one) => {
      const plain = number(one);
      return isError(plain) ? plain : rounded(plain, Number(decimals));
    }),
  ROUNDUP: ofValues((value, decimals) => {
    const shifted = Number((value * 10 ** decimals).toPrecision(15));
    return (Math.sign(value) * Math.ceil(Math.abs(shifted))) / 10 ** decimals;
  }),
  INT: ofValues(Math.floor),
  ABS: (value = null) =>
    elementwise(value, null, (one) => {
      const plain = number(one);
      return isError(plain) ? plain : Math.abs(plain);
    }),
  NA: () => error("#N/A"),
  LARGE: (values = [], place = null) =>
    nth(
      [...numbersIn([values])].sort((one, other) => other - one),
      place as Plain,
    ),
  SMALL: (values = [], place = null) =>
    nth(
      [...numbersIn([values])].sort((one, other) => one - other),
      place as Plain,
    ),
  MEDIAN: ofNumbers((numbers) => {
    const sorted = [...numbers].sort((one, other) => one - other);
    const [low, high] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[Math.floor(sorted.length / 2)]];
    return low === undefined || high === undefined ? error("#NUM!") : (low + high) / 2;
  }),
  // Two-sided, as in spreadsheets.
  TINV: ofValues((outside, degrees) => (degrees < 1 ? error("#NUM!") : studentTQuantile(outside / 2, degrees))),
  N: (value = null) => {
    const one = isTable(value) ? (value[0]?.[0] ?? null) : value;
    return isError(one) || typeof one === "number" ? one : one === true ? 1 : 0;
  },
  CHAR: ofValues((code) => String.fromCharCode(code)),
  HOUR: ofValues((time) => Math.floor(minutesOf(time) / 60)),
  MINUTE: ofValues((time) => minutesOf(time) % 60),
  SQRT: ofValues((value) => (value < 0 ? error("#NUM!") : Math.sqrt(value))),
  LOG10: ofValues((value) => (value <= 0 ? error("#NUM!") : Math.log10(value))),
  FIXED: ofValues((value, decimals) => rounded(value, decimals).toFixed(Math.max(0, decimals))),
  LEFT: texts((text, count = 1) => text.slice(0, count)),
  RIGHT: texts((text, count = 1) => text.slice(-count)),
  MID: texts((text, from = 1, count = 0) => text.slice(from - 1, from - 1 + count)),
  LEN: texts((text) => text.length),
  SUBSTITUTE: (text = null, old = null, by = null, which = null) => {
    const failed = [text, old, by, which].find((one) => !isTable(one) && isError(one));
    if (failed !== undefined) return failed as Plain;
    const parts = textOf(text as Plain).split(textOf(old as Plain));
    const put = textOf(by as Plain);
    if (which === null) return parts.join(put);
    const place = Number(which);
    return place >= parts.length
      ? textOf(text as Plain)
      : [parts.slice(0, place), parts.slice(place)].map((some) => some.join(textOf(old as Plain))).join(put);
  },
  FIND: (wanted = null, text = null) => {
    const [part, whole] = [wanted as Plain, text as Plain];
    if (isError(whole)) return whole;
    const found = textOf(whole).indexOf(textOf(part));
    return found === -1 ? error("#VALUE!") : found + 1;
  },
};
