/** A chemical formula as read: what it is made of, without its layout. */
export interface Formula {
  /** The user's own text. */
  readonly text: string;
  /** How many of each atom, by symbol ("Ca"; isotopes as "D", "T", "13C"), in the order they first appear. */
  readonly atoms: ReadonlyMap<string, number>;
  /** In units of the elementary charge, 0 for a neutral formula. */
  readonly charge: number;
  /** What was decided while reading, where another reading was possible: one clause each. */
  readonly notes: readonly string[];
}
