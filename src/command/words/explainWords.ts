import { aroundCalls } from "../../problems/workbook/cellNotes";
import type { CallExplanation, CellExplanation, RunCellExplanation } from "../../explanation/CellExplanation";

/** A cell's explanation as lines of text. */
export const explanationLines = ({ address, opening, cellFormula, shown, calls, ways, around, ofRun, notes }: CellExplanation): string[] => [
  `${address.cell} on "${address.sheet}": ${shown === "" ? "shows nothing" : shown}`,
  opening,
  ...(cellFormula === "" ? [] : [`Cell formula: ${cellFormula}`]),
  ...ways,
  ...(around === "" ? [] : [aroundCalls(around)]),
  ...calls.flatMap(callLines),
  ...(ofRun === undefined ? [] : runLines(ofRun)),
  ...notes.map((note) => `Note: ${note}`),
];

const callLines = ({
  name,
  summary,
  inputs,
  working,
  resultAbout,
  result,
  problem,
  table,
  extent,
  source,
  caution,
  passedOver,
}: CallExplanation): string[] => [
  "",
  `${name}: ${summary}`,
  ...(passedOver === undefined ? [] : [`  ${passedOver}`]),
  ...(extent === "" ? [] : [`  For ${extent}`]),
  ...inputs.map(({ name: input, value, from, about }) => `  ${input} = ${value}${from === "" ? "" : ` (${from})`}: ${about}`),
  ...working.map((line) => `  ${line}`),
  ...(problem === undefined ? [] : [`  ${problem.code}: ${problem.message}`]),
  ...(result === "" ? [] : [`  ${resultAbout}: ${result}`]),
  ...(table === undefined ? [] : table.rows.map((row) => `  ${row.join(" | ")}`)),
  `  Source: ${source}`,
  ...(caution === "" ? [] : [`  Caution: ${caution}`]),
];

const runLines = ({ name, about, inputs, working, result, plusMinus, check, waitsFor, source }: RunCellExplanation): string[] => [
  "",
  `${name}: ${about}`,
  ...inputs.map(({ name: input, value, from }) => `  ${input} = ${value} (${from})`),
  ...working.map((line) => `  ${line}`),
  ...(check === undefined ? [] : [`  Looks at: ${check.looksAt}`, `  Found: ${check.found}`, `  What to do: ${check.remedy}`]),
  ...(result === "" || check !== undefined ? [] : [`  Result: ${result}`]),
  ...(plusMinus === "" ? [] : [`  ${plusMinus}`]),
  ...(waitsFor.length === 0 ? [] : [`  Waits for: ${waitsFor.join("; ")}`]),
  `  Source: ${source}`,
];
