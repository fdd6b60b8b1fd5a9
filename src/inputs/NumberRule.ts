/** What a number must be to serve, and what to say when it is not. */
export interface NumberRule {
  readonly unit: string;
  /** What the value is called in a message, with its article: "a weighing". */
  readonly called: string;
  /** What to do about it, one sentence. */
  readonly advice: string;
  /** True where 0 cannot occur in nature, so that a 0 from the host means a blank cell. */
  readonly zeroIsBlank: boolean;
  /** True where 0 says that there is none of it, as leaving it out does. */
  readonly zeroIsNone?: boolean;
  /** What the value must not be; of several that it breaks the first is said. */
  readonly bounds?: readonly Bound[];
}

/** Numbers that are refused: those for which every comparison that stands here holds. Data, so that a cell formula can ask the same. */
export interface Bound {
  readonly above?: number;
  readonly from?: number;
  readonly upTo?: number;
  readonly below?: number;
  /** What stands after the point, from 0 to below 1: figures above zero that a wrong unit gives away by their decimals. */
  readonly decimals?: number;
  /** In words, as they follow the value: "below zero". */
  readonly says: string;
}
