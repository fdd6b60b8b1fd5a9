import { analysisSum, type DryAnalysis } from "../../chemistry/burning/burnedAnalysis";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import { AIR_NITROGEN, NO_ASH, openAnalysis, SOLIDS_OF_FORMULA } from "../../problems/burningProblems";

// Outside this an analysis is worth a second look, though real ones reach it. Common practice, no source.
const SMALLEST_CLOSED = 0.97;
const LARGEST_CLOSED = 1.03;

/**
 * What a reader of the comparison should know beside its numbers.
 * @param solidFraction, ashFraction left after open burning, and ash weighed, g per g of dry sample
 */
export function comparisonNotes(
  isAshWeighed: boolean,
  solidFraction: number,
  analysis: DryAnalysis | undefined,
  ashFraction: number,
): readonly string[] {
  const ash = isAshWeighed ? [] : [solidFraction > 0 ? SOLIDS_OF_FORMULA : NO_ASH];
  if (analysis === undefined) return [AIR_NITROGEN, ...ash];
  const sum = analysisSum(analysis, ashFraction);
  const isOpen = sum < SMALLEST_CLOSED - ROUNDING_RESIDUE || sum > LARGEST_CLOSED + ROUNDING_RESIDUE;
  return [AIR_NITROGEN, ...ash, ...(isOpen ? [openAnalysis(sum, SMALLEST_CLOSED, LARGEST_CLOSED)] : [])];
}
