import {
  cellBeingEdited,
  hostBusy,
  hostRefused,
  nameJustTaken,
  noSuchSheet,
  olderThanNeeded,
  tooMuchAtOnce,
  workbookProtected,
} from "../../problems/workbook/workbookProblems";
import { WorkbookProblem } from "../Workbook";

export const HOST = "Excel";

// Error codes of the Excel JavaScript API ("Error handling with the application-specific JavaScript APIs").
const SENTENCES: ReadonlyMap<string, string> = new Map([
  ["InvalidOperationInCellEditMode", cellBeingEdited],
  ["AccessDenied", workbookProtected],
  ["ItemAlreadyExists", nameJustTaken],
  ["RequestPayloadSizeLimitExceeded", tooMuchAtOnce],
  ["ResponsePayloadSizeLimitExceeded", tooMuchAtOnce],
  ["RangeExceedsLimit", tooMuchAtOnce],
  ["ActivityLimitReached", hostBusy],
  ["ServiceNotAvailable", hostBusy],
  ["ApiNotFound", olderThanNeeded(HOST)],
  ["ApiNotAvailable", olderThanNeeded(HOST)],
  ["UnsupportedOperation", olderThanNeeded(HOST)],
  ["NotImplemented", olderThanNeeded(HOST)],
]);

/**
 * What went wrong in Excel, in words. What we threw ourselves passes unchanged.
 * @param sheet the sheet that was asked for by name, when one was
 */
export function excelProblem(thrown: unknown, sheet?: string): WorkbookProblem {
  if (thrown instanceof WorkbookProblem) return thrown;
  if (!(thrown instanceof OfficeExtension.Error)) {
    return new WorkbookProblem(hostRefused(HOST, thrown instanceof Error ? thrown.message : String(thrown)), { cause: thrown });
  }
  if (thrown.code === "ItemNotFound" && sheet !== undefined) return new WorkbookProblem(noSuchSheet(sheet), { cause: thrown });
  return new WorkbookProblem(SENTENCES.get(thrown.code) ?? hostRefused(HOST, thrown.code), { cause: thrown });
}

/** Excel's own code for what a problem is about, "" where it is not Excel's. */
export const excelCode = ({ cause }: WorkbookProblem): string => (cause instanceof OfficeExtension.Error ? cause.code : "");
