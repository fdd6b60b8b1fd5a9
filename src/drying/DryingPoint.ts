/** One weighing of a drying sample. */
export interface DryingPoint {
  /** min */
  readonly minutes: number;
  /** Sample without vessel, g. */
  readonly grams: number;
}
