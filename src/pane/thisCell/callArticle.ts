import { LEFT_OUT, type CallExplanation, type ExplainedProblem, type ExplainedTable, type InputRow } from "../../explanation/CellExplanation";
import { element } from "../element";

/** One explained call: inputs, arithmetic, answer or problem, source. */
export const callArticle = (call: CallExplanation): HTMLElement =>
  element(
    "article",
    { class: "call" },
    element("h3", {}, call.name),
    element("p", { class: "hint" }, call.summary),
    ...(call.passedOver === undefined ? [] : [element("p", { class: "note" }, call.passedOver)]),
    ...(call.problem === undefined ? [] : [problemBox(call.problem, call.waiting)]),
    ...(call.result === "" ? [] : [answerLine(call)]),
    ...(call.table === undefined ? [] : [tableBlock(call.table)]),
    element("h4", {}, "Inputs", ...(call.extent === "" ? [] : [element("small", {}, ` for ${call.extent}`)])),
    element("dl", { class: "given" }, ...call.inputs.filter((input) => isShown(input)).map(inputBlock)),
    ...leftOutLine(call.inputs.filter((input) => !isShown(input))),
    ...moreOnInputs(call.inputs.filter((input) => isShown(input) && !input.atFault)),
    ...(call.working.length === 0 ? [] : [element("h4", {}, "Arithmetic"), workingBlock(call.working)]),
    element("h4", {}, "Source"),
    element("p", { class: "source" }, call.source),
    ...(call.caution === "" ? [] : [element("p", { class: "caution-box" }, element("strong", {}, "Caution. "), call.caution)]),
  );

const problemBox = ({ code, message }: ExplainedProblem, waiting: boolean): HTMLElement =>
  waiting
    ? element("p", { class: "note" }, element("strong", {}, "Not yet. "), message)
    : element("p", { class: "problem" }, element("strong", { class: "code" }, code), " ", message);

const answerLine = ({ resultAbout, result }: CallExplanation): HTMLElement =>
  element("p", { class: "answer" }, element("span", {}, resultAbout), element("strong", {}, result));

const inputBlock = ({ name, about, detail, value, from, atFault }: InputRow): HTMLElement =>
  element(
    "div",
    { class: atFault ? "at-fault" : undefined },
    element("dt", {}, name, ...(atFault ? [element("span", { class: "tag" }, "look here")] : [])),
    element("dd", { class: "value" }, value, ...(from === "" ? [] : [element("span", { class: "from" }, from)])),
    element("dd", { class: "about" }, about, ...(atFault && detail !== undefined ? [` ${detail}`] : [])),
  );

/** What is left out fills no rows, unless it is what the problem is about. */
const isShown = ({ value, atFault }: InputRow): boolean => value !== LEFT_OUT || atFault;

const leftOutLine = (inputs: readonly InputRow[]): HTMLElement[] =>
  inputs.length === 0 ? [] : [element("p", { class: "hint" }, `Left out: ${inputs.map(({ name }) => name).join(", ")}.`)];

/** What is not needed to follow the numbers waits behind one line; the input that a problem names says it at once. */
function moreOnInputs(inputs: readonly InputRow[]): HTMLElement[] {
  const lines = inputs.flatMap(({ name, detail }) => (detail === undefined ? [] : [element("dt", {}, name), element("dd", {}, detail)]));
  return lines.length === 0
    ? []
    : [element("details", { class: "more" }, element("summary", {}, "More on these inputs"), element("dl", { class: "inputs" }, ...lines))];
}

const workingBlock = (lines: readonly string[]): HTMLElement => element("ol", { class: "working" }, ...lines.map((line) => element("li", {}, line)));

function tableBlock({ rows, firstRow, rowCount }: ExplainedTable): HTMLElement {
  const body = rows.map((row) => element("tr", {}, ...row.map((cell) => element("td", {}, cell))));
  const which = rows.length === rowCount ? `${rowCount} rows` : `Rows ${firstRow} to ${firstRow + rows.length - 1} of ${rowCount}`;
  return element(
    "div",
    { class: "wide", tabindex: "0", role: "group", "aria-label": "The answer" },
    element("table", { class: "numbers" }, element("caption", {}, which), element("tbody", {}, ...body)),
  );
}
