import type { CellFunction } from "./cellFunction";
import { compareGroupsFunction } from "./reporting/compareGroupsFunction";
import { reportedFunction } from "./reporting/reportedFunction";

/** Results as they are printed, and several sets of them compared. */
export const reporting: readonly CellFunction[] = [reportedFunction, compareGroupsFunction];
