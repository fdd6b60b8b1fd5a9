import { gainWhileDrying } from "../problems/dryingProblems";
import { roundingSlack } from "../weighing/roundingSlack";
import type { BalanceStep } from "./BalanceStep";

// What a balance of repeatability one step may show as a rise at k = 2: 2 sqrt(2) sqrt(1 + 2/12) steps, both readings
// zeroed and rounded.
const STEPS_OF_NOISE = 2 * Math.sqrt(2 * (1 + 2 / 12));

/**
 * Holds a run to what drying does: no weighing above any earlier one by more than the balance strays.
 * @param weights g, as typed
 * @throws NoAnswer naming the first row that gained
 */
export function checkNoGain(weights: readonly number[], step: BalanceStep): void {
  let lowest = 0;
  for (const [i, grams] of weights.entries()) {
    const least = weights[lowest] as number;
    if (grams - least > STEPS_OF_NOISE * step.grams + roundingSlack)
      throw gainWhileDrying(i + 1, grams, lowest + 1, least, step.given ? step.grams : undefined);
    if (grams <= least) lowest = i;
  }
}
