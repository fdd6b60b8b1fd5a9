import type { Chart } from "../../../report/chart/Chart";
import { chartsOn } from "../../../report/chart/chartsOn";
import { gatherWords } from "../../../runsheet/words/gatherWords";
import { setupWords } from "../../../runsheet/words/setupWords";
import { sheetWords } from "../../../runsheet/words/sheetWords";
import type { Workbook } from "../../../workbook/Workbook";
import { element } from "../../element";
import { Messages } from "../../Messages";
import { settled } from "../../settled";

const NO_RUN =
  "The selected sheet has no drying table with two weighings yet, no balance check with two rounds, and no gathered runs. Curves appear here as you fill one in.";

/**
 * The curves of the selected sheet, for workbooks that draw none themselves.
 * @param place puts the section where it belongs, told whether the selected sheet is being weighed into; called when that changes
 */
export function chartsSection(workbook: Workbook, place: (isWeighing: boolean) => void): { section: HTMLElement; refresh: () => void } {
  const messages = new Messages();
  const about = element("p", { class: "hint" }, NO_RUN);
  const figures = element("div", { class: "charts" });
  const section = element(
    "section",
    { class: "chart-section", "aria-labelledby": "chart-heading" },
    element("h2", { id: "chart-heading" }, "Curves"),
    about,
    figures,
    messages.region,
  );

  let drawn = "";
  let isWeighing = false;
  const redraw = settled(async (isLatest) => {
    if (section.closest("[hidden]") !== null) return;
    try {
      const { sheet } = await workbook.selectedCell();
      const charts = await chartsOf(workbook, sheet);
      const draw = charts.length === 0 ? undefined : await loadDrawing();
      if (!isLatest()) return;
      messages.tell("");
      if (isWeighing !== charts.length > 0) place((isWeighing = charts.length > 0));
      // Drawn anew only when the sheet or a point changed, so that moving about the sheet leaves the charts and their tables in peace.
      const points = JSON.stringify([sheet, charts]);
      if (points === drawn) return;
      const open = [...figures.querySelectorAll("details")].map((details) => details.open);
      about.textContent = charts.length === 0 ? NO_RUN : `Weighings on sheet "${sheet}".`;
      const made = charts.map(() => element("figure", { class: "chart" }));
      figures.replaceChildren(...made);
      for (const [index, chart] of charts.entries()) {
        const figure = made[index];
        if (figure === undefined) continue;
        draw?.(figure, chart);
        figure.querySelector("details")?.toggleAttribute("open", open[index] ?? false);
      }
      drawn = points;
    } catch (problem) {
      messages.complain(problem);
    }
  });

  workbook.onSelection(redraw).catch((problem: unknown) => messages.complain(problem));
  return { section, refresh: redraw };
}

/** What a sheet with anything to draw holds; any other sheet is asked for these texts alone. */
const SIGNS = [sheetWords.elapsed, setupWords.legend, gatherWords.title];

async function chartsOf(workbook: Workbook, sheet: string): Promise<readonly Chart[]> {
  for (const text of SIGNS) if (await workbook.holdsText(sheet, text)) return chartsOn(await workbook.readUsed(sheet));
  return [];
}

/** Loads the plotting library, which only a sheet with something to plot needs. @returns draws a chart into a figure */
async function loadDrawing(): Promise<(figure: HTMLElement, chart: Chart) => void> {
  nameAKnownLanguage();
  return (await import("./drawChart")).drawChart;
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
