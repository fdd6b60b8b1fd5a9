import { NAMESPACE } from "../functions/catalogue";
import { takesRanges, type CellFunction, type Example, type Shown } from "../functions/cellFunction";
import { aboutInput, blankRuleOf } from "../inputs/aboutInput";
import type { Input } from "../inputs/Input";
import { plainNumber } from "../problems/quoted";
import { withoutForm } from "../problems/sharing/plainCellProblems";
import { code, escaped, page, table } from "./markup";

/** The file of a function's reference page: "moisture.wet.html". */
export const functionPageFile = (name: string): string => `${name.toLowerCase()}.html`;

/** The reference page of one cell function, made from its definition alone. */
export const functionPage = (definition: CellFunction): string =>
  page(
    definition.name,
    [
      `<p><a href="index.html">All functions</a></p>`,
      `<h1>${escaped(definition.name)}</h1>`,
      `<p>${escaped(definition.summary)}</p>`,
      `<p>${code(`=${signature(definition)}`)}</p>`,
      ...(definition.caution === undefined ? [] : [`<p class="caution"><strong>Caution.</strong> ${escaped(definition.caution)}</p>`]),
      `<h2>Inputs</h2>`,
      table(["Name", "What it is", "Needed", "A blank or 0 here"], Object.entries(definition.inputs).map(inputRow)),
      `<h2>Result</h2>`,
      `<p>${escaped(resultLine(definition))}</p>`,
      `<h2>Examples</h2>`,
      table(["Typed in a cell", "Shows"], definition.examples.map(exampleRow)),
      ...byHand(definition),
      `<h2>Source</h2>`,
      `<p>${escaped(definition.source)}</p>`,
    ].join("\n"),
  );

function inputRow([name, input]: [string, Input<unknown>]): string[] {
  const words = input.choices === undefined ? "" : ` One of ${input.choices.map((word) => `“${word}”`).join(", ")}.`;
  return [
    code(name),
    escaped(`${aboutInput(input)}${words}${input.detail === undefined ? "" : ` ${input.detail}`}`),
    input.optional ? "optional" : "yes",
    escaped(blankRuleOf(input)),
  ];
}

function resultLine(definition: CellFunction): string {
  const unit = definition.result.unit === "" ? "" : ` [${definition.result.unit}]`;
  const spread =
    definition.gives === "table"
      ? " It fills the cells below and beside the formula; they must be empty."
      : takesRanges(definition)
        ? " Give whole columns to get a column of answers."
        : "";
  return `${definition.result.about}${unit}.${spread}`;
}

function exampleRow({ cell, gives, about }: Example): string[] {
  return [`${code(cell)}${about === undefined ? "" : `<br>${escaped(about)}`}`, isTable(gives) ? spilled(gives) : escaped(shownText(gives))];
}

/** True where an example fills several cells. */
export const isTable = (gives: Example["gives"]): gives is readonly (readonly Shown[])[] => Array.isArray(gives);

const spilled = (rows: readonly (readonly Shown[])[]): string =>
  `<table class="spill"><tbody>${rows.map((row) => `<tr>${row.map((cell) => `<td>${escaped(shownText(cell))}</td>`).join("")}</tr>`).join("")}</tbody></table>`;

function byHand(definition: CellFunction): string[] {
  if (definition.fixedBecause !== undefined) return [`<h2>With built-in functions</h2>`, `<p>${escaped(withoutForm(definition.fixedBecause))}</p>`];
  if (definition.inCells === undefined) return [];
  const names = Object.fromEntries(Object.entries(definition.inputs).map(([name, input]) => [name, input.optional ? "" : name]));
  return [`<h2>With built-in functions</h2>`, `<p>${code(`=${definition.inCells(names)}`)}</p>`, `<p>The optional inputs are left out here.</p>`];
}

/** The call as typed, optional inputs in square brackets: "RETORT.MOISTURE.WET(vessel, moist, dry)". */
export const signature = (definition: CellFunction): string =>
  `${NAMESPACE}.${definition.name}(${Object.entries(definition.inputs)
    .map(([name, input]) => (input.optional ? `[${name}]` : name))
    .join(", ")})`;

const SHOWN_DIGITS = 8; // enough to check a hand calculation, few enough to read

/** What a cell shows, as an example prints it. */
export const shownText = (value: Shown): string =>
  typeof value === "number" ? plainNumber(value, SHOWN_DIGITS) : typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : value;
