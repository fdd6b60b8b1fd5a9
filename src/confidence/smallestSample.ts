import { commonTareFactor } from "./commonTareFactor";
import { usualCoverage } from "./usualCoverage";

/**
 * Smallest sample, g, whose loss fraction comes out within the wanted expanded uncertainty: k u factor(w) / U, one
 * empty-vessel weighing serving both loads.
 * @param u standard uncertainty of one reading, g
 * @param wantedU expanded uncertainty of the loss fraction, above 0
 * @param expectedLoss share of the sample that will be lost; 0, like 1, asks for the largest sample
 * @param k coverage factor
 */
export const smallestSample = (u: number, wantedU: number, expectedLoss = 0, k = usualCoverage): number =>
  (k * u * commonTareFactor(expectedLoss)) / wantedU;
