import { sentenceAbout } from "../ArgumentProblem";
import { plainNumber, shortened } from "../quoted";

/** What is said of a cell that shows an error which no cell function made, under the code it shows. */
const HOST_ERRORS: Readonly<Record<string, string>> = {
  "#NAME?":
    "The cell shows #NAME?: the add-in had not loaded when the sheet was calculated. With the add-in loaded, open the cell for editing and press Enter.",
  "#BUSY!": "The cell is still calculating. Wait for it to finish, then select it again.",
  "#SPILL!": "The cell shows #SPILL!: the answers need cells that already hold something. Clear those cells or move the formula.",
  "#CALC!":
    "The cell shows #CALC!: this spreadsheet could not hand the range over. Use a range with an end, such as B2:B20, in place of whole columns.",
  "#REF!": "The cell shows #REF!: a cell its formula referred to was deleted. Point the formula at the right cells again.",
};

export const hostErrorNote = (code: string): string | undefined => HOST_ERRORS[code];

export const differsFromCell = (shown: string): string =>
  `The cell shows ${shown}, which is not what its formula gives for these inputs now. Recalculate the sheet; if it stays, the cell was saved by another version.`;

/** @param input as typed: "B:C" */
export const inputTooLarge = (input: string): string =>
  `${input} holds more cells than are read here at once, so what is worked out from it is given as the cell shows it.`;

/** Said in the place of an explanation, which would be of a value from before. */
export const CALCULATING =
  "The workbook is still calculating, so what the cell shows may be from before. Wait for it to finish, then select the cell again.";

/** Said in the place of an explanation, which would be of a value from before. */
export const WAITS_FOR_F9 =
  "The workbook calculates only when asked to, and something waits, so what the cell shows may be from before. Press F9, then select the cell again.";

export const FROM_BEFORE =
  "This value is from before: something that it is calculated from was changed, and a cell formula on the way cannot be calculated rightly here. Save the workbook and let the spreadsheet it comes from calculate it.";

/** Said above an explanation. */
export const STAYS_PENDING =
  "The workbook says that something still waits to be calculated, though nothing is under way. What follows explains what the cell shows now; press F9 to be sure of it.";

/** Said above an explanation. */
export const KEEPS_CHANGING = "The cell or its inputs changed while they were read. What follows explains the last look; select the cell again.";

/** @param name of the cell in the words of its sheet */
export const calculatedByRun = (cell: string, name: string): string => `${cell} is calculated by this run sheet: ${name}.`;

/** Said of a cell in which a run sheet calculates and a value stands. */
export const typedOverInRun = (cell: string): string =>
  `${cell} was typed over: the sheet calculates here, and its formula is gone. Undo, or press Mend formulas in the task pane.`;

/** Said where a calculated cell of a run sheet holds another formula than the sheet was made with. */
export const RUN_CELL_OTHERWISE =
  "The formula here is not the one this sheet was made with: rows were put in beside it, or it was changed. What follows explains the formula as it stands.";

/** Said in the place of a run sheet's arithmetic. */
export const RUN_CELL_DIFFERS =
  "The sheet shows otherwise than this formula gives for what stands in its cells now, so no arithmetic is given. Recalculate; if it stays, look for a cell that was typed over.";

export const WAITS_FOR_INPUTS = "The cell shows nothing yet: its formula waits until the inputs it tests for are there.";

export const firstCallsOnly = (explained: number, calls: number): string =>
  `The first ${explained} of ${calls} Retort calls are explained here. Put the others into cells of their own to see them explained.`;

export const NESTED_TOO_DEEPLY =
  "This formula is nested too deeply to be worked out here, so its value is not compared with the cell. Spread it over several cells.";

/** How many more names are not known than are spelt out. */
export const moreUnknownNames = (count: number): string => `${count} more names of this formula are not known either.`;

/** @param nearest names with the namespace, best first */
export function noSuchFunction(name: string, nearest: readonly string[]): string {
  const advice = nearest.length === 0 ? "Look it up in the Functions tab" : `Nearest name${nearest.length > 1 ? "s" : ""}: ${nearest.join(", ")}`;
  return sentenceAbout(shortened(name), "there is no such function in this version", `${advice}.`);
}

export const CALLS_NO_FUNCTION = "calls a function that this version of Retort does not have.";

/** A choice that a formula makes, as its explanation tells it. */
export interface ChoiceTold {
  /** "IF" */
  readonly by: string;
  /** The row, from 1, of many that ask each for itself; left out for one that asks once. */
  readonly row?: number;
  /** What it asks, as written: "B5>0". */
  readonly asked: string;
  /** What that comes to: "TRUE", "2"; "" where it is no matter. */
  readonly found: string;
  /** What stood in single cells that it asks about: "B5 = 3". */
  readonly among: readonly string[];
  /** The part whose value is given, as written; "" where there is none. */
  readonly taken: string;
  /** The parts that are not, as written. */
  readonly left: readonly string[];
}

