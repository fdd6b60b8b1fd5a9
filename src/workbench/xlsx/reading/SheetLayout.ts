import { BooleanNumber, type IRange, type IStyleData, type IWorksheetData } from "@univerjs/core";
import { cellArea } from "../../../workbook/cellArea";
import { pixelsOf } from "../../../workbook/columnPixels";
import { ROW_HEIGHT, rowPixelsOf } from "../../../workbook/grid/writing/worksheetData";
import { isOn, type Attributes } from "../../../xlsx/parts/readXml";
import type { Findings } from "./Findings";
import type { CellLookInFile } from "./stylesPart";

/** The engine remembers every merged cell one by one, and runs out of memory over a merged area as large as a sheet. */
const MOST_MERGED_CELLS = 100_000;

/** How the rows and columns of one sheet lie: heights, widths, what stays in view, and which cells are merged. */
export class SheetLayout {
  /** The last row and column of merged cells, from 0. */
  end = { row: -1, column: -1 };
  hasHidden = false;
  private readonly rowData: Record<number, { h?: number; ia?: BooleanNumber; s?: IStyleData }> = {};
  private readonly looksOfColumns: { from: number; to: number; look: IStyleData }[] = [];
  private readonly widths: { from: number; to: number; pixels: number }[] = [];
  private readonly merged: IRange[] = [];
  private frozen = { rows: 0, columns: 0 };
  private mergedCells = 0;
  private hasGridlines = true;

  constructor(
    private readonly sheet: string,
    private readonly findings: Findings,
    private readonly looks: readonly CellLookInFile[],
  ) {}

  /** @param row counted from 0 */
  row(row: number, { ht, hidden, s, customFormat }: Attributes): void {
    // A height that the file says is kept, whatever the text would take.
    if (ht !== undefined) this.rowData[row] = { h: rowPixelsOf(Number(ht)), ia: BooleanNumber.FALSE };
    const look = isOn(customFormat) ? this.lookOf(s) : undefined;
    if (look !== undefined) this.rowData[row] = { ...this.rowData[row], s: look };
    this.hasHidden ||= isOn(hidden);
  }

  columns({ min, max, width, hidden, style }: Attributes): void {
    const look = this.lookOf(style);
    if (look !== undefined) this.looksOfColumns.push({ from: Number(min), to: Number(max), look });
    if (width !== undefined) this.widths.push({ from: Number(min), to: Number(max), pixels: pixelsOf(Number(width)) });
    this.hasHidden ||= isOn(hidden);
  }

  /** True where the row or the column, counted from 0, gives cells a look. */
  givesLook(row: number, column: number): boolean {
    return this.rowData[row]?.s !== undefined || this.looksOfColumns.some(({ from, to }) => column + 1 >= from && column + 1 <= to);
  }

  private lookOf(number: string | undefined): IStyleData | undefined {
    const found = number === undefined ? undefined : this.looks[Number(number)];
    return found === undefined || found.isPlain ? undefined : found.look;
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
    const columnData: Record<number, { w?: number; s?: IStyleData }> = {};
    const each = ({ from, to }: { from: number; to: number }, given: { w: number } | { s: IStyleData }): void => {
      for (let column = from - 1; column < Math.min(to, columns); column++) columnData[column] = { ...columnData[column], ...given };
    };
    for (const line of this.widths) each(line, { w: line.pixels });
    for (const line of this.looksOfColumns) each(line, { s: line.look });
    return {
      defaultRowHeight: ROW_HEIGHT,
      rowData: this.rowData,
      ...(this.hasGridlines ? {} : { showGridlines: BooleanNumber.FALSE }),
      columnData,
      mergeData: this.merged,
      ...(xSplit + ySplit > 0 && { freeze: { xSplit, ySplit, startRow: ySplit > 0 ? ySplit : -1, startColumn: xSplit > 0 ? xSplit : -1 } }),
    };
  }
}
