import { text, type Expression } from "../expressions/Expression";

/** Words of the results. */
export const resultWords = {
  heading: "RESULTS (shares)",
  trust: "Trust",
  plusMinus: (sample: number): string => `${sample} ± 95 %`,
  together: "Together",
  shares: {
    moistureWet: "Water, of moist sample",
    moistureDry: "Water, to dry sample",
    volatile: "Left as vapour, of dry",
    charYield: "Stayed as char, of dry",
    charYieldAshFree: "Char without its ash",
    ash: "Ash, of dry",
  },
  withheld: "withheld",
  contradicts: "none: a weight contradicts",
  noCommonValue: "? no common value",
  keptApart: "kept apart",
  trusted: "✓",
  contradicted: (check: number): string => `▲ check ${check}`,
  doubted: (check: number): string => `? check ${check}`,
  foot: (factor: Expression, count: Expression) =>
    text`± per sample: the weighings alone (2 u). ± together: the larger of that and the scatter between samples (factor ${factor} for ${count}).`,
  footOfOne: "± per sample: the weighings alone (2 u, about 95 %).",
  /** "34.80 % ± 0.26 %" of two numbers of percent. */
  withUncertainty: (percent: Expression, uncertainty: Expression) => text`${percent} % ± ${uncertainty} %`,
  plusMinusSign: "±",
  percent: (value: Expression) => text`${value} %`,
} as const;
