import { CellProblem, type Answer } from "../../src/cells/CellProblem";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { everyFunction } from "../../src/functions/catalogue";
import { cellAt, rangeOf } from "../../src/workbook/cellArea";
import type { CellContent } from "../../src/workbook/Workbook";
import { functionNamed } from "../functions/call";
import { hasPlainForm, plainCases } from "./plainCases";

/** A table within another function, one cell of it at a time, its arguments in cells of the same sheet. */
export interface NestedTable {
  readonly name: string;
  /** By cell; references without their sheet, as they are typed. */
  readonly inputs: Readonly<Record<string, CellContent>>;
  readonly formulas: Readonly<Record<string, string>>;
  /** What the functions answer in each of them. */
  readonly wanted: Readonly<Record<string, Answer>>;
}

export const nestingFunctions: readonly string[] = everyFunction.filter((one) => one.gives === "table" && hasPlainForm(one)).map(({ name }) => name);

// Arguments in the first columns, answers beside them.
const FIRST_ANSWER = 14;

/** @param each how many cases of every function */
export function nestedTables(each: number): readonly NestedTable[] {
  let row = 0;
  const cases = plainCases();
  return nestingFunctions.flatMap((name) =>
    cases
      .filter((one) => one.name === name && one.raw.every((value) => !isError(value)))
      .flatMap(({ raw }) => {
        const answers = callCellFunction(functionNamed(name), raw);
        return isTable(answers) ? [{ raw, answers }] : [];
      })
      .slice(0, each)
      .map(({ raw, answers }) => {
        const first = row;
        const columns = raw.map((value) => (Array.isArray(value) ? (value as CellContent[][]).flat() : [value as CellContent]));
        row += Math.max(answers.length, ...columns.map(({ length }) => length)) + 1;
        const inputs = Object.fromEntries(
          columns.flatMap((values, column) => values.flatMap((value, down) => (value === null ? [] : [[cellAt(first + down, column), value]]))),
        );
        const references = columns.map(({ length }, column) => rangeOf({ row: first, column, rows: length, columns: 1 }));
        const call = `RETORT.${name}(${references.join(",")})`;
        const formulas = Object.fromEntries(
          placesOf(answers).map(([down, across]) => [cellAt(first + down, FIRST_ANSWER + across), `=INDEX(${call},${down + 1},${across + 1})`]),
        );
        const wanted = Object.fromEntries(
          placesOf(answers).map(([down, across]) => [cellAt(first + down, FIRST_ANSWER + across), answers[down]?.[across] as Answer]),
        );
        return { name, inputs, formulas, wanted };
      }),
  );
}

/** One cell in the middle and one of the last row: each of them puts the whole table on the sheet of workings. */
function placesOf(table: readonly (readonly Answer[])[]): readonly (readonly [down: number, across: number])[] {
  const [rows, columns] = [table.length, table[0]?.length ?? 1];
  const places = [[Math.floor(rows / 2), columns - 1] as const, [rows - 1, Math.min(1, columns - 1)] as const];
  return [...new Map(places.map((place) => [place.join(), place])).values()];
}

const isTable = (answer: ReturnType<typeof callCellFunction>): answer is Answer[][] =>
  Array.isArray(answer) && answer.length > 1 && !(answer as Answer[][]).flat().some((one) => one instanceof CellProblem);

const isError = (value: unknown): boolean => (Array.isArray(value) ? value.flat().some(isError) : typeof value === "object" && value !== null);
