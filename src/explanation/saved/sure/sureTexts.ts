import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import { certainNumber, certainSteps, certainText, type Certain } from "./certain";
import { firstError, valueOf, valuesOf, type Given, type SureFunction } from "./Given";

// Beyond these programs count characters, and change their case, differently.
const SIMPLE = /^[\x20-\x7e]*$/;

/** Of one text and whole numbers behind it. */
const ofText =
  (of: (text: string, ...numbers: number[]) => Certain<CellValue>): SureFunction =>
  (first, ...others) => {
    const value = valueOf(first);
    const numbers = others.map(valueOf);
    if (value === undefined || numbers.some((one) => one === undefined)) return undefined;
    const error = [value, ...numbers].find((one) => one instanceof CellError);
    if (error !== undefined) return error;
    const text = certainText(value);
    const isWhole = numbers.every((one) => typeof one === "number" && Number.isInteger(one) && one >= 0);
    return text === undefined || !SIMPLE.test(text) || !isWhole ? undefined : of(text, ...(numbers as number[]));
  };

const joined: SureFunction = (...given) => {
  const error = firstError(given);
  const texts = given.flatMap(valuesOf).map(certainText);
  return error ?? (texts.every((text) => text !== undefined) ? texts.join("") : undefined);
};

const is =
  (holds: (value: CellValue) => boolean): SureFunction =>
  (given) => {
    const value = valueOf(given);
    return value === undefined ? undefined : holds(value);
  };

const PATTERN = /^0(?:\.(0+))?(%?)$/;
const PERCENT = 100;
const TEN = 10;

/** A number as text in a plain pattern, such as 0.0 or 0.00%; others hold signs that a language changes. */
const patterned: SureFunction = (given, pattern) => {
  const value: Certain<CellValue> = valueOf(given);
  const wanted = valueOf(pattern);
  if (value instanceof CellError) return value;
  const number = value === undefined || typeof value === "boolean" ? undefined : certainNumber(value);
  const [whole, decimals = "", percent] = (typeof wanted === "string" ? PATTERN.exec(wanted) : null) ?? [];
  if (number === undefined || whole === undefined) return undefined;
  const shown = percent === "%" ? number * PERCENT : number;
  const steps = certainSteps(Math.abs(shown) * TEN ** decimals.length, 0.5, Math.round);
  if (steps === undefined || (steps === 0 && number < 0)) return undefined;
  return `${number < 0 ? "-" : ""}${(steps / TEN ** decimals.length).toFixed(decimals.length)}${percent ?? ""}`;
};

export const sureTexts: Readonly<Record<string, SureFunction>> = {
  CONCATENATE: (...given) => (given.every((one) => valueOf(one) !== undefined) ? joined(...given) : undefined),
  CONCAT: joined,
  TEXT: patterned,
  LEN: ofText((text) => text.length),
  LEFT: ofText((text, count = 1) => text.slice(0, count)),
  RIGHT: ofText((text, count = 1) => (count === 0 ? "" : text.slice(-count))),
  MID: ofText((text, from = 0, count = -1) => (from < 1 || count < 0 ? undefined : text.slice(from - 1, from - 1 + count))),
  TRIM: ofText((text) => text.trim().replace(/ +/g, " ")),
  UPPER: ofText((text) => text.toUpperCase()),
  LOWER: ofText((text) => text.toLowerCase()),
  EXACT: (one: Given | undefined, other: Given | undefined) => {
    const texts = [valueOf(one), valueOf(other)].map((value) => (typeof value === "string" ? value : undefined));
    return texts.includes(undefined) ? undefined : texts[0] === texts[1];
  },
  ISNUMBER: is((value) => typeof value === "number"),
  ISTEXT: is((value) => typeof value === "string"),
  ISBLANK: is((value) => value === BLANK),
  ISERROR: is((value) => value instanceof CellError),
  ISNA: is((value) => value instanceof CellError && value.code === "#N/A"),
  ISERR: is((value) => value instanceof CellError && value.code !== "#N/A"),
  NA: (...given) => (given.length === 0 ? new CellError("#N/A") : undefined),
  N: (given) => {
    const value = valueOf(given);
    return value === undefined || typeof value === "number" || value instanceof CellError ? value : typeof value === "boolean" ? Number(value) : 0;
  },
};
