import { takesRanges, type CellFunction } from "../functions/cellFunction";
import { leaving, problemOf, type Answer } from "./CellProblem";
import { givenInputs } from "./GivenInput";
import { overRanges } from "./overRanges";
import { readInputs } from "./readInputs";

/**
 * Runs a cell function on arguments as a spreadsheet host hands them over. Never throws: a problem is an answer.
 * @param raw one entry an argument; the host's invocation object after them is ignored
 * @returns a rectangle for functions that take ranges or give a table, else one answer
 */
export function callCellFunction(definition: CellFunction, raw: readonly unknown[]): Answer | Answer[][] {
  try {
    const given = givenInputs(definition, raw);
    if (takesRanges(definition)) return overRanges(definition, given);
    const read = readInputs(given);
    if (definition.gives === "table") return definition.computeTable(read).map((row) => row.map(leaving));
    return leaving(definition.compute(read));
  } catch (thrown) {
    return problemOf(thrown);
  }
}
