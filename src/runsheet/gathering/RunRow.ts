import type { Cell, Expression } from "../expressions/Expression";
import type { ShareName } from "../sheet/layout";

export const GATHERED_SHARES = ["moistureWet", "volatile", "charYield", "ash"] as const satisfies readonly ShareName[];
export type GatheredShare = (typeof GATHERED_SHARES)[number];

/** What counts as the loss of a salt or mineral, and of staged heating. */
export const LOSSES = ["lossOnHeating", "lostInAll"] as const satisfies readonly ShareName[];
export type LossName = (typeof LOSSES)[number];

/** One sample of one run, by references to its sheet. */
export interface RunRow {
  /** The sheet's name when it was read. */
  readonly sheet: string;
  /** A cell that holds a heading: it shows an error only once the sheet is gone. */
  readonly heading: Cell;
  /** "✓", or what is wrong with the run. */
  readonly trust: Expression;
  /** The same of this sample alone, of a sheet of several; left out: that of the run. */
  readonly ownTrust?: Expression;
  readonly name: Expression;
  /** The box that the sample was named in, and what stood there when it was read; left out where the sheet names no samples. */
  readonly own?: { readonly at: Cell; readonly called: string };
  /** Undefined for a share that the kind of run does not have. */
  readonly shares: Readonly<Partial<Record<GatheredShare, Cell>>>;
  /** What a kind without a vapour share lost in the fire. */
  readonly loss?: { readonly of: LossName; readonly share: Cell };
  /** ± 95 % by weighing of the vapour's share, else of the loss, or of the water's where that is all there is. */
  readonly plusMinus: Expression | undefined;
  /** Of the opening workbook's made-up run. */
  readonly isDemo?: true;
}

/** A run sheet without a row here, and why. */
export interface LeftOut {
  readonly sheet: string;
  readonly why: string;
}

export interface RunsRead {
  readonly rows: readonly RunRow[];
  readonly leftOut: readonly LeftOut[];
}
