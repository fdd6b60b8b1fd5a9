import type { DryAnalysis } from "../../chemistry/burning/burnedAnalysis";
import { incompleteAnalysis, noComposition, twoCompositions } from "../../problems/burningProblems";
import type { ReadComparison } from "./ReadComparison";

/**
 * The ultimate analysis, or undefined when the formula is given instead.
 * @throws InputProblem when neither or both are given, or the analysis lacks carbon or hydrogen
 */
export function analysisGiven({ formula, carbon, hydrogen, oxygen, nitrogen, sulfur }: ReadComparison): DryAnalysis | undefined {
  const given = Object.entries({ carbon, hydrogen, oxygen, nitrogen, sulfur }).find(([, value]) => value !== undefined);
  if (formula !== undefined) {
    if (given !== undefined) throw twoCompositions(formula, given[0], given[1] as number);
    return undefined;
  }
  if (given === undefined) throw noComposition();
  if (carbon === undefined) throw incompleteAnalysis("carbon");
  if (hydrogen === undefined) throw incompleteAnalysis("hydrogen");
  return { carbon, hydrogen, oxygen: oxygen ?? 0, nitrogen: nitrogen ?? 0, sulfur: sulfur ?? 0 };
}
