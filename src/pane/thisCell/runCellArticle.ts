import type { RunCellExplanation } from "../../explanation/CellExplanation";
import { runCellWords } from "../../problems/paneProblems";
import { element } from "../element";

/** A calculated cell of a run sheet: what it is, its inputs, arithmetic and result, or what it waits for. */
export const runCellArticle = (cell: RunCellExplanation): HTMLElement =>
  element(
    "article",
    { class: "call" },
    element("h3", {}, cell.name),
    ...(cell.block === "" ? [] : [element("p", { class: "hint" }, cell.block)]),
    element("p", {}, cell.about),
    ...(cell.waitsFor.length === 0 ? [] : [waiting(cell.waitsFor)]),
    ...(cell.check === undefined ? [] : checkLines(cell.check)),
    ...(cell.result === "" || cell.check !== undefined ? [] : [element("p", { class: "answer" }, element("strong", {}, cell.result))]),
    ...(cell.plusMinus === "" ? [] : [element("h4", {}, runCellWords.plusMinus), element("p", {}, cell.plusMinus)]),
    ...(cell.inputs.length === 0 ? [] : inputList(cell)),
    ...(cell.working.length === 0
      ? []
      : [element("h4", {}, runCellWords.arithmetic), element("ol", { class: "working" }, ...cell.working.map((line) => element("li", {}, line)))]),
    ...(cell.choices.length === 0 ? [] : [choiceList(cell.choices)]),
    element("h4", {}, runCellWords.source),
    element("p", { class: "source" }, cell.source),
  );

const waiting = (waitsFor: readonly string[]): HTMLElement =>
  element(
    "div",
    { class: "note" },
    element("strong", {}, runCellWords.waitsFor),
    element("ul", {}, ...waitsFor.slice(0, MOST_WAITED).map((one) => element("li", {}, one))),
    ...(waitsFor.length > MOST_WAITED ? [runCellWords.more(waitsFor.length - MOST_WAITED)] : []),
  );

// The next boxes to fill; those after them come by themselves.
const MOST_WAITED = 6;

function checkLines({ looksAt, found, remedy }: NonNullable<RunCellExplanation["check"]>): HTMLElement[] {
  const line = (label: string, text: string): HTMLElement[] => (text === "" ? [] : [element("dt", {}, label), element("dd", {}, text)]);
  const lines = [line(runCellWords.looksAt, looksAt), line(runCellWords.found, found), line(runCellWords.remedy, remedy)];
  return [element("dl", { class: "inputs" }, ...lines.flat())];
}

const inputList = ({ inputs, moreInputs }: RunCellExplanation): HTMLElement[] => [
  element("h4", {}, runCellWords.inputs),
  element(
    "dl",
    { class: "given" },
    ...inputs.map(({ name, value, from }) =>
      element("div", {}, element("dt", {}, name), element("dd", { class: "value" }, value, element("span", { class: "from" }, from))),
    ),
  ),
  ...(moreInputs === 0 ? [] : [element("p", { class: "hint" }, runCellWords.more(moreInputs))]),
];

const choiceList = (choices: RunCellExplanation["choices"]): HTMLElement =>
  element(
    "details",
    { class: "more" },
    element("summary", {}, runCellWords.decides),
    element(
      "ol",
      { class: "working" },
      ...choices.map(({ asked, holds }) => element("li", {}, `${asked}: `, element("strong", {}, holds ? runCellWords.yes : runCellWords.no))),
    ),
  );
