import { CellProblem, problemOf, type Answer } from "../cells/CellProblem";
import { NAMESPACE } from "../functions/catalogue";
import { takesRanges, type CellFunction } from "../functions/cellFunction";
import { allRows, furtherRows, inName, inRow, timeText } from "../problems/workbook/cellNotes";
import { semicolonsBetween } from "../problems/inputProblems";
import type { CellReading } from "../workbook/Workbook";
import type { CallExplanation, ExplainedProblem, ExplainedTable } from "./CellExplanation";
import { BLANK } from "../inputs/CellValue";
import { isSingle, type Cells, type Position } from "./formula/Cells";
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
  const isWhole = Array.isArray(worked.answer) && worked.answer.flat().length > 1 && !call.isByCell;
  const position = takesRanges(definition) && !isWhole ? within(call.position, worked.answer) : undefined;
  const answer = position === undefined ? worked.answer : answerAt(worked.answer, position);
  const found = problemIn(call, unknown, answer);
  // A choice that waits for inputs goes another way because of what is wrong with them.
  const passedOver = call.waiting && found !== undefined ? undefined : call.passedOver;
  const problem = passedOver === undefined ? found : undefined;
  const result = problem === undefined && passedOver === undefined ? resultText(definition, answer, shownIn) : "";
  const hasAnswer = problem === undefined && passedOver === undefined && answer !== undefined && answer !== "";
  const isTable = Array.isArray(answer) && passedOver === undefined;
  return {
    name: `${NAMESPACE}.${definition.name}`,
    summary: definition.summary,
    inputs: inputRows(definition, worked.given, call.homeSheet, position, problem && argumentNamedBy(problem, answer)),
    working: !hasAnswer ? [] : isWhole ? eachRow(definition, worked) : workingLines(definition, worked, position, result),
    resultAbout: definition.result.about,
    result,
    ...(isTable ? { table: tableText(answer, isWhole ? { row: 0, column: 0 } : call.position) } : {}),
    ...(problem === undefined ? {} : { problem }),
    ...(passedOver === undefined ? {} : { passedOver }),
    waiting: call.waiting,
    extent: [
      ...(call.inName === undefined ? [] : [inName(call.inName)]),
      ...(call.time === undefined ? [] : [timeText(call.time.number, call.time.gave.map(gaveText))]),
      ...placesText(worked.answer, position, isWhole),
    ].join(", "),
    source: definition.source,
    caution: definition.caution ?? "",
  };
}

/** What one time of several gave, in a word. */
const gaveText = (cells: Cells | undefined): string =>
  cells === undefined ? "?" : isSingle(cells) ? valueText(cells[0]?.[0] ?? BLANK, "") : "a table";

const placesText = (answer: Worked["answer"], position: Position | undefined, isWhole: boolean): readonly string[] => {
  if (!Array.isArray(answer)) return [];
  const text = isWhole ? allRows(answer.length) : position === undefined ? "" : placeText(answer, position);
  return text === "" ? [] : [text];
};

// What is told of more rows is told by the table.
const MOST_ROWS_WORKED = 6;

/** The arithmetic of a whole column of answers that another function takes together, row by row. */
function eachRow(definition: CellFunction, worked: Worked): readonly string[] {
  if (!takesRanges(definition) || !Array.isArray(worked.answer)) return workingLines(definition, worked, undefined, "");
  const lines = worked.answer.slice(0, MOST_ROWS_WORKED).flatMap((_, row) => {
    const answer = answerAt(worked.answer, { row, column: 0 });
    if (answer instanceof CellProblem) return [inRow(row + 1, `${answer.code} ${answer.message}`)];
    if (answer === undefined || answer === "") return [];
    const own = workingLines(definition, worked, { row, column: 0 }, answerText(answer, definition.result.unit));
    return own.map((line) => inRow(row + 1, line));
  });
  const further = worked.answer.length - MOST_ROWS_WORKED;
  return further > 0 ? [...lines, furtherRows(further)] : lines;
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
