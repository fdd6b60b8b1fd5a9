import { readWeighings, type WeighingSeries } from "../../runsheet/reading/readWeighings";
import { sheetWords } from "../../runsheet/words/sheetWords";
import type { Workbook } from "../../workbook/Workbook";
import { element } from "../element";
import { Messages } from "../Messages";
import { settled } from "../settled";

const NO_RUN = "The selected sheet has no drying table with two weighings yet. The chart appears here as you fill one in.";
const POINTS_FOR_A_LINE = 2;

/**
 * The drying chart of the selected sheet, for workbooks that draw none themselves.
 * @param place puts the section where it belongs, told whether the selected sheet is being weighed into; called when that changes
 */
export function dryingChartSection(workbook: Workbook, place: (isWeighing: boolean) => void): { section: HTMLElement; refresh: () => void } {
  const messages = new Messages();
  const about = element("p", { class: "hint" }, NO_RUN);
  const figure = element("figure", { class: "chart" });
  const section = element(
    "section",
    { class: "chart-section", "aria-labelledby": "chart-heading" },
    element("h2", { id: "chart-heading" }, "Drying chart"),
    about,
    figure,
    messages.region,
  );

  let drawn = "";
  let isWeighing = false;
  const redraw = settled(async (isLatest) => {
    if (section.closest("[hidden]") !== null) return;
    try {
      const { sheet } = await workbook.selectedCell();
      const series = await weighingsOn(workbook, sheet);
      const draw = series.length === 0 ? undefined : await loadDryingChart();
      if (!isLatest()) return;
      messages.tell("");
      if (isWeighing !== series.length > 0) place((isWeighing = series.length > 0));
      // Drawn anew only when the sheet or a weighing changed, so that moving about the sheet leaves the chart and its table in peace.
      const weighings = JSON.stringify([sheet, series]);
      if (weighings === drawn) return;
      const tableIsOpen = figure.querySelector("details")?.open ?? false;
      about.textContent = series.length === 0 ? NO_RUN : `Weighings on sheet "${sheet}".`;
      figure.replaceChildren();
      draw?.(figure, series);
      figure.querySelector("details")?.toggleAttribute("open", tableIsOpen);
      drawn = weighings;
    } catch (problem) {
      messages.complain(problem);
    }
  });

  workbook.onSelection(redraw).catch((problem: unknown) => messages.complain(problem));
  return { section, refresh: redraw };
}

/** Only a sheet with the heading of a drying table is read; any other is asked for that one text. */
async function weighingsOn(workbook: Workbook, sheet: string): Promise<readonly WeighingSeries[]> {
  if (!(await workbook.holdsText(sheet, sheetWords.elapsed))) return [];
  return readWeighings(await workbook.readUsed(sheet)).filter(({ points }) => points.length >= POINTS_FOR_A_LINE);
}

/** Loads the plotting library, which only a run with something to plot needs. @returns draws weighings into a figure */
async function loadDryingChart(): Promise<(figure: HTMLElement, series: readonly WeighingSeries[]) => void> {
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
