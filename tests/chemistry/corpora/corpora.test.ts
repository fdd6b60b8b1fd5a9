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

// In Hill's order, as a fuel's formula is written: CHN0.5 counts its nitrogen.
const IN_HILLS_ORDER = ["CBN", "CHN", "CHNS", "CFO", "CIO"];

// A bag, vessel or sample with its number: POT-1 with each dash, and the number as a decimal.
test("nor does a word or an abbreviation of three letters and more with the number of a label behind it", () => {
  const labels = tradeWords.filter((word) => /^[A-Za-z]{3,}$/.test(word)).map((word) => word.toUpperCase());
  expect(labels.length).toBeGreaterThan(300);
  const numbered = labels.flatMap((word) => ["-1", "-2", "−3", "–4", "+1", "--", "0.5", "1.5", "-1."].map((number) => word + number));
  const isMeant = (text: string): boolean => [...BOTH, ...IN_HILLS_ORDER].includes(text.replace(/[^A-Z].*$/, ""));
  const silent = numbered.filter((text) => !isMeant(text) && isRead(text));
  expect(silent).toEqual([]);
});

test("there are more than 1,000 real compounds", () => {
  expect(compounds.length).toBeGreaterThan(1000);
});

test.each(compounds)("parseFormula reads %s, and its molar mass is that of the atoms multiplied out by another route", (text) => {
  const byHand = massByHand(text.replace(/^(Ca|Fe)[23]\+$/, "$1"));
  expect(Math.abs(molarMass(parseFormula(text)) - byHand)).toBeLessThan(1e-6 * byHand);
});
