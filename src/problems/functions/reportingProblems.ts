import { InputProblem } from "../InputProblem";
import { NoAnswer } from "../NoAnswer";
import { counted, plainNumber, quoted, SIZE_FIGURES } from "../quoted";

export const unnamedValue = (row: number): InputProblem =>
  new InputProblem("groups", `row ${row} is blank beside a value`, "Type the group's name, a word or a number.");

export const oneGroup = (): InputProblem =>
  new InputProblem("groups", "all values are of one group, so there is nothing to compare", "Give the name of each value's group beside it.");

export const tooManyGroups = (count: number, most: number): InputProblem =>
  new InputProblem("groups", `${count} groups, above ${most}`, "Check for swapped columns, or compare fewer at a time.");

export const valueAlone = (label: string): NoAnswer =>
  new NoAnswer("groups", `${quoted(label)} has one value and so no scatter`, "Take at least two in each group.");

export const allOfGroupEqual = (label: string, count: number): NoAnswer =>
  new NoAnswer(
    "values",
    `all ${counted(count, "value")} of ${quoted(label)} are equal, so its scatter is not known`,
    "Give more figures, or leave the group out.",
  );

export const uncertaintyTooFine = (u: number, value: number): InputProblem =>
  new InputProblem(
    "u",
    `${plainNumber(u)} is finer than a spreadsheet holds ${plainNumber(value)}`,
    "Give both in one unit, a smaller one if need be.",
  );

const LEVEL = 0.05;

/** What a comparison of groups says, no more than its p allows. */
export const groupsVerdict = (p: number, pairs: number, apart: number): string =>
  p < LEVEL
    ? `the means differ: Welch's p of ${plainNumber(p, SIZE_FIGURES)} is below ${LEVEL}; ${apart === 0 ? "which of them, no single pair shows" : `${counted(apart, "pair")} of ${pairs} ${apart === 1 ? "shows" : "show"} it`}. Not why: a furnace, a day or a person may stand behind a group`
    : `no difference shown: Welch's p of ${plainNumber(p, SIZE_FIGURES)} is not below ${LEVEL}; the means may still differ by as much as the intervals reach`;

export const PLUS_MINUS_IS_U = "± is one standard uncertainty, about 68 %; give k to print an expanded one, and say beside the result which it is.";
