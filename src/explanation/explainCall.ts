import { CellProblem, problemOf, type Answer } from "../cells/CellProblem";
import { NAMESPACE } from "../functions/catalogue";
import { takesRanges, type CellFunction } from "../functions/cellFunction";
import { semicolonsBetween } from "../problems/inputProblems";
import type { CellReading } from "../workbook/Workbook";
import type { CallExplanation, ExplainedProblem, ExplainedTable } from "./CellExplanation";
import type { Position } from "./formula/Cells";
import { hasSemicolons } from "./formula/hasSemicolons";
import { inputRows } from "./inputRows";
import { valueText } from "./valueText";
import { workingLines } from "./workingLines";
import { answerAt, isUnknown, workOut, type CallInCell, type Worked } from "./workOut";

/** One call explained with the numbers put in. */
export function explainCall(call: CallInCell): CallExplanation {
  const { definition, shownIn } = call;
  const worked = workOut(call);
  const unknown = worked.given.some(isUnknown);
  const position = takesRanges(definition) ? within(call.position, worked.answer) : undefined;
  const answer = position === undefined ? worked.answer : answerAt(worked.answer, position);
  const problem = problemIn(call, unknown, answer);
  const result = problem === undefined ? resultText(definition, answer, shownIn) : "";
  const hasAnswer = problem === undefined && answer !== undefined && answer !== "";
  return {
    name: `${NAMESPACE}.${definition.name}`,
    summary: definition.summary,
    inputs: inputRows(definition, worked.given, call.homeSheet, position, problem && argumentNamedBy(problem, answer)),
    working: hasAnswer ? workingLines(definition, worked, position, result) : [],
    resultAbout: definition.result.about,
    result,
    ...(Array.isArray(answer) ? { table: tableText(answer, call.position) } : {}),
    ...(problem === undefined ? {} : { problem }),
    waiting: call.waiting,
    extent: position !== undefined && Array.isArray(worked.answer) ? placeText(worked.answer, position) : "",
    source: definition.source,
    caution: definition.caution ?? "",
  };
}

/** The place in a spill, or its first cell when the selected cell lies outside it. */
const within = (position: Position, answer: Worked["answer"]): Position =>
  answerAt(answer, position) === undefined ? { row: 0, column: 0 } : position;

function problemIn({ definition, argumentTexts, shownIn }: CallInCell, unknown: boolean, answer: Worked["answer"]): ExplainedProblem | undefined {
  if (argumentTexts.some(hasSemicolons)) return problemOf(semicolonsBetween(`${NAMESPACE}.${definition.name}`));
  if (answer instanceof CellProblem) return { code: answer.code, message: answer.message };
  return unknown && shownIn !== undefined && shownIn.message !== "" ? { code: shownIn.error, message: shownIn.message } : undefined;
}

/** A problem that only the spreadsheet could find is known by its sentence alone. */
const argumentNamedBy = ({ message }: ExplainedProblem, answer: Worked["answer"]): string | undefined =>
  answer instanceof CellProblem ? answer.argument : /^(\w+): /.exec(message)?.[1];

function resultText(definition: CellFunction, answer: Worked["answer"], shownIn: CellReading | undefined): string {
  if (Array.isArray(answer)) return "";
  if (answer === undefined) return shownIn === undefined || shownIn.shown === "" ? "" : `${shownIn.shown} (as the cell shows it)`;
  return answer === "" ? "nothing yet: this row is blank" : answerText(answer, definition.result.unit);
}

const answerText = (answer: Answer, unit: string): string => {
  if (answer instanceof CellProblem) return answer.code;
  return typeof answer === "string" ? answer : valueText(answer, unit);
};

// A table is shown by some of its rows; the sheet itself shows the rest.
const TABLE_ROWS_SHOWN = 20;

function tableText(table: readonly (readonly Answer[])[], { row }: Position): ExplainedTable {
  const first = Math.max(0, Math.min(row, table.length - 1) - TABLE_ROWS_SHOWN + 1);
  const rows = table.slice(first, first + TABLE_ROWS_SHOWN).map((line) => line.map((value) => answerText(value, "")));
  return { rows, firstRow: first + 1, rowCount: table.length };
}

function placeText(ranges: readonly (readonly Answer[])[], { row, column }: Position): string {
  const columns = ranges[0]?.length ?? 0;
  const places = [
    ...(ranges.length > 1 ? [`row ${row + 1} of ${ranges.length}`] : []),
    ...(columns > 1 ? [`column ${column + 1} of ${columns}`] : []),
  ];
  return places.join(", ");
}
