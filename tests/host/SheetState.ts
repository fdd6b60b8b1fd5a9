import { cellArea, cellAt, covers, type CellArea } from "../../src/workbook/cellArea";
import { entered } from "./entered";
import { shownText, type HostValue } from "./HostValue";

interface CellState {
  formula?: string;
  value: HostValue;
}

export interface ChartState {
  readonly id: string;
  readonly type: string;
  name?: string;
  title?: string;
  xTitle?: string;
  yTitle?: string;
  /** Number formats of the axes, where they are not the spreadsheet's own. */
  xFormat?: string;
  yFormat?: string;
  legend?: boolean;
  legendAt?: string;
  blanks?: string;
  over?: string;
  series: SeriesState[];
}

export interface SeriesState {
  name: string;
  x?: string;
  y?: string;
  marker?: string;
  colour?: string;
  /** Colour inside its marks. */
  inside?: string;
  line?: string;
  /** Points. */
  weight?: number;
  /** False where its entry was taken out of the legend. */
  isInKey?: boolean;
}

export interface ConditionalFormatState {
  readonly range: string;
  formula?: string;
  /** Of one that compares the cell's value, instead of a formula. */
  cellValue?: { readonly formula1: string; readonly formula2?: string; readonly operator: string };
  readonly look: Record<string, unknown>;
}

export interface EntryRuleState {
  readonly range: string;
  /** True where the rules before it were taken away. */
  readonly isCleared?: true;
  rule?: unknown;
  prompt?: { title: string; message: string };
  errorAlert?: { style: string; title: string; message: string };
}

// Excel specifications and limits: 1,048,576 rows by 16,384 columns.
export const WHOLE_SHEET: CellArea = { row: 0, column: 0, rows: 1_048_576, columns: 16_384 };

/** One sheet: contents, looks and what hangs on it. Rows and columns count from 0. */
export class SheetState {
  readonly cells = new Map<string, CellState>();
  visibility = "Visible";
  /** Values that another cell's formula puts here, under the cell's name. */
  readonly spilled = new Map<string, { value: HostValue; anchor: string }>();
  /** The area filled by each formula that fills more than its own cell. */
  readonly spills = new Map<string, string>();
  /** "B7" -> { "font.color": "#1F2328", numberFormat: "0.00" } */
  readonly looks = new Map<string, Record<string, unknown>>();
  readonly columnWidths = new Map<number, number>();
  readonly rowHeights = new Map<number, number>();
  /** What was set of the printed page, under the names that the client uses: "zoom", "leftMargin", "leftFooter". */
  readonly page: Record<string, unknown> = {};
  readonly pageBreaks: string[] = [];
  readonly conditionalFormats: ConditionalFormatState[] = [];
  readonly entryRules: EntryRuleState[] = [];
  readonly charts: ChartState[] = [];
  /** Names of this sheet alone, with the formula behind each. */
  readonly names = new Map<string, { formula: string; visible: boolean }>();
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  /** "A2:D3" */
  readonly merged: string[] = [];
  frozenRows = 0;
  gridlines = true;
  isProtected = false;
  /** Whether a filter hides rows. */
  isFiltered = false;

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  write(row: number, column: number, written: number | string | boolean): void {
    const cell = cellAt(row, column);
    const { formula, value, format } = entered(written);
    if (formula === undefined && value === null) this.cells.delete(cell);
    else this.cells.set(cell, formula === undefined ? { value } : { formula, value });
    if (format !== undefined && this.format(row, column) === "General") this.setLook(row, column, "numberFormat", format);
  }

  value(row: number, column: number): HostValue {
    const cell = cellAt(row, column);
    return this.cells.get(cell)?.value ?? this.spilled.get(cell)?.value ?? null;
  }

  formula(row: number, column: number): string | undefined {
    return this.cells.get(cellAt(row, column))?.formula;
  }

  format(row: number, column: number): string {
    return String(this.looks.get(cellAt(row, column))?.numberFormat ?? "General");
  }

  text(row: number, column: number): string {
    return shownText(this.value(row, column), this.format(row, column));
  }

  setLook(row: number, column: number, property: string, value: unknown): void {
    const cell = cellAt(row, column);
    this.looks.set(cell, { ...this.looks.get(cell), [property]: value });
  }

  /** The smallest area around everything that holds anything, of the whole sheet or of a part of it. */
  used(within: CellArea = WHOLE_SHEET): CellArea | undefined {
    let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
    for (const cell of [...this.cells.keys(), ...this.spilled.keys()]) {
      const { row, column } = cellArea(cell) ?? { row: 0, column: 0 };
      if (!covers(within, row, column)) continue;
      [top, left, bottom, right] = [Math.min(top, row), Math.min(left, column), Math.max(bottom, row), Math.max(right, column)];
    }
    return bottom < 0 ? undefined : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }

  /** The formula cell whose spill covers this one. */
  spillParent(row: number, column: number): string | undefined {
    return [...this.spills].find(([, range]) => {
      const area = cellArea(range);
      return area !== undefined && covers(area, row, column);
    })?.[0];
  }

  copy(id: string, name: string): SheetState {
    const copy = new SheetState(id, name);
    for (const [cell, state] of this.cells) copy.cells.set(cell, { ...state });
    for (const [cell, look] of this.looks) copy.looks.set(cell, { ...look });
    for (const [column, width] of this.columnWidths) copy.columnWidths.set(column, width);
    for (const [row, height] of this.rowHeights) copy.rowHeights.set(row, height);
    Object.assign(copy.page, structuredClone(this.page));
    copy.pageBreaks.push(...this.pageBreaks);
    copy.conditionalFormats.push(...structuredClone(this.conditionalFormats));
    copy.entryRules.push(...structuredClone(this.entryRules));
    copy.charts.push(...structuredClone(this.charts));
    for (const [name, item] of this.names) copy.names.set(name, { ...item });
    copy.frozenRows = this.frozenRows;
    copy.gridlines = this.gridlines;
    return copy;
  }
}
