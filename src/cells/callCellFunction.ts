import { takesRanges, type CellFunction } from "../functions/cellFunction";
import { CellProblem, INTERNAL_ERROR, problemOf, type Answer } from "./CellProblem";
import { givenInputs } from "./GivenInput";
import { overRanges } from "./overRanges";
import { readInputs } from "./readInputs";

/**
 * Runs a cell function on arguments as a spreadsheet host hands them over. Never throws: a problem is an answer.
 * @param raw one entry an argument; further entries (the host's invocation object) are ignored
 * @returns a rectangle for functions that take ranges or give a table, else one answer
 */
export function callCellFunction(definition: CellFunction, raw: readonly unknown[]): Answer | Answer[][] {
  try {
    const given = givenInputs(definition, raw);
    if (takesRanges(definition)) return overRanges(definition, given);
    return finite(computed(definition, readInputs(given)));
  } catch (thrown) {
    return problemOf(thrown);
  }
}

function computed(definition: CellFunction, read: Readonly<Record<string, unknown>>): Answer | Answer[][] {
  if (definition.computeTable) return definition.computeTable(read).map((row) => [...row]);
  if (definition.compute) return definition.compute(read);
  throw new Error(`${definition.name} computes nothing`);
}

/** NaN and infinity never leave: inside a spill the host would show them as 0. */
function finite(answer: Answer | Answer[][]): Answer | Answer[][] {
  const checked = (one: Answer): Answer => (typeof one === "number" && !Number.isFinite(one) ? new CellProblem("#VALUE!", INTERNAL_ERROR) : one);
  return Array.isArray(answer) ? answer.map((row) => row.map(checked)) : checked(answer);
}
