import { cellFormulaText, tooLong } from "../problems/functions/formulaProblems";
import type { Formula } from "./Formula";
import { plainFormula } from "./notation/plain/plainFormula";
import { readFormula } from "./notation/readFormula";

// A limit of sense, chosen here, that also bounds the work for text pasted by mistake; the longest formulas in print stay far below.
const LONGEST = 1000;
// A sheet repeats a few compounds down a column. One place for each of so many characteristic numbers: cheaper than a
// map when all formulas differ, and never more than this is kept.
const PLACES = 256;

const remembered: (Formula | undefined)[] = new Array<Formula | undefined>(PLACES).fill(undefined);

/** A number from the length and three characters of a text; formulas that share it take each other's place. */
function placeOf(text: string): number {
  const { length } = text;
  const mixed = length + 3 * text.charCodeAt(0) + 5 * text.charCodeAt(length >> 1) + 7 * text.charCodeAt(length - 1);
  return mixed % PLACES;
}

/**
 * Reads a chemical formula: `CuSO4·5H2O`, `K4[Fe(CN)6]·3H2O`, `CH1.44O0.66`, `SO4^2-`, `[13C]6H12O6`, `CaCO3(s)`.
 * Nothing is repaired in silence: what could be read another way is either noted or refused.
 * @param argument the name that problems open with
 * @throws InputProblem naming the character, its place from 1 in `text`, and what to do
 */
export function parseFormula(text: string, argument = "formula"): Formula {
  const place = text === "" ? 0 : placeOf(text);
  const known = remembered[place];
  if (known?.text === text) return known;
  if (text.length > LONGEST) throw tooLong({ argument, text, index: 0 }, Array.from(text).length, LONGEST);
  if (text.startsWith("=")) throw cellFormulaText({ argument, text, index: 0 });
  const formula = plainFormula(text) ?? readFormula(text, argument);
  remembered[place] = formula;
  return formula;
}
