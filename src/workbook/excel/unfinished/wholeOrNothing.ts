import type { WorkbookProblem } from "../../Workbook";
import { Attempt, keepingTrack } from "./Attempt";
import { excelCode, excelProblem } from "../excelProblem";
import { takeBack, type Ended } from "./takeBack";

// Somebody else may take the name again and again; after this many tries the user is told.
const MOST_TRIES = 3;

/**
 * Makes sheets that are there whole, or not at all. What an attempt that fails has made is found by its mark and its id, never by a
 * name: a name may have become somebody else's meanwhile.
 * @param make tells how the sheets ended up, in the order in which they were begun
 * @throws WorkbookProblem that names what is left or may be, where Excel does not answer any more or somebody has used a sheet
 */
export async function wholeOrNothing(make: (attempt: Attempt) => Promise<readonly Ended[]>): Promise<readonly Ended[]> {
  let tries = 1;
  let oneUndoStep = true;
  for (;;) {
    const attempt = new Attempt(oneUndoStep);
    const outcome = await keepingTrack(attempt, () => make(attempt).catch((thrown: unknown) => ending(attempt, excelProblem(thrown))));
    if (!(outcome instanceof Error)) return outcome;
    if (oneUndoStep && excelCode(outcome) === "UndoNotSupported") oneUndoStep = false;
    else if (excelCode(outcome) !== "ItemAlreadyExists" || attempt.sheets.length === 0 || tries++ === MOST_TRIES) throw outcome;
  }
}

/** How the sheets ended up, if they are finished after all; else what to say. Where nothing is left, that is what went wrong. */
async function ending(attempt: Attempt, problem: WorkbookProblem): Promise<readonly Ended[] | WorkbookProblem> {
  if (attempt.sheets.length === 0) return problem;
  const { finished, left } = await takeBack(attempt, problem);
  return finished ?? left ?? problem;
}
