/** One thing that a function refuses about inputs that are each right in themselves, as a cell formula asks it. */
export interface RefusalInCells {
  /** A condition on the texts of the arguments: TRUE, or a number that is not 0, where it refuses. IF, comparisons and sums alone. */
  readonly when: string;
  /** A sentence of `problems/plainCellProblems`. */
  readonly says: string;
  /** True where the inputs are fine and no answer follows, #N/A. */
  readonly noAnswer?: true;
}
