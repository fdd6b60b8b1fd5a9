import type { ArgumentProblem } from "../problems/ArgumentProblem";
import { blankInput, notA, numberAsText, outOfBounds, type Place } from "../problems/inputProblems";
import { PassedError } from "../problems/PassedError";
import { BLANK, CellError, type CellValue } from "./CellValue";
import type { CellInput } from "./Input";
import type { Bound, NumberRule } from "./NumberRule";

/** A required input of one number that follows a rule. */
export const numberInput = (about: string, rule: NumberRule): CellInput<number> => ({
  shape: "cell",
  about,
  called: rule.called,
  unit: rule.unit,
  optional: false,
  zero: rule.zeroIsBlank ? "nothing" : rule.zeroIsNone === true ? "none" : "value",
  takes: { kind: "number", rule },
  isBlank: (value) => isBlankNumber(value, rule),
  read: (value, argument) => readNumber(value, { argument }, rule),
});

/** A required number, or one word for nothing, which reads as 0; capitals and outer spaces do not matter. A cell of 0 is what the rule says. */
export const numberOrWord = (about: string, rule: NumberRule, word: string): CellInput<number> => {
  const plain = numberInput(about, rule);
  const isWord = (value: CellValue): boolean => typeof value === "string" && value.trim().toLowerCase() === word;
  return {
    ...plain,
    takes: { kind: "number", rule, word },
    read: (value, argument) => (isWord(value) ? 0 : plain.read(value, argument)),
  };
};

const SPACE = 0x20;
const DELETE = 0x7f;

/** True for a cell with nothing in it, or with spaces alone. */
export const isNothing = (value: CellValue): boolean =>
  value === BLANK || (typeof value === "string" && !beginsPlainly(value) && value.trim() === "");

/** True where the first character is a visible one of ASCII, as in most text: cheaper than trimming every cell of a long column. */
const beginsPlainly = (text: string): boolean => {
  const code = text.charCodeAt(0);
  return code > SPACE && code < DELETE;
};

/** Blank as this rule sees it: the host hands a blank cell over as 0, null or "". */
export const isBlankNumber = (value: CellValue, rule: NumberRule): boolean => isNothing(value) || (rule.zeroIsBlank && value === 0);

/** The bound of what cannot be negative. */
export const BELOW_ZERO: Bound = { below: 0, says: "below zero" };

/** Nothing weighed or timed, and no ratio of such, comes near; what is made of two such numbers stays finite. */
export const LARGEST = 1e15;

const LOOKS_LIKE_A_NUMBER = /^[-+]?(\d+([.,]\d+)*|[.,]\d+)\s*%?$/;

/**
 * The number a cell holds.
 * @throws PassedError when the cell shows an error
 * @throws InputProblem for a blank cell, text, and a number that breaks the rule
 */
export function readNumber(value: CellValue, place: Place, rule: NumberRule): number {
  if (typeof value !== "number" || (value === 0 && rule.zeroIsBlank)) throw noNumber(value, place, rule);
  const broken = Number.isFinite(value) ? (brokenBound(value, rule) ?? beyondSense(value)) : "not a finite number";
  if (broken !== undefined) throw outOfBounds(place, value, rule.unit, broken, rule.advice);
  // A 0 that a subtraction has left with a minus sign is a 0.
  return value + 0;
}

/** A loop: it runs for every cell of a long column. */
function brokenBound(value: number, { bounds }: NumberRule): string | undefined {
  if (bounds !== undefined) for (const bound of bounds) if (isBroken(value, bound)) return bound.says;
  return undefined;
}

const isBroken = (value: number, { above, from, upTo, below, decimals }: Bound): boolean =>
  !(above !== undefined && value <= above) &&
  !(from !== undefined && value < from) &&
  !(upTo !== undefined && value > upTo) &&
  !(below !== undefined && value >= below) &&
  !(decimals !== undefined && Math.abs(value - Math.floor(value) - decimals) >= SAME_DECIMALS);

/** Decimals as near as this are the same: far above what binary numbers below a million lose, far below what anybody types. */
export const SAME_DECIMALS = 1e-9;

function noNumber(value: CellValue, place: Place, rule: NumberRule): ArgumentProblem {
  if (value instanceof CellError) return new PassedError(value.code, place.argument, place.row);
  if (value === BLANK || isBlankNumber(value, rule)) return blankInput(place, rule.advice, rule.zeroIsBlank);
  if (typeof value === "string" && LOOKS_LIKE_A_NUMBER.test(value.trim())) return numberAsText(place, value);
  return notA(place, value, rule.called, rule.advice);
}

const beyondSense = (value: number): string | undefined => (Math.abs(value) > LARGEST ? `beyond ${LARGEST} either way` : undefined);
