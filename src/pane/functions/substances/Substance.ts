/** What a substance is to somebody who heats it: which questions its name brings to mind. */
export type SubstanceKind =
  /** Decomposes when heated and leaves a solid of known formula. */
  | "mineral"
  /** Gives off its crystal water and leaves the anhydrous salt. */
  | "hydrate"
  /** Is burnt or charred. */
  | "fuel"
  /** None of these. */
  | "other";

/** A substance by the names people call it, and the formula to put into an example. */
export interface Substance {
  readonly formula: string;
  readonly kind: SubstanceKind;
  /** What is left after heating in air: the oxide of a mineral, the anhydrous salt of a hydrate. */
  readonly residue?: string;
  /** English names, British and American spelling, trade and mineral names, parted by commas. */
  readonly en: string;
  readonly de?: string;
  readonly fr?: string;
  readonly es?: string;
  /** What the formula leaves out, where the material is no pure compound. */
  readonly takenAs?: string;
}
