import { burnCompare, type CharAndBurn } from "../../chemistry/burning/burnCompare";
import { analysisSum, burnedAnalysis, burnedFormula, type DryAnalysis } from "../../chemistry/burning/burnedGram";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import { parseFormula } from "../../chemistry/parseFormula";
import {
  AIR_NITROGEN,
  incompleteAnalysis,
  NO_ASH_WEIGHED,
  noComposition,
  openAnalysis,
  SOLIDS_OF_FORMULA,
  twoCompositions,
} from "../../problems/functions/burningProblems";
import { weighedRun } from "../../residue/weighedRun";

// Outside this an analysis is worth a second look, though real ones reach it. Common practice, no source.
export const SMALLEST_CLOSED = 0.97;
export const LARGEST_CLOSED = 1.03;

/** The inputs as read; undefined where left out or blank. */
interface ReadComparison {
  readonly vessel: number;
  readonly dry: number;
  readonly char: number;
  readonly ash: number | undefined;
  readonly formula: string | undefined;
  readonly carbon: number | undefined;
  readonly hydrogen: number | undefined;
  readonly oxygen: number | undefined;
  readonly nitrogen: number | undefined;
  readonly sulfur: number | undefined;
}

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

/**
 * The ultimate analysis, or undefined when the formula is given instead.
 * @throws InputProblem when neither or both are given, or the analysis lacks carbon or hydrogen
 */
function analysisGiven({ formula, carbon, hydrogen, oxygen, nitrogen, sulfur }: ReadComparison): DryAnalysis | undefined {
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

/**
 * What a reader of the comparison should know beside its numbers.
 * @param solidFraction, ashFraction left after open burning, and ash weighed, g per g of dry sample
 */
function comparisonNotes(isAshWeighed: boolean, solidFraction: number, analysis: DryAnalysis | undefined, ashFraction: number): readonly string[] {
  const ash = isAshWeighed ? [] : [solidFraction > 0 ? SOLIDS_OF_FORMULA : NO_ASH_WEIGHED];
  if (analysis === undefined) return [AIR_NITROGEN, ...ash];
  const sum = analysisSum(analysis, ashFraction);
  const isOpen = sum < SMALLEST_CLOSED - ROUNDING_RESIDUE || sum > LARGEST_CLOSED + ROUNDING_RESIDUE;
  return [AIR_NITROGEN, ...ash, ...(isOpen ? [openAnalysis(sum, SMALLEST_CLOSED, LARGEST_CLOSED)] : [])];
}
