import { molarMass } from "../../../src/chemistry/molarMass";
import { parseFormula } from "../../../src/chemistry/parseFormula";
import { InputProblem } from "../../../src/problems/InputProblem";
import { hydrates, withoutDots } from "../realCompounds";
import { moreCompounds } from "./compounds";
import { massByHand } from "./countedByHand";
import { BOTH, spellings, tradeWords } from "./tradeWords";

const compounds = [...new Set([...withoutDots, ...hydrates, ...moreCompounds])];

const isRead = (text: string): boolean => {
  try {
    molarMass(parseFormula(text));
    return true;
  } catch (problem) {
    if (problem instanceof InputProblem) return false;
    throw problem;
  }
};

const elementSymbol = /^[A-Z][a-z]?\.?$|^\([A-Z]\)$/;

test("of the words and abbreviations of the trade, in every spelling, none gives a number but the formulas that are also words", () => {
  expect(tradeWords.length).toBeGreaterThan(500);
  const silent = tradeWords.flatMap(spellings).filter((text) => !elementSymbol.test(text) && !BOTH.includes(text) && isRead(text));
  expect(silent).toEqual([]);
});

test("there are more than 1,000 real compounds", () => {
  expect(compounds.length).toBeGreaterThan(1000);
});

test.each(compounds)("parseFormula reads %s, and its molar mass is that of the atoms multiplied out by another route", (text) => {
  const byHand = massByHand(text.replace(/^(Ca|Fe)[23]\+$/, "$1"));
  expect(Math.abs(molarMass(parseFormula(text)) - byHand)).toBeLessThan(1e-6 * byHand);
});
