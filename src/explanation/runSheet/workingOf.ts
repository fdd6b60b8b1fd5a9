import type { Cell, Expression } from "../../runsheet/expressions/Expression";
import { workingWords } from "../../runsheet/words/workingWords";
import { ArithmeticLines } from "./ArithmeticLines";
import { isPrinted, nameOf } from "./cellNames";
import { placeName } from "./rangeNames";
import { asksForPlace, isPlace, partsOf, placesIn } from "../../runsheet/expressions/parts";
import { isSameNumber } from "./isSameNumber";
import { inWorking, plainText } from "./plainText";
import type { SheetCells } from "./RunCells";
import { resolved, wayThrough } from "./wayThrough";
import { workOut } from "./workOut";

/**
 * The arithmetic of a cell with its numbers, `name = arithmetic = result`, a line for each step; of the workings right of the table
 * that it rests on theirs comes first.
 * @param leaf the part of its formula that gives its value, without choices
 */
export function workingOf(cells: SheetCells, at: Cell, leaf: Expression): readonly string[] {
  const before = placesIn(leaf).flatMap((place) => (place.kind === "cell" && isCounted(cells, at, place) ? ownLines(cells, place) : []));
  return [...new Set([...before, ...linesOf(cells, at, leaf)])];
}

/** A working cell that a printed one rests on. */
const isCounted = (cells: SheetCells, at: Cell, place: Cell): boolean =>
  isPrinted(cells, at) && !isPrinted(cells, place) && typeof cells.at(place.row, place.column) === "number";

function ownLines(cells: SheetCells, at: Cell): readonly string[] {
  const formula = cells.planned(at.row, at.column)?.formula;
  if (formula === undefined) return [];
  // What the cell shows may have been typed over; then it is an input as it stands.
  if (!isSameNumber(workOut(formula, cells.at), cells.at(at.row, at.column))) return [];
  const leaf = resolved(wayThrough(formula, cells.at).leaf, cells.at);
  // What comes to nothing is told as that: how, this cell tells on the working itself.
  if (cells.at(at.row, at.column) === 0 && !isPlace(leaf)) {
    const { core, unit } = nameOf(cells, at);
    return [`${core} (${placeName(cells, at)}) = ${plainText(0, unit, cells.planned(at.row, at.column))}`];
  }
  return isPlace(leaf) ? [] : linesOf(cells, at, leaf);
}

function linesOf(cells: SheetCells, at: Cell, leaf: Expression): readonly string[] {
  if (typeof leaf === "object" && leaf.kind === "joined") return sentenceLines(cells, leaf);
  const value = workOut(leaf, cells.at);
  if (typeof value !== "number") return [];
  const { core, unit } = nameOf(cells, at);
  const result = plainText(value, unit, cells.planned(at.row, at.column));
  const arithmetic = new ArithmeticLines(cells, leaf);
  const text = arithmetic.text();
  const own =
    text === inWorking(value) ? [`${core} (${placeName(cells, at)}) = ${result}`] : [`${core} (${placeName(cells, at)}) = ${text} = ${result}`];
  return [...arithmetic.lines, ...own];
}

/** The numbers that a sentence has in it, as they are worked out and written. */
function sentenceLines(cells: SheetCells, sentence: Expression): readonly string[] {
  return partsOf(sentence).flatMap((part): readonly string[] => {
    if (typeof part !== "object" || isPlace(part)) return [];
    if (part.kind === "joined") return sentenceLines(cells, part);
    const written = part.kind === "call" && part.name === "FIXED" ? part : undefined;
    const number = written?.given[0] ?? part;
    if (typeof workOut(number, cells.at) !== "number" || asksForPlaces(number)) return [];
    const arithmetic = new ArithmeticLines(cells, number);
    const text = arithmetic.text();
    const value = inWorking(Number(workOut(number, cells.at)));
    const shown = written === undefined ? value : String(workOut(written, cells.at));
    const asWritten = shown === value ? value : `${value}, ${workingWords.written(shown)}`;
    return [...arithmetic.lines, ...(text === value ? (shown === value ? [] : [asWritten]) : [`${text} = ${asWritten}`])];
  });
}

/** True of what only names cells or takes texts apart. */
function asksForPlaces(part: Expression): boolean {
  if (typeof part !== "object") return false;
  if (asksForPlace(part) || (part.kind === "call" && ["CHAR", "FIND", "MINUTE", "HOUR"].includes(part.name))) return true;
  return partsOf(part).some(asksForPlaces);
}
