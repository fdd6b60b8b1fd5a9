import { readingTooCoarse } from "../problems/functions/confidenceProblems";
import { weighingsInOrder } from "../weighing/weighingsInOrder";

// The propagation is linear: simulated spreads are up to 1.2 % wider at a twentieth of the sample mass, 5 % at a tenth.
export const LARGEST_SHARE = 0.1;

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
 * A loss fraction, w = (before - after) / (before - vessel), with its standard uncertainty u / sample times one of the two
 * factors below: GUM (JCGM 100:2008) equation 10. An offset or a scale error of the balance cancels in w and is not counted.
 * @param vessel empty vessel, g (0 when the weighings are net)
 * @param before, after vessel with the sample, g
 * @param u standard uncertainty of one weighing, g; of a weighing before which the balance was zeroed, that zero included
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

/**
 * Standard uncertainty of a loss fraction w, times sample mass over the uncertainty of a weighing, when one empty-vessel
 * weighing serves both loads: sqrt((1-w)^2 + 1 + w^2). The partial derivatives of (m1 - m2) / (m1 - m0), GUM
 * (JCGM 100:2008) equation 10: (1-w)/m for m1, -1/m for m2, w/m for m0. Between sqrt(1.5) and sqrt(2).
 */
export const commonTareFactor = (loss: number): number => Math.sqrt((1 - loss) ** 2 + 1 + loss ** 2);

/**
 * The same when each net mass was zeroed for itself, so that no empty-vessel weighing comes in: sqrt(1 + (1-w)^2), from
 * (1-w)/m for m1 and -1/m for m2. The uncertainty of a zeroed weighing holds both of its roundings and, once, the
 * repeatability of zeroing and weighing together; a factor of sqrt(2) here would count the repeatability twice.
 */
export const separateTaringFactor = (loss: number): number => Math.sqrt(1 + (1 - loss) ** 2);
