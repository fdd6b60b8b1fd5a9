import type { CellFunction } from "../functions/cellFunction";
import { leaving, leavingTable, problemOf, type Answer } from "./CellProblem";
import { inputsOf } from "./functionInputs";
import { givenInputs, refuseUnknown } from "./GivenInput";
import { answerToRow, onlyRow } from "./oneRow";
import { overRanges } from "./overRanges";
import { readInputs, readRow } from "./readInputs";

/**
 * Runs a cell function on arguments as a spreadsheet host hands them over. Never throws: a problem is an answer.
 * Single cells are a row of their own, which needs no ranges; a row of ranges is answered in the very same way.
 * @param raw one entry an argument; the host's invocation object after them is ignored
 * @returns a rectangle for functions that take ranges or give a table, else one answer
 */
export function callCellFunction(definition: CellFunction, raw: readonly unknown[]): Answer | Answer[][] {
  try {
    const { every, cells } = inputsOf(definition);
    refuseUnknown(definition.name, raw, every.length);
    const row = cells && onlyRow(raw, cells.length);
    if (cells !== undefined && definition.gives === "value")
      return row === undefined ? overRanges(definition, cells, raw) : [[answerToRow(definition, cells, row)]];
    const read = cells === undefined || row === undefined ? readInputs(givenInputs(definition, raw)) : readRow(cells, row);
    return definition.gives === "table" ? leavingTable(definition.computeTable(read)) : leaving(definition.compute(read));
  } catch (thrown) {
    return problemOf(thrown);
  }
}
