import { excelProblem } from "./excelProblem";
import { excelSupports } from "./excelReady";

interface Circumstances {
  /** The sheet asked for by name, for the sentence when it is missing. */
  readonly sheet?: string;
  /**
   * Everything done counts as one step of Excel's undo, where Excel can (ExcelApi 1.20). Excel refuses the group with
   * UndoNotSupported when a call in it cannot be undone there; which calls those are differs between platforms.
   */
  readonly oneUndoStep?: boolean;
}

/**
 * Runs work in Excel, waiting while a cell is being edited.
 * @throws WorkbookProblem in place of Excel's own errors
 */
export async function inExcel<T>(work: (context: Excel.RequestContext) => Promise<T>, { sheet, oneUndoStep }: Circumstances = {}): Promise<T> {
  const grouped = oneUndoStep === true && excelSupports("1.20");
  try {
    return await Excel.run({ delayForCellEdit: true, ...(grouped ? { mergeUndoGroup: true } : {}) }, work);
  } catch (thrown) {
    throw excelProblem(thrown, sheet);
  }
}
