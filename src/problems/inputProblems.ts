import { InputProblem } from "./InputProblem";
import { counted, listed, quoted, withUnit } from "./quoted";

/** Where an input stands: the argument's name, and its row (from 1) when it came from a column. */
export interface Place {
  readonly argument: string;
  readonly row?: number;
}

/** A sentence about one value: `moist: "x" is not ...` or `weights: row 3 holds "x", not ...`. */
const about = ({ argument, row }: Place, shown: string, wrong: string, advice: string): InputProblem =>
  new InputProblem(argument, row === undefined ? `${shown} is ${wrong}` : `row ${row} holds ${shown}, ${wrong}`, advice);

/** @param zeroIsBlank true where a 0 counts as nothing entered, which the sentence then says */
export const blankInput = ({ argument, row }: Place, advice: string, zeroIsBlank = true): InputProblem =>
  new InputProblem(argument, row === undefined ? `nothing here (${zeroIsBlank ? "blank or 0" : "blank"})` : `row ${row} is blank`, advice);

export const notA = (place: Place, value: string | boolean | number, what: string, advice: string): InputProblem =>
  about(place, quoted(value), `not ${what}`, advice);

export const numberAsText = (place: Place, value: string): InputProblem =>
  about(place, quoted(value), "text, not a number", "Retype it as a number.");

export const outOfBounds = (place: Place, value: number, unit: string, bound: string, advice: string): InputProblem =>
  about(place, withUnit(value, unit), bound, advice);

export const unknownChoice = ({ argument }: Place, value: string | number | boolean, choices: readonly string[]): InputProblem =>
  new InputProblem(argument, `${quoted(value)} is not one of ${listed(choices)}`);

export const notOneCell = (argument: string, rows: number, columns: number): InputProblem =>
  new InputProblem(argument, `${shape(rows, columns)} given where one cell is wanted`, "Give one cell.");

export const notOneColumn = (argument: string, rows: number, columns: number): InputProblem =>
  new InputProblem(argument, `${shape(rows, columns)} given`, "Give one column, or one row.");

export interface ShapedArgument {
  readonly argument: string;
  readonly rows: number;
  readonly columns: number;
}

export const shapesDoNotFit = (first: ShapedArgument, second: ShapedArgument): InputProblem =>
  new InputProblem(
    second.argument,
    `${shape(second.rows, second.columns)} does not fit ${first.argument}, ${shape(first.rows, first.columns)}`,
    "Give ranges of one size.",
  );

const shape = (rows: number, columns: number): string => `${counted(rows, "row")} by ${counted(columns, "column")}`;

/** @param position from 1 */
export const argumentLeftOut = (argument: string, position: number): InputProblem =>
  new InputProblem(argument, `argument ${position} is left out`, "Give it, with commas between the arguments.");

export const tooManyArguments = (name: string, given: number, most: number): InputProblem =>
  new InputProblem(name, `${given} arguments given; it takes ${most} at most`, "Use a decimal point, and commas only between the arguments.");

/** @param position from 1 */
export const argumentNotKnown = (name: string, position: number): InputProblem =>
  new InputProblem(name, `argument ${position} is newer than the functions loaded here`, LOAD_NEWER);

/** For a function that the spreadsheet has been told of and that was never loaded. */
export const functionNotLoaded = (name: string): InputProblem => new InputProblem(name, "it is newer than the functions loaded here", LOAD_NEWER);

const LOAD_NEWER = "Close the spreadsheet and open it again to load the newer ones.";

/** For a spreadsheet whose cell formulas take commas. */
export const semicolonsBetween = (name: string): InputProblem =>
  new InputProblem(name, "semicolons stand between the arguments", "Cell formulas here take commas: type a comma in place of each.");
