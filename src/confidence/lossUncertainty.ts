import { readingTooCoarse } from "../problems/confidenceProblems";
import { weighingsInOrder } from "../weighing/weighingsInOrder";
import { commonTareFactor } from "./commonTareFactor";
import { separateTaringFactor } from "./separateTaringFactor";

// The propagation is linear: simulated spreads are up to 1.2 % wider at a twentieth of the sample mass, 5 % at a tenth.
const LARGEST_SHARE = 0.1;

/** A loss fraction and how well it is known. */
export interface UncertainLoss {
  /** Sample before heating, g. */
  readonly sample: number;
  /** Share of the sample lost. */
  readonly loss: number;
  /** Standard uncertainty of that share when one empty-vessel weighing serves both loads. */
  readonly commonTare: number;
  /** Standard uncertainty of that share when both net masses were zeroed for themselves. */
  readonly separateTaring: number;
}

/**
 * A loss fraction, (before - after) / (before - vessel), with its standard uncertainty: GUM (JCGM 100:2008) equation 10.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param before, after vessel with the sample, g
 * @param u standard uncertainty of one reading, g
 * @throws InputProblem when the weighings are not in the order vessel <= after <= before, vessel < before
 * @throws NoAnswer when u is more than a tenth of the sample
 */
export function lossUncertainty(vessel: number, before: number, after: number, u: number): UncertainLoss {
  weighingsInOrder({ vessel, before, after });
  const sample = before - vessel;
  if (u > LARGEST_SHARE * sample) throw readingTooCoarse(u, sample);
  const loss = (before - after) / sample;
  return { sample, loss, commonTare: (u / sample) * commonTareFactor(loss), separateTaring: (u / sample) * separateTaringFactor(loss) };
}
