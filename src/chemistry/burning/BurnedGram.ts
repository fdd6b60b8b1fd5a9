/** Complete open burning of one gram of dry sample, ash included; every mass in g per g of dry sample. */
export interface BurnedGram {
  readonly oxygenTaken: number;
  readonly carbonDioxide: number;
  readonly water: number;
  /** N2, SO2, hydrogen halides, halogens and P4O10 smoke. */
  readonly otherGases: number;
  /** Ash, or the solids that the formula leaves. */
  readonly solid: number;
  /** What the analysis does not account for; negative where it sums to more than the sample. */
  readonly notCovered: number;
}
