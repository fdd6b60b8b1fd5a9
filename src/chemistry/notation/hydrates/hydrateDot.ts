import { isMetal } from "../../isMetal";
import { countDigit, isCapital, isSmallLetter } from "../characters";
import { vulgarFractions } from "../counts/vulgarFractions";
import { elementAt } from "../elementAt";

/**
 * Every mark that joins the parts of a formula, the full stop, which also stands in decimals, first. After the common ones
 * those of other keyboards and scripts: asterisk operator, hyphenation point, katakana middle dots, Greek and phonetic middle dot, black circle.
 */
export const hydrateDots = ".·•∙⋅*\u2217\u2027\u30fb\uff65\u0387\ua78f\u25cf";

const DOT = `[${hydrateDots}]`;
const FRACTION = `[${[...vulgarFractions.keys()].join("")}]`;
const AMOUNT = `(?:[1-9]/[2-9]|[0-9０-９]+(?:[.,][0-9]+)?${FRACTION}?|${FRACTION})`;
// What crystallises along with a salt, and the oxides that minerals and cements are written in.
const COMPANIONS = [
  "H2O|OH2|HOH|D2O|NH3|HCl|HBr|HF|HNO3|H2SO4|H3PO4|CH3OH|CH4O|C2H5OH|CH3CH2OH|C2H6O|CH3COOH|HCOOH|C6H6|C4H8O|C3H7NO",
  "H2O2|N2H4|CH3CN|C2H3N|C5H5N|C3H6O|C4H10O|C7H8|CHCl3|CH2Cl2|C2H6OS|CH4N2O|CO\\(NH2\\)2|H3BO3|NH4Cl|NH4NO3|NH4HSO4",
  "SiO2|Al2O3|Fe2O3|FeO|CaO|MgO|MnO|Na2O|K2O|P2O5|B2O3|TiO2|SO3|SO2|CO2",
  "NaCl|KCl|CaCl2|MgCl2|CaF2|CaCO3|MgCO3|CaSO4|Na2SO4|NaHCO3|Na2CO3|Ca\\(OH\\)2|Mg\\(OH\\)2",
].join("|");
const withSubscripts = COMPANIONS.replace(/\d/g, (digit) => `[${digit}${"₀₁₂₃₄₅₆₇₈₉".charAt(Number(digit))}]`);
const COMPANION = `(?:${AMOUNT}\\s*)?(?:${withSubscripts}|\\((?:${withSubscripts})\\)|\\[(?:${withSubscripts})\\])`;
const STATE = "\\((?:s|l|g|aq)\\)";
const ONE_COMPANION = new RegExp(`\\s*${COMPANION}\\s*(?=$|[)\\]}]|${DOT}|${STATE})`, "y");
const STATE_TO_THE_END = new RegExp(`${STATE}\\s*(?:$|[)\\]}])`, "y");

// What is known of the marks of one text: a chain of companions is walked once, however many marks it has.
let known = "";
const answers = new Map<number, boolean>();

/**
 * True where only complete companions (`[number]H2O`, NH3, an oxide ...) follow a full stop or comma to the end of the
 * formula or bracket, so that the mark between two digits can be a hydrate dot: the second in `CuSO4.5H2O`, none in `CH1.44O0.66`.
 */
export function isHydrateDot(text: string, mark: number): boolean {
  if (text !== known) {
    known = text;
    answers.clear();
  }
  const walked: number[] = [];
  let answer: boolean | undefined;
  for (let at = mark; answer === undefined; at = ONE_COMPANION.lastIndex) {
    answer = answers.get(at);
    if (answer !== undefined) break;
    walked.push(at);
    answer = companionsFrom(text, at);
  }
  for (const at of walked) answers.set(at, answer);
  return answer;
}

/** What one companion behind a mark settles; undefined where another dot follows it, at the last index of the pattern. */
function companionsFrom(text: string, mark: number): boolean | undefined {
  ONE_COMPANION.lastIndex = mark + 1;
  if (!ONE_COMPANION.test(text)) return false;
  const end = ONE_COMPANION.lastIndex;
  if (end === text.length) return true;
  if (hydrateDots.includes(text.charAt(end))) return undefined;
  STATE_TO_THE_END.lastIndex = end;
  return text.charAt(end) !== "(" || STATE_TO_THE_END.test(text);
}

/**
 * True where a full stop and digits stand right behind a metal without a count: `Fe.947O`, a decimal without its 0. Only before a
 * hydrate's water and its like is it a hydrate dot, as in `CH3COONa.3H2O`.
 */
export function isBareDecimal(text: string, mark: number): boolean {
  if (text.charAt(mark) !== "." || !(countDigit(text.charCodeAt(mark + 1)) >= 0)) return false;
  const at = isSmallLetter(text.charCodeAt(mark - 1)) ? mark - 2 : mark - 1;
  if (!isCapital(text.charCodeAt(at))) return false;
  return isMetal(elementAt(text, at) ?? text.slice(at, mark)) && !isHydrateDot(text, mark);
}

/** True where decimals above 1 stand right before a full stop, so that none of the two is sure: `CuSO4.5.H2O`, `H1.5.5O`. */
export function isBehindDecimals(text: string, mark: number): boolean {
  let at = mark - 1;
  while (countDigit(text.charCodeAt(at)) >= 0) at--;
  if (at === mark - 1 || (text.charAt(at) !== "." && text.charAt(at) !== ",")) return false;
  const isWholeZero = text.charAt(at - 1) === "0" && !(countDigit(text.charCodeAt(at - 2)) >= 0);
  return countDigit(text.charCodeAt(at - 1)) >= 0 && !isWholeZero;
}
