/** One parameter of a drying model. */
export interface ModelParameter {
  /** As in the model's law: "k". */
  readonly name: string;
  /** As printed after its value; "" where it has none. */
  readonly unit: string;
  /** True where a value near 0 means something, so that a large standard error is no sign of a fit gone wrong. */
  readonly mayBeZero?: true;
}

/** A published law of thin-layer drying: the moisture ratio MR over time. */
export interface DryingModel {
  readonly name: string;
  /** MR as printed, t in min. */
  readonly law: string;
  readonly parameters: readonly ModelParameter[];
  /** True where MR is 1 at t = 0, so that the first weighing is the law's own start and not a point to fit. */
  readonly startsAtOne: boolean;
  /** True where MR ends at a value of its own, so that no final mass can be fitted beside it. */
  readonly endsElsewhere: boolean;
  /** @param t min, 0 or more */
  ratio(parameters: readonly number[], t: number): number;
  /** How MR moves with each parameter. */
  slopes(parameters: readonly number[], t: number): readonly number[];
  /** Parameters to begin from, for a run whose rate is about `rate`, 1/min. */
  starts(rate: number): readonly (readonly number[])[];
}
