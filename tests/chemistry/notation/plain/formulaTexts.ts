import { standardAtomicWeights } from "../../../../src/chemistry/standardAtomicWeights";
import { seededUniform } from "../../../numerics/seededUniform";
import { hydrates, withoutDots } from "../../realCompounds";

// Texts for two readers to be compared on: made by the grammar with its doubtful cases often, real formulas with slips of the hand, and noise.

/** Endlessly many texts of one kind, the same for the same seed. */
export interface FormulaTexts {
  readonly fromGrammar: () => string;
  readonly withSlips: () => string;
  readonly noise: () => string;
}

const EVERY_SYMBOL = [...standardAtomicWeights.map(({ symbol }) => symbol), "D", "T"];
const FREQUENT = "C C C H H H O O O N N S P F Cl Br I K Na Ca Mg Fe Al Si Cu Zn Ti Co U V D T".split(" ");
const DOTS = ["·", "·", "·", ".", ".", ".", "•", "*", ",", " · ", ". "];
const COMPANIONS = ["H2O", "H2O", "H2O", "H2O", "D2O", "NH3", "SiO2", "2Ni(OH)2", "2NH4Cl", "H20", "HCl", "Al2(SO4)3"];
const COUNTS = [
  "0",
  "1",
  "01",
  "10",
  "12",
  "13",
  "14",
  "15",
  "18",
  "20",
  "100",
  "203",
  "235",
  "9999999",
  "10000000",
  "0.5",
  "0.66",
  "1.44",
  "2.5",
  "3.10",
];
const ODD_COUNTS = ["00.5", "0.0", "1.", ".5", "0,5", "1,5", "0.0000001", "12.5.6", "½", "1½", "₂", "²", "1/2", "2-", "3+", "^2-", "+"];
const PIECES = [
  ..."CHONSPFIKUVDTCoNaClaeiou0123456789()[].·,-+^ ₂½/=²",
  "H2O",
  "NaN",
  "OH",
  "(s)",
  "(aq)",
  "Co",
  "(II)",
  "(V)",
  "10",
  "·5H2O",
  ".2H2O",
];
const WORDS = "WOOD COCONUT NaN TBD OK KHP TNT THF PVC CaCo3 NaHCo3 Co2 CO2 NaCI NaC1 H20 Fe203 K15NO3 (15NH4)2SO4 H218O Ba14CO3".split(" ");
const REAL = [...withoutDots, ...hydrates, ...hydrates.map((text) => text.replace("·", ".")), ...WORDS];

export function formulaTexts(seed: number): FormulaTexts {
  const uniform = seededUniform(seed);
  const below = (end: number): number => Math.floor(uniform() * end);
  const oneOf = (choices: readonly string[]): string => choices[below(choices.length)] as string;
  const often = (share: number): boolean => uniform() < share;

  const count = (): string => {
    if (often(0.35)) return "";
    if (often(0.6)) return String(2 + below(8));
    if (often(0.4)) return String(10 + below(90));
    return often(0.9) ? oneOf(COUNTS) : oneOf(ODD_COUNTS);
  };
  const unit = (depth: number): string =>
    depth < 5 && often(0.15) ? `(${units(depth + 1)})${count()}` : (often(0.8) ? oneOf(FREQUENT) : oneOf(EVERY_SYMBOL)) + count();
  const units = (depth: number): string => Array.from({ length: 1 + below(4) }, () => unit(depth)).join("");
  const part = (): string => {
    const amount = often(0.7) ? String(1 + below(12)) : often(0.4) ? oneOf(COUNTS) : "";
    return oneOf(DOTS) + amount + (often(0.8) ? oneOf(COMPANIONS) : units(1));
  };
  const chain = (): string =>
    ["C", "H", "N", "O", "S"].map((symbol) => (often(0.75) ? symbol + (often(0.8) ? String(2 + below(40)) : "") : "")).join("");
  const fromGrammar = (): string =>
    (often(0.03) ? String(below(20)) : "") + (often(0.2) ? chain() : units(0)) + (often(0.35) ? part() : "") + (often(0.1) ? part() : "");

  const slip = (text: string): string => {
    const at = below(text.length + 1);
    const [before, after] = [text.slice(0, at), text.slice(at)];
    return [
      () => before + oneOf(PIECES) + after,
      () => before + after.slice(1),
      () => before + oneOf(PIECES) + after.slice(1),
      () => before + after.charAt(1) + after.charAt(0) + after.slice(2),
      () => before + (often(0.5) ? after.charAt(0).toLowerCase() : after.charAt(0).toUpperCase()) + after.slice(1),
      () => before + after.charAt(0) + after,
      () => text + oneOf(REAL),
    ][below(7)]?.() as string;
  };
  const withSlips = (): string => Array.from({ length: 1 + below(3) }).reduce<string>(slip, oneOf(REAL));

  const noise = (): string => Array.from({ length: below(10) }, () => oneOf(PIECES)).join("");
  return { fromGrammar, withSlips, noise };
}
