import { excelProblem } from "./excelProblem";
import { excelSupports } from "./excelReady";

interface Circumstances {
  /** The sheet asked for by name, for the sentence when it is missing. */
  readonly sheet?: string;
  /** Everything done counts as one step of Excel's undo, where Excel can (ExcelApi 1.20). */
  readonly oneUndoStep?: UndoStep;
}

interface UndoStep {
  /** Clears away what a refused attempt left, before the work is done once more without the grouping. */
  startOver(): Promise<void>;
}

// Excel refuses a group when a call in it cannot be undone there; which calls those are differs between platforms.
const GROUP_REFUSED = "UndoNotSupported";

/**
 * Runs work in Excel, waiting while a cell is being edited.
 * @throws WorkbookProblem in place of Excel's own errors
 */
export async function inExcel<T>(work: (context: Excel.RequestContext) => Promise<T>, { sheet, oneUndoStep }: Circumstances = {}): Promise<T> {
  const grouped = oneUndoStep !== undefined && excelSupports("1.20");
  try {
    return await Excel.run({ delayForCellEdit: true, ...(grouped ? { mergeUndoGroup: true } : {}) }, work);
  } catch (thrown) {
    if (!grouped || !(thrown instanceof OfficeExtension.Error) || thrown.code !== GROUP_REFUSED) throw excelProblem(thrown, sheet);
  }
  await oneUndoStep.startOver();
  return inExcel(work, { ...(sheet === undefined ? {} : { sheet }) });
}
