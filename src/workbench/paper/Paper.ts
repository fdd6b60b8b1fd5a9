import type { Curves } from "../../report/chart/Chart";
import type { PrintPlan } from "../../workbook/SheetPlan";

/** A sheet as it goes on paper. Lengths are points of the paper. */
export interface Paper extends Pick<PrintPlan, "margins" | "header" | "footer"> {
  readonly sheet: string;
  readonly landscape: boolean;
  /** A sheet wider than its page is cut between columns. */
  readonly tables: readonly PaperTable[];
  /** What is not on the paper, in words. */
  readonly remark: string;
}

export interface PaperTable {
  /** True below the table before it on the same page. */
  readonly goesOn: boolean;
  readonly columns: readonly number[];
  /** Come again on every page. */
  readonly head: readonly PaperRow[];
  readonly rows: readonly PaperRow[];
}

export interface PaperRow {
  readonly height: number;
  readonly beginsPage: boolean;
  readonly cells: readonly PaperCell[];
  /** In place of cells: the charts that stand in these rows; room to draw by hand where there are none. */
  readonly charts?: readonly Curves[];
}

export interface PaperCell {
  readonly text: string;
  readonly across: number;
  readonly down: number;
  readonly css: string;
}
