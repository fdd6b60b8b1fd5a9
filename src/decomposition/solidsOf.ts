import type { Formula } from "../chemistry/Formula";
import { parseFormula } from "../chemistry/parseFormula";
import { chargedSolid, noSolid } from "../problems/functions/decompositionProblems";

/**
 * One solid as weighed.
 * @throws InputProblem for an ion, which is never weighed alone, and as parseFormula
 */
export function solid(text: string, argument: string): Formula {
  const formula = parseFormula(text, argument);
  if (formula.charge !== 0) throw chargedSolid(argument, text);
  return formula;
}

/** Several solids in one text, joined by plus signs: `CaCO3 + MgO`. */
export function solidsOf(text: string, argument: string): readonly Formula[] {
  const parts = partsBetween(text, "+");
  if (parts.some((part) => part === "")) throw noSolid(argument, text);
  return parts.map((part) => solid(part, argument));
}

/** What leaves, as formulas parted by commas, semicolons or plus signs: `Hg, CO2`. */
export const gasesOf = (text: string, argument: string): readonly Formula[] =>
  partsBetween(text, ",;+")
    .filter((part) => part !== "")
    .map((part) => solid(part, argument));

function partsBetween(text: string, marks: string): string[] {
  const parts = [""];
  for (const character of text) {
    if (marks.includes(character)) parts.push("");
    else parts[parts.length - 1] += character;
  }
  return parts.map((part) => part.trim());
}
