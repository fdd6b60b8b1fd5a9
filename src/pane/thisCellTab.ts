import { explainCell } from "../explanation/explainCell";
import type { CellExplanation } from "../explanation/CellExplanation";
import type { Workbook } from "../workbook/Workbook";
import { callArticle } from "./callArticle";
import { element, typedFormula } from "./element";
import { explanationSummary } from "./explanationSummary";
import { Messages } from "./Messages";
import { settled } from "./settled";
import type { Tab } from "./tabs";

/** Follows the selection and explains the selected cell. */
export function thisCellTab(workbook: Workbook): Tab {
  const messages = new Messages();
  const page = element("div", { class: "explanation" });
  let inView = false;

  const explain = settled(async (isLatest) => {
    if (panel.closest("[hidden]") !== null) return;
    try {
      const explanation = await explainCell(workbook, await workbook.selectedCell());
      if (!isLatest()) return;
      page.replaceChildren(...explanationParts(explanation));
      messages.tell(explanationSummary(explanation));
    } catch (problem) {
      if (!isLatest()) return;
      page.replaceChildren();
      messages.complain(problem);
    }
  });

  const watch = (): void => {
    explain();
    if (inView) return;
    inView = true;
    workbook.onSelection(explain).catch((problem: unknown) => messages.complain(problem));
  };

  const panel = element("div", { class: "this-cell" }, messages.region, page);
  return { id: "cell", label: "This cell", panel, onShow: watch };
}

const explanationParts = ({ address, cellFormula, shown, calls, notes, opening }: CellExplanation): HTMLElement[] => [
  element("h2", {}, address.cell, element("small", {}, ` on sheet "${address.sheet}"`)),
  element("p", {}, opening),
  ...(cellFormula === "" ? [] : [element("p", {}, typedFormula(cellFormula))]),
  ...(shown === "" || cellFormula === "" ? [] : [element("p", { class: "shown" }, "Shows ", element("strong", {}, shown))]),
  ...notes.map((note) => element("p", { class: "note" }, note)),
  ...calls.map(callArticle),
];
