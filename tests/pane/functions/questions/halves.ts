import { seededUniform } from "../../../numerics/seededUniform";
import { asked } from "./asked";

// The same halves everywhere.
const SEED = 20261126;

function shuffled<T>(items: readonly T[], seed: number): T[] {
  const next = seededUniform(seed);
  return items
    .map((item) => ({ item, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

const order = shuffled(asked, SEED);

/** The half that phrases and weights may be mended by. */
export const tuned = order.slice(0, Math.floor(order.length / 2));

/** The half that nothing is ever mended by. */
export const heldOut = order.slice(tuned.length);
