/** A worked page for one question of the trade. */
export interface Guide {
  /** The page's file, without its ending. */
  readonly file: string;
  readonly title: string;
  /** Where the numbers come from: all are invented, and said to be so. */
  readonly scene: string;
  /** Hurt that the work can do; said first. */
  readonly cautions: readonly string[];
  readonly steps: readonly Step[];
  /** The kind of run sheet to insert, in the words of the Run sheet tab. */
  readonly sheet: string;
}

/** One step: what to do or think, and the cell formula with what it gives, worked by hand beside it. */
export interface Step {
  readonly text: string;
  readonly byHand?: string;
  readonly cell?: string;
  /** What the cell gives, to as many digits as it was worked by hand to; for a table the value beside a label. */
  readonly gives?: number | string;
  /** The label of the table's row that is meant. */
  readonly row?: string;
}
