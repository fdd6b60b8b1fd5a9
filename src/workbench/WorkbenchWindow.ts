import type { Bench } from "../workbook/bench/Bench";
import type { BenchWorkbook } from "../workbook/bench/BenchWorkbook";
import type { CellAddress, CellContent } from "../workbook/Workbook";

/** What the page lends to the pane in its frame, and to browser tests. */
export interface RetortWorkbench {
  readonly workbook: BenchWorkbook;
  readonly bench: Bench;
  /** As if typed and entered. */
  type(address: CellAddress, content: CellContent): void;
}

export interface WorkbenchWindow extends Window {
  retortWorkbench?: RetortWorkbench;
}
