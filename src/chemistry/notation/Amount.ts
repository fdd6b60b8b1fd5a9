/** A number in a formula: a count after a symbol, or an amount before a formula. */
export interface Amount {
  readonly value: number;
  /** The index after it. */
  readonly end: number;
}
