import { endOfDrying } from "../../drying/end/endOfDrying";

type Run = Parameters<typeof endOfDrying>[0];
type End = ReturnType<typeof endOfDrying>;

// A run sheet asks twice for each of its samples: for the rounds to go, and for where its chart's curve ends.
const MOST_REMEMBERED = 12;
const remembered = new Map<string, () => End>();

/** The end of a drying run, reckoned once for runs that are asked for again: a prediction takes some ten milliseconds. */
export function rememberedEnd(run: Run): End {
  const key = JSON.stringify(run);
  const known = remembered.get(key) ?? reckoned(run);
  // The latest asked for is the last to be forgotten.
  remembered.delete(key);
  remembered.set(key, known);
  for (const oldest of remembered.keys()) {
    if (remembered.size <= MOST_REMEMBERED) break;
    remembered.delete(oldest);
  }
  return known();
}

/** An answer, or the problem that there is instead. */
function reckoned(run: Run): () => End {
  try {
    const end = endOfDrying(run);
    return () => end;
  } catch (problem) {
    return () => {
      throw problem;
    };
  }
}
