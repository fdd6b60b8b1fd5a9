import { asked } from "./asked";

// A published generator of 32 bits ("mulberry32"), so that the halves are the same everywhere.
const SEED = 20261126;

function drawn(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function shuffled<T>(items: readonly T[], seed: number): T[] {
  const next = drawn(seed);
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
