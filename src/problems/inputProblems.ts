import { InputProblem } from "./InputProblem";
import { plainNumber, quoted } from "./quoted";

/** Where an input stands: the argument's name, and its row (from 1) when it came from a column. */
export interface Place {
  readonly argument: string;
  readonly row?: number;
}

/** The opening of a sentence about a value: `moist: "x" is` or `weights: row 3 holds "x",`. */
const opening = ({ argument, row }: Place, shown: string): string =>
  row === undefined ? `${argument}: ${shown} is` : `${argument}: row ${row} holds ${shown},`;

/** @param zeroIsBlank true where a 0 counts as nothing entered, which the sentence then says */
export const blankInput = ({ argument, row }: Place, advice: string, zeroIsBlank = true): InputProblem =>
  new InputProblem(`${argument}: ${row === undefined ? `nothing here (${zeroIsBlank ? "blank or 0" : "blank"})` : `row ${row} is blank`}. ${advice}`);

export const notA = (place: Place, value: string | boolean | number, what: string, advice: string): InputProblem =>
  new InputProblem(`${opening(place, quoted(value))} not ${what}. ${advice}`);

export const numberAsText = (place: Place, value: string): InputProblem =>
  new InputProblem(`${opening(place, quoted(value))} text, not a number. Retype it as a number.`);

export const outOfBounds = (place: Place, value: number, unit: string, bound: string, advice: string): InputProblem =>
  new InputProblem(`${opening(place, withUnit(value, unit))} ${bound}. ${advice}`);

export const unknownChoice = ({ argument }: Place, value: string | number | boolean, choices: readonly string[]): InputProblem =>
  new InputProblem(`${argument}: ${quoted(value)} is not one of ${listed(choices)}.`);

export const notOneCell = (argument: string, rows: number, columns: number): InputProblem =>
  new InputProblem(`${argument}: ${shape(rows, columns)} given where one cell is wanted. Give one cell.`);

export const notOneColumn = (argument: string, rows: number, columns: number): InputProblem =>
  new InputProblem(`${argument}: ${shape(rows, columns)} given. Give one column, or one row.`);

export const shapesDoNotFit = (first: ShapedArgument, second: ShapedArgument): InputProblem =>
  new InputProblem(
    `${second.argument}: ${shape(second.rows, second.columns)} does not fit ${first.argument}, ${shape(first.rows, first.columns)}. Give ranges of one size.`,
  );

export interface ShapedArgument {
  readonly argument: string;
  readonly rows: number;
  readonly columns: number;
}

/** Words to choose from, each in quotation marks. */
export const listed = (choices: readonly string[]): string => choices.map((word) => `"${word}"`).join(", ");

/** A value with its unit: "35 g". */
export const withUnit = (value: number, unit: string): string => (unit === "" ? plainNumber(value) : `${plainNumber(value)} ${unit}`);

const shape = (rows: number, columns: number): string => `${counted(rows, "row")} by ${counted(columns, "column")}`;
const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
