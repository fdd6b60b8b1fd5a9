import { cell, range, type Cell, type Range } from "../../runsheet/expressions/Expression";
import { placeOf } from "../../runsheet/expressions/formulaText";
import { cellNameWords } from "../../runsheet/words/cellNameWords";
import { joinedName, nameOf, uncapitalised, type CellName } from "./cellNames";
import { isBox, type SheetCells } from "./RunCells";

/** The part of a range in which anything but a total is planned: the row of a total often only holds a range open. */
export function plannedPart(cells: SheetCells, { from, to }: Range): Range {
  const isFilled = (row: number, isLast: boolean): boolean => {
    for (let column = from.column; column <= to.column; column++) {
      const planned = cells.planned(row, column);
      if (isBox(planned) || (planned?.formula !== undefined && !(isLast && planned.style === "runTotalNumber"))) return true;
    }
    return false;
  };
  let [first, last] = [from.row, to.row];
  while (first < last && !isFilled(first, false)) first++;
  while (last > first && !isFilled(last, true)) last--;
  return range(cell(first, from.column), cell(last, to.column));
}

/** What a range is called: what its ends have in common once, the rest from one to the other. */
export function rangeName(cells: SheetCells, of: Range): CellName {
  const { from, to } = plannedPart(cells, of);
  const [one, other] = [nameOf(cells, from), nameOf(cells, to)];
  const between = (first: string, last: string): string =>
    first === last || last === "" ? first : cellNameWords.fromTo(uncapitalised(first), uncapitalised(last));
  // What begins in a cell of no sample, as a row with its clock does, is of them all.
  const samples = one.sample === "" ? "" : between(one.sample, other.sample.replace(cellNameWords.sample, ""));
  const sample = one.sample === other.sample ? one.sample : samples;
  if (one.core === other.core) return { ...one, text: joinedName(one.core, between(one.row, other.row), sample) };
  // Several columns of one table have their rows in common.
  if (from.column !== to.column && one.row !== "" && other.row !== "")
    return { ...one, text: joinedName(between(one.row, other.row), cellNameWords.columns(one.core, other.core), sample) };
  const rows = between(one.row === "" ? one.core : one.row, other.row === "" ? other.core : other.row);
  return { ...one, text: joinedName(rows, sample) };
}

/** "D27", "C12:C20", without the rows that only hold a range open. */
export const placeName = (cells: SheetCells, of: Cell | Range): string => placeOf(of.kind === "cell" ? of : plannedPart(cells, of));
