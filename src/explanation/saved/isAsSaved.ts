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
  return typeof answer === "string" && typeof value === "string" ? asWritten(answer) === asWritten(value) : (answer ?? "") === (value ?? "");
}

/** Decimals stand behind a comma in some languages, and files end lines in two ways. */
const asWritten = (text: string): string => text.replaceAll(",", ".").replaceAll("\r", "");

/** True for a number saved with fewer figures than it has, all of them right. */
export function isRounded(answer: CellValue | undefined, saved: CellReading["value"]): boolean {
  if (typeof answer !== "number" || typeof saved !== "number") return false;
  const [digits = "", exponent] = saved.toExponential().replace(/^-/, "").split("e");
  const figures = digits.replace(".", "").length;
  return figures >= FEWEST_FIGURES && Math.abs(answer - saved) <= HALF_A_STEP * 10 ** (Number(exponent) - figures + 1);
}
