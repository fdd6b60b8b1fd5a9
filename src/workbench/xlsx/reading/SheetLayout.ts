import { BooleanNumber, type IRange, type IWorksheetData } from "@univerjs/core";
import { cellArea } from "../../../workbook/cellArea";
import { pixelsOf } from "../../../workbook/columnPixels";
import { ROW_HEIGHT, rowPixelsOf } from "../../../workbook/grid/writing/worksheetData";
import { isOn, type Attributes } from "../../../xlsx/parts/readXml";
import type { Findings } from "./Findings";

/** The engine remembers every merged cell one by one, and runs out of memory over a merged area as large as a sheet. */
const MOST_MERGED_CELLS = 100_000;

/** How the rows and columns of one sheet lie: heights, widths, what stays in view, and which cells are merged. */
export class SheetLayout {
  /** The last row and column of merged cells, from 0. */
  end = { row: -1, column: -1 };
  hasHidden = false;
  private readonly rowData: Record<number, { h: number; ia: BooleanNumber }> = {};
  private readonly widths: { from: number; to: number; pixels: number }[] = [];
  private readonly merged: IRange[] = [];
  private frozen = { rows: 0, columns: 0 };
  private mergedCells = 0;
  private hasGridlines = true;

  constructor(
    private readonly sheet: string,
    private readonly findings: Findings,
  ) {}

  /** @param row counted from 0 */
  row(row: number, { ht, hidden }: Attributes): void {
    // A height that the file says is kept, whatever the text would take.
    if (ht !== undefined) this.rowData[row] = { h: rowPixelsOf(Number(ht)), ia: BooleanNumber.FALSE };
    this.hasHidden ||= isOn(hidden);
  }

  columns({ min, max, width, hidden }: Attributes): void {
    if (width !== undefined) this.widths.push({ from: Number(min), to: Number(max), pixels: pixelsOf(Number(width)) });
    this.hasHidden ||= isOn(hidden);
  }

  view({ showGridLines }: Attributes): void {
    this.hasGridlines = showGridLines === undefined || isOn(showGridLines);
  }

  pane({ state = "", xSplit = "0", ySplit = "0" }: Attributes): void {
    if (state.startsWith("frozen")) this.frozen = { rows: Number(ySplit), columns: Number(xSplit) };
  }

  merge({ ref = "" }: Attributes): void {
    const area = cellArea(ref);
    if (area === undefined || area.rows * area.columns === 1) return;
    if (this.mergedCells + area.rows * area.columns > MOST_MERGED_CELLS) return this.findings.add("merged", this.sheet);
    this.mergedCells += area.rows * area.columns;
    const [endRow, endColumn] = [area.row + area.rows - 1, area.column + area.columns - 1];
    this.merged.push({ startRow: area.row, startColumn: area.column, endRow, endColumn });
    this.end = { row: Math.max(this.end.row, endRow), column: Math.max(this.end.column, endColumn) };
  }

  /** For the grid, of so many columns. */
  data(columns: number): Partial<IWorksheetData> {
    const { rows: ySplit, columns: xSplit } = this.frozen;
    return {
      defaultRowHeight: ROW_HEIGHT,
      rowData: this.rowData,
      ...(this.hasGridlines ? {} : { showGridlines: BooleanNumber.FALSE }),
      columnData: Object.fromEntries(
        this.widths.flatMap(({ from, to, pixels }) =>
          Array.from({ length: Math.max(0, Math.min(to, columns) - from + 1) }, (_, index) => [from - 1 + index, { w: pixels }]),
        ),
      ),
      mergeData: this.merged,
      ...(xSplit + ySplit > 0 && { freeze: { xSplit, ySplit, startRow: ySplit > 0 ? ySplit : -1, startColumn: xSplit > 0 ? xSplit : -1 } }),
    };
  }
}
