// Long enough for a burst of arrow keys, short enough to feel immediate.
const SETTLING_MILLISECONDS = 120;

/**
 * A task that runs once a burst of calls has settled.
 * @param task gets a test that is false once a later run has started, so that a slow answer never replaces a newer one
 */
export function settled(task: (isLatest: () => boolean) => Promise<void>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let latest = 0;
  return () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const run = ++latest;
      void task(() => run === latest);
    }, SETTLING_MILLISECONDS);
  };
}
