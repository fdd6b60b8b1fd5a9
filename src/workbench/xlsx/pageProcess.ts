/** As much of Node's process as the file library and its streams ask for, in a page. */
export const process = {
  browser: true,
  env: {},
  version: "",
  nextTick: (run: (...given: unknown[]) => void, ...given: unknown[]): void => queueMicrotask(() => run(...given)),
};
