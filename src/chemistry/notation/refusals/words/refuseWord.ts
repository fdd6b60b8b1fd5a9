import { abbreviationOf, aMissingNumber, capitalsMixedUp, oneForL, wordInCapitals } from "../../../../problems/functions/formulaProblems";
import type { InputProblem } from "../../../../problems/InputProblem";
import { isKnownIon } from "../../counts/knownIons";
import type { Reading } from "../../Reading";
import { abbreviations, withoutFormula } from "./abbreviations";
import { capitalFormulas } from "./capitalFormulas";
import { everydayWords, missingNumbers } from "./everydayWords";

// What a compound of three capitals and more and a count ends in: CO3 in KHCO3, HF2 in KHF2. Words end so by chance only.
const GROUPS = /(?:[BCHIKNPSUVW]O|[BCHNOPSU]F|[CHN]D|OH|[COHF]I|CN|KN|HS)[2-6]$|[BCNP]H\d\d?$/;
// Longer ones are chains, HCOOCH3, or salts.
const ENDS_OF_CHAINS = /(?:C[HDF]3|NH2|[CN]O3|[SP]O4)$/;
const LONG = 5;
const DEUTERIUM_OR_TRITIUM = /[DT]/;
const SHORTEST_LABEL = 3;
// Longer texts in capitals alone are chains of symbols typed on purpose.
const LONGEST_WORD = 24;
const PLURALS: readonly string[] = ["As", "Cs", "Os", "Hs", "Ds", "Ts", "Es"];
const NO_PLURALS: readonly string[] = ["BAs", "HCOOCs"];
const IN_A_BRACKET = /^[([{]([A-Za-z]+\d*)[)\]}]$/;
// N.D., B.C.; a hydrate dot has a salt with counts about it.
const INITIALS = /^(?:[A-Z]\.)+[A-Z]$/;
// Also the number of a label, POT-1, which reads as a charge.
const STATE_OR_CHARGE = /(?:\((?:s|l|g|aq)\)|[-+−–]{1,9}\d?|\.)$/;

/**
 * Refuses a text that can be spelled in symbols and is a word, an abbreviation or a mark for a missing number: `WOOD`, `PVC`, `POT3`, `NaN`.
 * Capitals alone are a formula only where they are one in use (KOH, HCN); a bracket, (W)OOD, says that the symbols are meant.
 * @throws InputProblem with the formula to type for a known abbreviation
 */
export function refuseWord(reading: Reading, totals: ReadonlyMap<string, number>, charge: number): void {
  const { atoms } = reading;
  const last = atoms.length - 1;
  // Few formulas get further than this: most have a count inside or two symbols with small letters.
  let small = 0;
  for (let index = 0; index <= last; index++) {
    if (index < last && atoms.end[index] !== atoms.countAt[index]) return;
    if ((atoms.symbol[index] as string).length > 1 && ++small > 1) return;
  }
  const typed = reading.text.replace(/\s+/g, "").replace(STATE_OR_CHARGE, "");
  const text = IN_A_BRACKET.exec(typed)?.[1] ?? typed;
  if (charge !== 0 && isKnownIon(totals, charge)) return;
  if (last > 0 && isWord(text, small, atoms.symbol[last] as string)) throw wordProblem(reading, text);
}

function isWord(text: string, small: number, lastSymbol: string): boolean {
  if (INITIALS.test(text)) return true;
  const [, stem = "", digits = ""] = /^([A-Za-z]+)(\d*(?:[.,]\d+)?)$/.exec(text) ?? [];
  if (stem === "" || stem.length > LONGEST_WORD) return false;
  if (missingNumbers.has(text)) return true;
  if (small > 0) return digits === "" && PLURALS.includes(lastSymbol) && !NO_PLURALS.includes(stem) && /^[A-Z]+s$/.test(stem);
  if (digits === "") return !capitalFormulas().has(stem);
  if (stem.length < SHORTEST_LABEL) return stem === "UV";
  if (everydayWords().has(stem) || abbreviations().has(stem) || withoutFormula().has(stem)) return true;
  if (ENDS_OF_CHAINS.test(text)) return false;
  if (stem.length >= LONG || (stem.length > SHORTEST_LABEL && DEUTERIUM_OR_TRITIUM.test(stem))) return !stem.startsWith("C") || !isInHillOrder(stem);
  return !GROUPS.test(text) && !isInHillOrder(stem);
}

/** Carbon, hydrogen, then the alphabet; the alphabet alone without carbon; each symbol once, up to an oxide, nitride or sulfide. */
function isInHillOrder(symbols: string): boolean {
  if (!/[NOS]$/.test(symbols)) return false;
  const rest = symbols.startsWith("C") ? symbols.replace(/^CH?/, "") : symbols;
  return Array.from(rest).every((symbol, index) => index === 0 || symbol > rest.charAt(index - 1));
}

// Chlorides whose L was typed as a capital I or the digit 1, short enough to pass for words.
const WITH_CHLORINE = /^(?:H|K|CH|CF)(C[1I]\d?)$/;

function wordProblem(reading: Reading, text: string): InputProblem {
  const spot = reading.spot(0);
  const chloride = WITH_CHLORINE.exec(text)?.[1] ?? "";
  if (chloride !== "") {
    const place = reading.spot(reading.text.indexOf(chloride));
    if (chloride.startsWith("C1")) return oneForL(place, chloride);
    return capitalsMixedUp(place, "CI", "carbon and iodine", "Cl with a small L for chlorine");
  }
  const singular = text.replace(/s$/, "");
  if (missingNumbers.has(text)) return aMissingNumber(spot);
  const formula = abbreviations().get(singular);
  return formula === undefined ? wordInCapitals(spot, `(${text.charAt(0)})${text.slice(1)}`) : abbreviationOf(spot, formula);
}

/** The problem with a text that could not be read and is a known abbreviation, in whatever capitals; undefined for any other. */
export function abbreviationProblem(argument: string, text: string): InputProblem | undefined {
  const formula = abbreviations().get(text.trim().toUpperCase());
  return formula === undefined ? undefined : abbreviationOf({ argument, text, index: 0 }, formula);
}
