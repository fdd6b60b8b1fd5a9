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
  readonly sheet: GuideSheet;
}

/** The run sheet for a guide's question: what is typed and chosen in the Run sheet tab, where it is not what already stands there. */
export interface GuideSheet {
  readonly kind: "charring" | "liquids" | "salt" | "balance";
  /** The kind in the words of the tab. */
  readonly label: string;
  readonly typed: Readonly<Partial<Record<"vessel" | "formula" | "residue" | "ovenCelsius", string>>>;
}

/** The names of the functions that its steps work with, without the prefix. */
export const functionsOf = ({ steps }: Guide): string[] => [
  ...new Set(steps.flatMap(({ cell }) => (cell === undefined ? [] : [cell.slice("=RETORT.".length, cell.indexOf("("))]))),
];

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