/** What a choice of the formula came to: "IF asks B5>0, which is TRUE with B5 = 3. Taken: A1*2. Not taken: A1*3." */
export function choiceMade({ by, row, asked, found, among, taken, left }: ChoiceTold): string {
  const [what, way, others] = [longPart(asked), longPart(taken), left.map(longPart).join("; ")];
  const holds = among.length === 0 || among.some((one) => one === `${asked} = ${found}`) ? "" : ` with ${among.join(", ")}`;
  if (by.startsWith("IFE") || by === "IFNA")
    return found === ""
      ? `${by}: ${way} gives no error, so it is taken. Not taken: ${others}.`
      : `${by}: ${what} gives ${found}, so ${way} is taken.`;
  const comes = asked === found ? "" : `, which is ${found}${holds}${row === undefined ? "" : ` in row ${row}`}`;
  // Where nothing is written for an answer of FALSE, IF gives that; an error in what it asks is its answer.
  const wayTaken =
    way !== "" ? `Taken: ${way}.` : found.startsWith("#") ? "So the error is the answer." : "Nothing is written for that, so it gives FALSE.";
  return `${by} asks ${what}${comes}. ${wayTaken}${others === "" ? "" : ` Not taken: ${others}.`}`;
}

// A branch is told by its beginning and its end.
const LONGEST_PART = 120;
const longPart = (text: string): string =>
  text.length <= LONGEST_PART ? text : `${text.slice(0, LONGEST_PART / 2)} … ${text.slice(-LONGEST_PART / 2)}`;

/** Said of a call in a branch that is not taken. */
export const callPassedOver = (choice: ChoiceTold): string => `Not worked out in this cell: ${choiceMade(choice)}`;

export const allRows = (rows: number): string => (rows === 1 ? "the one row" : `all ${plainNumber(rows)} rows, taken together`);
export const inRow = (row: number, line: string): string => `row ${row}: ${line}`;
export const furtherRows = (rows: number): string => `and so on for ${plainNumber(rows)} more ${rows === 1 ? "row" : "rows"}`;
export const inName = (name: string): string => `the call in the name ${name}`;
/** @param gave what each time gave */
export function timeText(number: number, gave: readonly string[]): string {
  const shown = gave.length <= MOST_TIMES_TOLD ? gave.join(", ") : `${gave.slice(0, MOST_TIMES_TOLD - 1).join(", ")} … ${gave.at(-1) ?? ""}`;
  return `time ${plainNumber(number)} of ${plainNumber(gave.length)}, which gave ${shown}`;
}
const MOST_TIMES_TOLD = 6;

/** Said of the value a cell shows. */
export const REFERS_TO_ITSELF = "This formula refers to its own cell, so what the cell shows cannot be right. Point it at other cells.";

// As many as a message can hold.
const MOST_IN_CIRCLE = 4;
const around = (cells: readonly string[]): string =>
  cells.length <= MOST_IN_CIRCLE ? cells.join(", ") : `${cells.slice(0, MOST_IN_CIRCLE).join(", ")} and ${cells.length - MOST_IN_CIRCLE} more`;

/** Said when a formula is entered. @param cells of the circle, this one among them */
export const typedInCircle = (cell: string, cells: readonly string[]): string =>
  cells.length === 1
    ? `${cell}: this formula refers to its own cell, so what the cell shows need not be right and changes with each calculation. Point it at other cells.`
    : `${cell}: this formula is calculated in a circle, from its own cell by way of others (${around(cells)}). What these show need not be right and changes with each calculation. Point one of them at other cells.`;

/** Said of the value a cell shows. @param cells of the circle that it is calculated from */
export const restsOnCircle = (cells: readonly string[]): string =>
  `This value is calculated from ${cells.length === 1 ? "a cell that is calculated from itself" : "cells that are calculated in a circle"} (${around(cells)}), so it need not be right and changes with each calculation. Point ${cells.length === 1 ? "that cell" : "one of them"} at other cells.`;

/** What is said below the grid of the local workbook when a cell shows an error that no Retort function made, under its code. */
const GRID_ERRORS: Readonly<Record<string, string>> = {
  "#NAME?": "A name in this formula is not known here. Check its spelling; Retort's functions begin with RETORT. and text stands in double quotes.",
  "#VALUE!": "This formula cannot be worked out as it stands. Check its brackets, its commas and the cells it refers to.",
  "#SPILL!": "The answers need cells that already hold something. Clear those cells or move the formula.",
  "#REF!": "A cell this formula referred to is gone, or the formula needs its own cell. Point it at the right cells.",
  "#CYCLE!": "This formula needs its own cell. Point it at other cells.",
  "#DIV/0!": "Something is divided by 0 or by a blank cell. Fill in the cell, or test for it with IF.",
};

export const gridErrorNote = (code: string): string | undefined => GRID_ERRORS[code];

/** Said of a formula that the local workbook does not work out. */
export const formulaBeyondGrid = (brackets: number, operators: number, characters: number): string =>
  `This formula is not worked out here: it has more than ${plainNumber(brackets)} brackets within one another, ${plainNumber(operators)} operators or ${plainNumber(characters)} characters. Write it in several cells.`;

/** Said of a cell whose only calls stand in defined names. */
export const callsByName = (cell: string, names: readonly string[]): string =>
  `${cell} calls a Retort function by the ${names.length === 1 ? "name" : "names"} ${names.join(", ")}.`;

/** @param put the formula around its calls with the numbers put in */
export const aroundCalls = (put: string): string => `With the numbers put in: ${put}`;
