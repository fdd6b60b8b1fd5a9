import type { GridEngine } from "../workbook/grid/GridEngine";
import type { OwnFiles } from "../sharing/shareInFile";
import type { CellAddress, CellContent, Workbook } from "../workbook/Workbook";

/** What the page lends to the pane in its frame, and to browser tests. */
export interface RetortWorkbench {
  readonly workbook: Workbook;
  readonly engine: GridEngine;
  /** Once the bar stands. */
  files?: OwnFiles;
  /** As if typed and entered. */
  type(address: CellAddress, content: CellContent): void;
}

export interface WorkbenchWindow extends Window {
  retortWorkbench?: RetortWorkbench;
}
