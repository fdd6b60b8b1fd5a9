import { text, type Expression } from "../expressions/Expression";

/** Words of the results, and of the judgement of replicates. */
export const resultWords = {
  heading: "Results, each with its ± standard uncertainty (k = 1)",
  uncertain: "± standard uncertainty (k = 1)",
  column: "Share or count",
  mean: "Mean",
  deviation: "Standard deviation",
  steadySince: "Steady since weigh-in",
  shares: {
    moistureWet: "Moisture, wet basis",
    moistureDry: "Moisture, dry basis",
    volatile: "Volatile fraction of dry sample",
    charYield: "Char yield of dry sample",
    charYieldAshFree: "Char yield, ash-free",
    ash: "Ash of dry sample",
  },
  checkAsh: "check the ash weighing",
  /** "34.801 % ± 0.010 %" of two numbers of percent. */
  withUncertainty: (percent: Expression, uncertainty: Expression) => text`${percent} % ± ${uncertainty} %`,
} as const;

export const replicateWords = {
  heading: "Replicates",
  columns: ["Share", "Finished, n", "Range", "Method's s, from earlier work", "Critical range, 95 %", "Verdict"],
  agree: "agree: within the critical range; report the mean",
  apart: "too far apart: look for a cause, take more results, or report the median and say so",
  known: {
    title: "Repeatability s",
    prompt:
      "Standard deviation of this share between replicates, from earlier work with this method: 0.3% or 0.003. Blank: the replicates are not judged; their own s cannot do that.",
    refusal: "Type a fraction such as 0.003 or 0.3%, or leave the box blank.",
  },
} as const;
