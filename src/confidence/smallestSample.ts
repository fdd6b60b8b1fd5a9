import { commonTareFactor } from "./lossUncertainty";
import { usualCoverage } from "./readingUncertainty";

/**
 * Smallest sample, g, whose loss fraction comes out within the wanted expanded uncertainty: k u factor(w) / U, one
 * empty-vessel weighing serving both loads. The uncertainty of the loss fraction, solved for the sample.
 * @param u standard uncertainty of one reading, g
 * @param wantedU expanded uncertainty of the loss fraction, above 0
 * @param expectedLoss share of the sample that will be lost; 0, like 1, asks for the largest sample
 * @param k coverage factor
 */
export const smallestSample = (u: number, wantedU: number, expectedLoss = 0, k = usualCoverage): number =>
  (k * u * commonTareFactor(expectedLoss)) / wantedU;

// USP <41>: twice the standard deviation of weighing may be 0.10 % of the smallest mass, and the standard deviation counts
// as at least 0.41 display steps.
const DEVIATIONS = 2000;
const LEAST_STEPS = 0.41;

/**
 * Smallest mass, g, that the pharmacopoeia's rule lets a balance weigh: 2000 s, s not below 0.41 d (USP <41>).
 * @param repeatability standard deviation s of repeated weighings, g
 * @param readability display step d, g; 0 when the floor does not matter
 */
export const pharmacopoeiaMinimum = (repeatability: number, readability = 0): number =>
  DEVIATIONS * Math.max(repeatability, LEAST_STEPS * readability);
