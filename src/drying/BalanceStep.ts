/** The display step that a run is judged by. */
export interface BalanceStep {
  readonly grams: number;
  /** False where it was read off the last digit of the weighings. */
  readonly given: boolean;
}
