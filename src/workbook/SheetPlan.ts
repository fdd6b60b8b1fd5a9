/** How a planned cell looks. The adapters give each the same look, from one table (sheetStyles.ts). */
export type CellStyle =
  | ("title" | "heading" | "columnHeading" | "label" | "input" | "computed" | "recorded" | "result" | "note" | "noteHeading" | "caution")
  // Of a run sheet, whose text is small enough for a bench and for paper.
  | (
      | "runTitle"
      | "runLine"
      | "runStrong"
      | "runAnswer"
      | "runBand"
      | "runBandWrapped"
      | "runLightBand"
      | "runLightBandWrapped"
      | "runLabel"
      | "runTotal"
      | "runTotalNumber"
      | "runReckoned"
    )
  | ("runBox" | "runBoxStart" | "runBoxMore" | "runBoxEnd")
  | ("runVerdict" | "runVerdictStrong" | "runMark" | "runFinding" | "runHelp" | "runBeside" | "runCaution" | "runWorking" | "runWorkingHeading");

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
  /** A heavy line along the left edge. */
  readonly heavyLeft?: true;
}

/** What may be typed into a range, and what is said beside it. Text limits are those of the .xlsx file format. */
export interface EntryRule {
  readonly range: string;
  readonly allow:
    | { readonly kind: "number"; readonly atLeast: number; readonly atMost: number }
    | { readonly kind: "words"; readonly words: readonly string[] }
    /** A condition in English notation, beginning with "=", for the first cell of the range; references move with the cell. */
    | { readonly kind: "condition"; readonly condition: string }
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
  /**
   * Left out: what was weighed, its points joined; a limit and what is foretold are lines without marks. A frame is not seen: while nothing is
   * weighed it spans the axes with the points of the others, so that a curve can be drawn by hand, where no limit can do that.
   */
  readonly draws?: "limit" | "foretold" | "frame";
  /** From 0: those of one look belong together, as all of one sample. Left out: one each, in their order. The key names limits of the first alone. */
  readonly look?: number;
  /** Hollow marks tell ash from char of the same sample. */
  readonly open?: true;
  /** The upper edge of a band, whose lower edge is the limit before it; the key names the band once, by that. */
  readonly isUpper?: true;
}

/** A number format of axes: nothing at 0 and below. */
export const ABOVE_ZERO = "General;;";

/** A scatter chart with lines. */
export interface PlannedChart {
  readonly title: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly ChartSeries[];
  /** Axes whose numbers cannot be foretold: on a blank sheet every point lies below 0 along them, where ticks have no texts. */
  readonly unforetold?: readonly ("x" | "y")[];
  /** Its points are of different runs, parted by blank rows: no line joins them, and one alone is drawn. */
  readonly isApart?: true;
  /** The cells the chart covers: "H4:O20". */
  readonly over: string;
}

/** How a sheet is printed. Lengths are points, 1/72 inch. */
export interface PrintPlan {
  /** What is printed: "A1:I98". */
  readonly area: string;
  /** Left out: in portrait. */
  readonly landscape?: true;
  /** The last row that every page repeats, counted from the top. */
  readonly titleRows: number;
  /** The first row that every page repeats; left out: row 1. */
  readonly titleFrom?: number;
  /** Percent of the size on screen. */
  readonly scale: number;
  readonly margins: Readonly<Record<"left" | "right" | "top" | "bottom" | "header" | "footer", number>>;
  /** One line at the top of every page, in the same codes as the foot; left out where nothing is wanted there. */
  readonly header?: string;
  /**
   * In the codes of the file format: "&A" the sheet's name, "&P" the page, "&N" how many there are. "&D" is not left to the program that
   * prints, whose order of day and month depends on its country: whoever writes the plan puts the day there in words (withDay).
   */
  readonly footer: Readonly<Record<"left" | "centre" | "right", string>>;
  /** Rows, from 1, that begin a page. */
  readonly breaksBefore: readonly number[];
}

/** A foot with its day in words. */
export const withDay = (codes: string, inWords: string): string => codes.replaceAll("&D", () => inWords);

/** Rows of one height, from and to as printed on the sheet. */
export interface RowHeight {
  readonly from: number;
  readonly to: number;
  /** Points. */
  readonly height: number;
}

/** How cells look while a condition holds, where the workbook can show that; words never depend on it. */
export interface Emphasis {
  readonly range: string;
  /** In English notation, beginning with "=", for the first cell of the range; references move with the cell. */
  readonly condition: string;
  readonly look: "failed" | "next";
}

/** A whole new sheet as data. */
export interface SheetPlan {
  /** At most 31 characters, none of \ / ? * [ ] : */
  readonly name: string;
  readonly cells: readonly PlannedCell[];
  /** Width of each column from A on, in characters. */
  readonly columnWidths: readonly number[];
  readonly entryRules: readonly EntryRule[];
  /** Each under a title of its own. */
  readonly charts?: readonly PlannedChart[];
  /** Rows that stay in view. */
  readonly frozenRows: number;
  /** False: no lines between the cells but those of their looks. */
  readonly gridlines?: false;
  /** Left out: as high as the workbook makes them. */
  readonly rowHeights?: readonly RowHeight[];
  /** Left out: printed as the workbook does. */
  readonly print?: PrintPlan;
  readonly emphasis?: readonly Emphasis[];
  /** The cell selected when the sheet opens: the first to fill in. */
  readonly startAt: string;
}
