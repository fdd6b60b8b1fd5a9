import { bracketedRoot } from "../numerics/bracketedRoot";
import { gapRatioProbability } from "../numerics/gapRatioProbability";
import { remembered } from "../numerics/remembered";

const VALUES_KEPT = 200;

/**
 * Critical value of Dixon's r10 for n values, integrated. A two-sided test takes half of alpha on each side, as Rorabacher
 * does (Anal. Chem. 63 (1991) 139, doi:10.1021/ac00002a010); below a ratio of 0.5 that is slightly cautious.
 * @param n 3 to 30
 * @param tail alpha for a one-sided test, alpha/2 for a two-sided one
 */
export const dixonCritical = remembered(VALUES_KEPT, (n: number, tail: number): number =>
  bracketedRoot((ratio) => gapRatioProbability(ratio, n) - tail, 0, 1),
);
