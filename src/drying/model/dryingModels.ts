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

const PER_MINUTE = "1/min";

// Multiples of the rate, and exponents, from which the fits begin: a decade each way, and the exponents that published
// curves have (0.5 to 2).
const RATES_TRIED = [0.1, 0.3, 1, 3, 10];
const EXPONENTS_TRIED = [0.5, 0.75, 1, 1.5, 2];
// Shares of the first term in a two-term law.
const SHARES_TRIED = [0.3, 0.6, 0.9];

/** The law of Lewis, often called Newton's: Ind. Eng. Chem. 13 (1921) 427, doi:10.1021/ie50137a021. */
const newton: DryingModel = {
  name: "Newton",
  law: "MR = exp(-k t)",
  parameters: [{ name: "k", unit: PER_MINUTE }],
  startsAtOne: true,
  endsElsewhere: false,
  ratio: ([k = 0], t) => Math.exp(-k * t),
  slopes: ([k = 0], t) => [-t * Math.exp(-k * t)],
  starts: (rate) => RATES_TRIED.map((times) => [times * rate]),
};

/** Page, thesis, Purdue University (1949), from memory; the form with k outside the power. */
const page: DryingModel = {
  name: "Page",
  law: "MR = exp(-k t^n)",
  parameters: [
    { name: "k", unit: "min^-n" },
    { name: "n", unit: "" },
  ],
  startsAtOne: true,
  endsElsewhere: false,
  ratio: ([k = 0, n = 1], t) => Math.exp(-k * t ** n),
  slopes: ([k = 0, n = 1], t) => {
    if (t === 0) return [0, 0];
    const power = t ** n;
    const ratio = Math.exp(-k * power);
    return [-power * ratio, -k * power * Math.log(t) * ratio];
  },
  starts: (rate) => RATES_TRIED.flatMap((times) => EXPONENTS_TRIED.map((n) => [(times * rate) ** n, n])),
};

/** Overhults and others, Trans. ASAE 16 (1973) 195, from memory; the form with k inside the power. */
const modifiedPage: DryingModel = {
  name: "modified Page",
  law: "MR = exp(-(k t)^n)",
  parameters: [
    { name: "k", unit: PER_MINUTE },
    { name: "n", unit: "" },
  ],
  startsAtOne: true,
  endsElsewhere: false,
  ratio: ([k = 0, n = 1], t) => Math.exp(-((k * t) ** n)),
  slopes: ([k = 0, n = 1], t) => {
    if (k * t === 0) return [0, 0];
    const power = (k * t) ** n;
    const ratio = Math.exp(-power);
    return [(-n * power * ratio) / k, -power * Math.log(k * t) * ratio];
  },
  starts: (rate) => RATES_TRIED.flatMap((times) => EXPONENTS_TRIED.map((n) => [times * rate, n])),
};

/** Henderson and Pabis, J. Agric. Eng. Res. 6 (1961) 169, from memory. */
const hendersonPabis: DryingModel = {
  name: "Henderson-Pabis",
  law: "MR = a exp(-k t)",
  parameters: [
    { name: "a", unit: "" },
    { name: "k", unit: PER_MINUTE },
  ],
  startsAtOne: false,
  endsElsewhere: false,
  ratio: ([a = 0, k = 0], t) => a * Math.exp(-k * t),
  slopes: ([a = 0, k = 0], t) => [Math.exp(-k * t), -a * t * Math.exp(-k * t)],
  starts: (rate) => RATES_TRIED.map((times) => [1, times * rate]),
};

/** The law of Henderson and Pabis with an end of its own, as drying papers list it (source of its first use not found). */
const logarithmic: DryingModel = {
  name: "logarithmic",
  law: "MR = a exp(-k t) + c",
  parameters: [
    { name: "a", unit: "" },
    { name: "k", unit: PER_MINUTE },
    { name: "c", unit: "", mayBeZero: true },
  ],
  startsAtOne: false,
  endsElsewhere: true,
  ratio: ([a = 0, k = 0, c = 0], t) => a * Math.exp(-k * t) + c,
  slopes: ([a = 0, k = 0], t) => [Math.exp(-k * t), -a * t * Math.exp(-k * t), 1],
  starts: (rate) => RATES_TRIED.map((times) => [1, times * rate, 0]),
};

/** Henderson, Trans. ASAE 17 (1974) 1167, from memory. */
const twoTerm: DryingModel = {
  name: "two-term",
  law: "MR = a exp(-k t) + b exp(-g t)",
  parameters: [
    { name: "a", unit: "" },
    { name: "k", unit: PER_MINUTE },
    { name: "b", unit: "" },
    { name: "g", unit: PER_MINUTE },
  ],
  startsAtOne: false,
  endsElsewhere: false,
  ratio: ([a = 0, k = 0, b = 0, g = 0], t) => a * Math.exp(-k * t) + b * Math.exp(-g * t),
  slopes: ([a = 0, k = 0, b = 0, g = 0], t) => [Math.exp(-k * t), -a * t * Math.exp(-k * t), Math.exp(-g * t), -b * t * Math.exp(-g * t)],
  starts: (rate) =>
    RATES_TRIED.flatMap((faster, i) =>
      RATES_TRIED.slice(0, i).flatMap((slower) => SHARES_TRIED.map((share) => [share, faster * rate, 1 - share, slower * rate])),
    ),
};

/** The laws that a run can be fitted with. Drying papers list all of them under these names. */
export const dryingModels: readonly DryingModel[] = [newton, page, modifiedPage, hendersonPabis, logarithmic, twoTerm];
