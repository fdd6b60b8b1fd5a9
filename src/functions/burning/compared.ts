import { burnCompare, type CharAndBurn } from "../../chemistry/burning/burnCompare";
import { burnedAnalysis } from "../../chemistry/burning/burnedAnalysis";
import { burnedFormula } from "../../chemistry/burning/burnedFormula";
import { parseFormula } from "../../chemistry/parseFormula";
import { weighedRun } from "../../residue/weighedRun";
import { analysisGiven } from "./analysisGiven";
import { comparisonNotes } from "./comparisonNotes";
import type { ReadComparison } from "./ReadComparison";

interface Compared {
  readonly comparison: CharAndBurn;
  readonly notes: readonly string[];
}

/** @throws InputProblem for weighings out of order and for a composition that is missing, doubled or cannot be burned */
export function compared(read: ReadComparison): Compared {
  const run = weighedRun(read.vessel, read.dry, read.char, read.ash);
  const ashFraction = run.ash / run.dry;
  const analysis = analysisGiven(read);
  const perGram = analysis === undefined ? burnedFormula(parseFormula(read.formula as string), ashFraction) : burnedAnalysis(analysis, ashFraction);
  return {
    comparison: burnCompare(run.dry, run.char, perGram),
    notes: comparisonNotes(read.ash !== undefined, perGram.solid, analysis, ashFraction),
  };
}
