import type { ValueFunction } from "../functions/cellFunction";
import type { CellValue } from "../inputs/CellValue";
import { leaving, problemOf, type Answer } from "./CellProblem";
import { decode } from "./decode";
import type { NamedCell } from "./functionInputs";
import { readRow } from "./readInputs";

/**
 * The cells of a call whose arguments are all single cells, as plain values or as rectangles of one; undefined for any other call.
 * @param howMany inputs there are; one that is left out is BLANK
 */
export function onlyRow(raw: readonly unknown[], howMany: number): CellValue[] | undefined {
  const cells = new Array<CellValue>(howMany);
  for (let index = 0; index < howMany; index++) {
    const given = raw[index];
    if (!Array.isArray(given)) {
      cells[index] = decode(given);
      continue;
    }
    const line: unknown = given[0];
    const isList = Array.isArray(line);
    if (given.length !== 1 || (isList && line.length !== 1)) return undefined;
    cells[index] = decode(isList ? line[0] : line);
  }
  return cells;
}

/** What a function of single cells answers to one row of them: all that it is given, or one row of its ranges. Never throws. */
export function answerToRow(definition: ValueFunction, inputs: readonly NamedCell[], cells: readonly CellValue[]): Answer {
  try {
    return leaving(definition.compute(readRow(inputs, cells)));
  } catch (thrown) {
    return problemOf(thrown);
  }
}
