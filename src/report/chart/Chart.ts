/** Curves to be drawn, their numbers as on the sheet. */
export interface Curves {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly lines: readonly Line[];
  /** What the axes span while there is no curve, and those along which it is not known where: it lies below 0 there. */
  readonly room?: { readonly points: readonly Point[]; readonly unforetold: readonly ("x" | "y")[] };
}

export interface Chart extends Curves {
  /** Of what is drawn upwards: "g", "%". */
  readonly unit: string;
}

export interface Line {
  readonly name: string;
  readonly points: readonly Point[];
  /** What was weighed has marks; a limit and what is foretold are thin lines without any. */
  readonly draws: "weighed" | "limit" | "foretold";
  /** Tells samples apart: the mark, and the dashes between them; from 0. */
  readonly look: number;
  /** Open marks tell ash from char of the same sample. */
  readonly open?: true;
  /** Points that belong to different runs, which no line joins. */
  readonly isApart?: true;
  /** The other edge of a limit that is a band. */
  readonly upper?: readonly Point[];
}

export interface Point {
  readonly x: number;
  readonly y: number;
}
