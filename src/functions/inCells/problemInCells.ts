import { ArgumentProblem } from "../../problems/ArgumentProblem";
import { NoAnswer } from "../../problems/NoAnswer";
import { PassedError } from "../../problems/PassedError";
import { label } from "./formulaInCells";

// A text in a cell formula holds 255 characters at most (Excel specifications and limits).
const LONGEST_TEXT = 255;

/** #VALUE!, with the sentence for whoever looks into the cell. */
export const refusal = (sentence: string): string => `VALUE(${label(sentence.slice(0, LONGEST_TEXT))})`;

/** A problem as a cell formula shows it: #N/A where there is no answer, an error cell's own error, else #VALUE! with the sentence. */
export function problemInCells(problem: ArgumentProblem): string {
  if (problem instanceof NoAnswer) return "NA()";
  if (problem instanceof PassedError) return problem.code;
  return refusal(problem.message);
}

/** What is written for one of several answers, or its problem, where the others have none. */
export function orProblemInCells(write: () => string): string {
  try {
    return write();
  } catch (thrown) {
    if (thrown instanceof ArgumentProblem) return problemInCells(thrown);
    throw thrown;
  }
}
