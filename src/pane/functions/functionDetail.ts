import type { CellFunction, Example, Shown } from "../../functions/cellFunction";
import { functionPageFile, isTable, shownText, signature } from "../../help/functionPage";
import { aboutInput } from "../../inputs/aboutInput";
import type { Input } from "../../inputs/Input";
import type { Workbook } from "../../workbook/Workbook";
import { button, element, typedFormula } from "../element";
import { Messages } from "../Messages";
import { chosenExample, exampleWith, type NamedInSearch } from "./exampleWith";
import { searchWords } from "./searchWords";

/** One function in full, with the way back to the list, and with what was searched for in its example. */
export function functionDetail(
  workbook: Workbook,
  definition: CellFunction,
  named: NamedInSearch,
  onBack: () => void,
): { page: HTMLElement; heading: HTMLElement } {
  const example = exampleWith(definition, named);
  const isPutIn = example.cell !== chosenExample(definition).cell;
  const notes = isPutIn ? named.substances.flatMap(({ substance }) => substance.takenAs ?? []) : [];
  const messages = new Messages();
  const heading = element("h2", { tabindex: "-1" }, definition.name);
  const put = button("Put into the selected cell", "primary", () => void messages.report(put, () => putIntoCell(workbook, example.cell)));
  const page = element(
    "article",
    { class: "function" },
    button("← All functions", "plain", onBack),
    heading,
    element("p", {}, definition.summary),
    element("p", {}, typedFormula(`=${signature(definition)}`)),
    ...(definition.caution === undefined ? [] : [element("p", { class: "caution-box" }, element("strong", {}, "Caution. "), definition.caution)]),
    element("h3", {}, "Inputs"),
    element("dl", { class: "inputs" }, ...Object.entries(definition.inputs).flatMap(inputLines)),
    element("h3", {}, "Example"),
    exampleBlock(isPutIn ? example : (definition.examples[0] ?? example)),
    ...(isPutIn ? [element("p", { class: "hint" }, [searchWords.putIn(named), ...notes].join(" "))] : []),
    put,
    element("p", { class: "hint" }, "Puts the example there; then replace its numbers with your own cells. The cell must be blank."),
    messages.region,
    element("h3", {}, "Source"),
    element("p", {}, definition.source),
    element("p", {}, element("a", { href: `help/${functionPageFile(definition.name)}`, target: "_blank", rel: "noopener" }, "Reference page")),
  );
  return { page, heading };
}

async function putIntoCell(workbook: Workbook, formula: string): Promise<string> {
  const address = await workbook.selectedCell();
  await workbook.writeFormula(address, formula);
  return `Put into ${address.cell} on sheet "${address.sheet}". Now replace its numbers with your own cells.`;
}

const inputLines = ([name, input]: [string, Input<unknown>]): HTMLElement[] => [
  element("dt", {}, element("code", {}, name), ...(input.optional ? [" ", element("span", { class: "tag" }, "optional")] : [])),
  element("dd", {}, aboutInput(input), ...(input.choices === undefined ? [] : [` One of ${input.choices.map((word) => `"${word}"`).join(", ")}.`])),
  ...(input.detail === undefined ? [] : [element("dd", { class: "detail" }, input.detail)]),
];

const exampleBlock = ({ cell, gives, about }: Example): HTMLElement =>
  element(
    "div",
    { class: "example" },
    typedFormula(cell),
    isTable(gives) ? spilled(gives) : element("p", { class: "answer" }, `gives ${shownText(gives)}`),
    ...(about === undefined ? [] : [element("p", { class: "hint" }, about)]),
  );

const spilled = (rows: readonly (readonly Shown[])[]): HTMLElement =>
  element(
    "div",
    { class: "wide", tabindex: "0", role: "group", "aria-label": "The example's answer" },
    element(
      "table",
      { class: "numbers" },
      element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((cell) => element("td", {}, shownText(cell)))))),
    ),
  );
