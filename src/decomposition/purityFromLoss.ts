import { nothingIsLost } from "../problems/functions/decompositionProblems";
import { moistureAboveLoss } from "../problems/functions/residueProblems";
import { decompose, type Decomposition } from "./decompose";
import { SAME_COUNT } from "./residueCounts";

/** A purity by loss on heating, as a share of the dry sample. */
export interface Purity {
  readonly decomposition: Decomposition;
  /** Loss of the dry sample by its dry mass. */
  readonly dryLoss: number;
  /** Not capped: above 1 something else left too. */
  readonly purity: number;
  readonly uncertainty: number | undefined;
}

/**
 * Share of a dry sample that is the compound, from what it lost on heating: p = (loss - moisture) / (1 - moisture) / theoretical loss,
 * u(p) = u(loss) / ((1 - moisture) theoretical loss). Follows from the definition, and holds only if nothing else in the sample loses or gains.
 * @param loss of the sample as weighed in, moisture included, a fraction
 * @param moisture wet basis, a fraction
 * @param u standard uncertainty of the loss
 * @throws InputProblem for a compound that loses nothing, a moisture above the loss, and as decompose
 */
export function purityFromLoss(loss: number, start: string, residue: string, moisture: number, u: number | undefined): Purity {
  const decomposition = decompose(start, residue);
  const theory = decomposition.loss;
  if (theory <= SAME_COUNT) throw nothingIsLost(start, residue);
  if (moisture > loss) throw moistureAboveLoss(moisture, loss);
  const dryLoss = (loss - moisture) / (1 - moisture);
  return { decomposition, dryLoss, purity: dryLoss / theory, uncertainty: u === undefined ? undefined : u / ((1 - moisture) * theory) };
}
