import { WorkbookProblem } from "./Workbook";

/** The workbook hands over no file of itself here and now: whoever shares goes on in the workbook itself. The message says why. */
export class NoOwnFile extends WorkbookProblem {}
