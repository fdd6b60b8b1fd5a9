import { BLANK, CellError, type CellValue } from "../../inputs/CellValue";
import type { CellReading } from "../../workbook/Workbook";
import { isSameNumber } from "../runSheet/isSameNumber";

// A number written by hand or by a script may have been rounded. Programs save 15 figures or more, and fewer than these tell too little.
const FEWEST_FIGURES = 4;
// Room for how the last figure itself is stored.
const HALF_A_STEP = 0.5 + 1e-6;

/** True where a cell holds an answer, or the answer as rounded to the figures that it holds. */
export function isAsSaved(answer: CellValue | undefined, { value }: Pick<CellReading, "value">): boolean {
  if (typeof answer === "number" && typeof value === "number") return isSameNumber(answer, value) || isRounded(answer, value);
  if (answer instanceof CellError) return false;
  // A formula that gives a blank cell shows it as 0 in most programs.
  if (answer === BLANK) return value === 0 || (value ?? "") === "";
  return typeof answer === "string" && typeof value === "string" ? isSameText(answer, value) : (answer ?? "") === (value ?? "");
}

/** Decimals stand behind a comma in some languages, and files end lines in two ways. */
const asWritten = (text: string): string => text.replaceAll(",", ".").replaceAll("\r", "");

const NUMBER = /\d+(?:\.\d+)?(?:E[+-]?\d+)?/gi;
// Excel writes a number in a text with 15 figures, rounded, and others with up to 17 or fewer than 15 where zeros end it ("Numbers are limited to 15
// digits", Excel specifications and limits). The last of 15 may come out one off where the number itself was rounded before.
const LEAST_FIGURES = 15;

/** True for texts that are the same but for how many figures programs write of a number, and for the sign before decimals. */
function isSameText(answer: string, saved: string): boolean {
  const [one, other] = [asWritten(answer), asWritten(saved)];
  if (one === other) return true;
  const [numbers, others] = [one.match(NUMBER) ?? [], other.match(NUMBER) ?? []];
  if (numbers.length !== others.length || one.replace(NUMBER, "#") !== other.replace(NUMBER, "#")) return false;
  return numbers.every((number, place) => number === others[place] || isSameFigures(number, others[place] ?? ""));
}

/** Of two numbers written differently, one has to be written as fully as programs write. */
function isSameFigures(one: string, other: string): boolean {
  const figures = Math.max(figuresOf(one), figuresOf(other));
  const [first, second] = [Number(one), Number(other)];
  if (figures < LEAST_FIGURES) return first === second && /E/i.test(one + other);
  return Math.abs(first - second) <= 10 ** (1 - LEAST_FIGURES) * Math.max(Math.abs(first), Math.abs(second));
}

const figuresOf = (number: string): number => number.replace(/E.*/i, "").replace(".", "").replace(/^0+/, "").length;

/** True for a number saved with fewer figures than it has, all of them right. */
export function isRounded(answer: CellValue | undefined, saved: CellReading["value"]): boolean {
  if (typeof answer !== "number" || typeof saved !== "number") return false;
  const [digits = "", exponent] = saved.toExponential().replace(/^-/, "").split("e");
  const figures = digits.replace(".", "").length;
  return figures >= FEWEST_FIGURES && Math.abs(answer - saved) <= HALF_A_STEP * 10 ** (Number(exponent) - figures + 1);
}
