import type { WeighingSeries } from "../runsheet/reading/readWeighings";

/** Loads the plotting library, which only a run with something to plot needs. @returns draws weighings into a figure */
export async function loadDryingChart(): Promise<(figure: HTMLElement, series: readonly WeighingSeries[]) => void> {
  nameAKnownLanguage();
  return (await import("./dryingChart")).drawDryingChart;
}

/**
 * Chromium on Linux with the C locale reports the language "en-US@posix", which Intl refuses. The plotting library asks
 * Intl for it as it loads and would fail.
 */
function nameAKnownLanguage(): void {
  try {
    Intl.getCanonicalLocales(navigator.language);
  } catch {
    Object.defineProperty(navigator, "language", { value: "en", configurable: true });
  }
}
