/** "first" has nothing before it; "too soon to tell" has nothing early enough, or no loss yet, to be judged by. */
export type ConstancyVerdict = "first" | "not yet" | "steady" | "gain" | "too soon to tell" | "balance too coarse";

/** One weighing of a series as a constant-weight criterion sees it. */
export interface ConstancyStep {
  /** From 1, in the order taken. */
  readonly weighing: number;
  /** Net, g. */
  readonly sample: number;
  /** Number, from 1, of the earlier weighing it is compared with. */
  readonly comparedWith?: number;
  /** Sample minus the one it is compared with, g: negative for a loss. */
  readonly change?: number;
  /** Largest change that counts as constant here, g. */
  readonly limit?: number;
  readonly verdict: ConstancyVerdict;
}
