/** How a planned cell looks. The adapters give each the same look, from one table (sheetStyles.ts). */
export type CellStyle =
  "title" | "heading" | "columnHeading" | "label" | "input" | "computed" | "recorded" | "result" | "note" | "noteHeading" | "caution";

/** One cell of a planned sheet. */
export interface PlannedCell {
  /** "B7" */
  readonly cell: string;
  /** Text (kept as text even when it begins with "="), number or TRUE/FALSE; left out for an empty cell. */
  readonly content?: string | number | boolean;
  /** A cell formula in English notation, beginning with "="; instead of content. */
  readonly formula?: string;
  readonly style?: CellStyle;
  /** A number format in English notation: "0.000", "0.0%", "hh:mm". */
  readonly format?: string;
}

/** What may be typed into a range, and what is said beside it. Text limits are those of the .xlsx file format. */
export interface EntryRule {
  readonly range: string;
  readonly allow:
    | { readonly kind: "number"; readonly atLeast: number; readonly atMost: number }
    | { readonly kind: "words"; readonly words: readonly string[] }
    | { readonly kind: "anything" };
  /** At most 32 characters. */
  readonly promptTitle: string;
  /** At most 255 characters. */
  readonly prompt: string;
  /** Shown when the entry is refused; at most 225 characters. */
  readonly refusal: string;
}

export interface ChartSeries {
  readonly name: string;
  /** One column of cells: "C12:C23". */
  readonly x: string;
  readonly y: string;
}

/** A scatter chart with lines. */
export interface PlannedChart {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly ChartSeries[];
  /** The cells the chart covers: "H4:O20". */
  readonly over: string;
}

/** A whole new sheet as data. */
export interface SheetPlan {
  /** At most 31 characters, none of \ / ? * [ ] : */
  readonly name: string;
  readonly cells: readonly PlannedCell[];
  /** Width of each column from A on, in characters. */
  readonly columnWidths: readonly number[];
  readonly entryRules: readonly EntryRule[];
  readonly chart?: PlannedChart;
  /** Rows that stay in view. */
  readonly frozenRows: number;
  /** The cell selected when the sheet opens: the first to fill in. */
  readonly startAt: string;
}
