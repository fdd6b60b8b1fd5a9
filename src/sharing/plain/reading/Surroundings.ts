import type { CellArea } from "../../../workbook/cellArea";
import type { CellReading } from "../../../workbook/Workbook";
import type { Growth } from "./Growth";

/** Where a table of the workbook stands. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: string;
  /** Headings and totals included. */
  readonly area: CellArea;
  readonly headingRows: number;
  readonly totalsRows: number;
  /** From left to right. */
  readonly columns: readonly string[];
}

/** What has to be known about the place of a formula to write it without the add-in. */
export interface Surroundings {
  readonly sheet: string;
  /** "B7" */
  readonly cell: string;
  /** What the cell and its spill fill, "B7" or "B7:B20". */
  readonly area: string;
  /** The formula of a defined name, "=Run!$B$4", the sheet's own before the workbook's; undefined where it is not known. */
  readonly nameOf: (name: string, sheet: string) => string | undefined;
  /** A table by its name, or for "" the one in which the cell stands. */
  readonly tableOf: (name: string) => TablePlace | undefined;
  /** The area that the cell's spill fills, "A33:A40". */
  readonly spillOf: (sheet: string, cell: string) => string | undefined;
  /**
   * What a cell held when the workbook was read, by its place from 0; undefined for one that was blank. Left out where nothing is known of the
   * cells.
   */
  readonly heldAt?: (sheet: string, row: number, column: number) => CellReading | undefined;
  /** True for a sheet that goes from the file with what stands on it. */
  readonly isGone?: (sheet: string) => boolean;
  /** What is beside a formula that takes as many cells as its answer needs; left out for one that keeps its size, or where that is not known. */
  readonly growth?: Growth;
  /** True where blank cells are boxes that somebody will fill in. */
  readonly isUnfilled?: boolean;
}

/** What a plain form may use. */
export interface PlainOptions {
  /** True where the reader's spreadsheet knows functions newer than Excel 2016, such as LET. */
  readonly newerFunctions?: boolean;
  /** True where defined names mean other cells than those of the sheet that is written, so that each is written out where it is used. */
  readonly areNamesWrittenOut?: boolean;
  /** True for sheets that nobody has filled in yet, where a blank cell says nothing. */
  readonly areUnfilled?: boolean;
}
