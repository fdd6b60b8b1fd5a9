import type { CellExplanation } from "../../explanation/CellExplanation";
import { explainCell, explainLook } from "../../explanation/explainCell";
import type { CellLook, Workbook } from "../../workbook/Workbook";
import { callArticle } from "./callArticle";
import { runCellArticle } from "./runCellArticle";
import { aroundCalls } from "../../problems/workbook/cellNotes";
import { runCellWords } from "../../problems/paneProblems";
import { element, typedFormula } from "../element";
import { Messages } from "../Messages";
import { replaceKeepingFocus } from "../replaceKeepingFocus";
import { settled } from "../settled";
import type { Tab } from "../tabs";

/** Follows the selection and explains the selected cell. */
export function thisCellTab(workbook: Workbook): Tab {
  const messages = new Messages();
  const page = element("div", { class: "explanation" });
  let inView = false;
  // What the selection told of the cell; explaining it then needs one request more.
  let told: CellLook | undefined;

  const isShown = (): boolean => panel.closest("[hidden]") === null;
  const explain = settled(async (isLatest) => {
    if (!isShown()) return;
    try {
      const look = told;
      told = undefined;
      const explanation = await (look === undefined ? explainCell(workbook) : explainLook(workbook, look));
      if (!isLatest()) return;
      replaceKeepingFocus(page, explanationParts(explanation));
      messages.tell(explanationSummary(explanation));
    } catch (problem) {
      if (!isLatest()) return;
      replaceKeepingFocus(page, []);
      messages.complain(problem);
    }
  });

  const watch = (): void => {
    told = undefined;
    explain();
    if (inView) return;
    inView = true;
    const follow = (look: CellLook): void => {
      told = look;
      explain();
    };
    workbook.onSelection(follow, isShown).catch((problem: unknown) => messages.complain(problem));
  };

  const panel = element("div", { class: "this-cell" }, messages.region, page);
  return { id: "cell", label: "This cell", panel, onShow: watch };
}

const explanationParts = ({ address, cellFormula, shown, calls, ways, around, notes, opening, ofRun }: CellExplanation): HTMLElement[] => [
  element("h2", {}, address.cell, element("small", {}, ` on sheet "${address.sheet}"`)),
  element("p", {}, opening),
  ...(cellFormula === "" || ofRun !== undefined ? [] : [element("p", {}, typedFormula(cellFormula))]),
  ...(shown === "" || cellFormula === "" ? [] : [element("p", { class: "shown" }, "Shows ", element("strong", {}, shown))]),
  ...notes.map((note) => element("p", { class: "note" }, note)),
  ...(ofRun === undefined ? [] : [runCellArticle(ofRun)]),
  ...(cellFormula === "" || ofRun === undefined ? [] : [formulaBehind(cellFormula)]),
  ...ways.map((way) => element("p", { class: "hint" }, way)),
  ...(around === "" ? [] : [element("p", { class: "hint" }, aroundCalls(around))]),
  ...calls.map(callArticle),
];

/** The formula of a run sheet's cell is longer than its explanation, so it waits behind one line. */
const formulaBehind = (formula: string): HTMLElement =>
  element("details", { class: "more" }, element("summary", {}, runCellWords.formula), element("p", {}, typedFormula(formula)));

/** An explanation in a breath, for the live region: the cell, and its answer or what is wrong. */
export function explanationSummary({ address, calls, opening, notes, shown, ofRun }: CellExplanation): string {
  if (ofRun !== undefined) return runCellWords.summary(address.cell, ofRun.name, ofRun.result, ofRun.waitsFor[0] ?? "", notes);
  const [call] = calls;
  if (call === undefined) return [opening, ...notes].join(" ");
  if (call.waiting) return [`${address.cell}, ${call.name}:`, ...notes].join(" ");
  if (call.problem !== undefined) return `${address.cell}, ${call.name}: ${call.problem.message}`;
  if (call.passedOver !== undefined) return `${address.cell} shows ${shown === "" ? "nothing" : shown}. ${call.passedOver}`;
  if (call.result === "") return `${address.cell} shows ${shown === "" ? "nothing" : shown}; ${call.name} is explained below.`;
  return `${address.cell}, ${call.name}: ${call.resultAbout} ${call.result.replace(/\.$/, "")}.`;
}
