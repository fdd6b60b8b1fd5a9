import { readingUncertainty } from "../../confidence/readingUncertainty";
import { scatterTooWide } from "../../problems/runsheet/runSheetProblems";
import type { SamplesAre } from "../options/RunSheetOptions";

/** What the size of a sample depends on; shares and their uncertainties are fractions. */
export interface SampleWanted {
  readonly readability: number;
  /** Standard deviation of repeated weighings of one load, g; left out: rounding alone. */
  readonly repeatability?: number;
  /** Largest ± at 95 % of the share that left. */
  readonly wantedUncertainty: number;
  readonly samples: number;
  readonly samplesAre: SamplesAre;
  /** Standard deviation of the share between repeats, from earlier work; left out: none. It counts for repeats only. */
  readonly methodScatter?: number;
  /** Share of the dry sample that will leave as vapour, 0 for any; undefined for a run that ends with drying. */
  readonly vapour: number | undefined;
  /** Share of the moist sample that is water. */
  readonly moisture: number;
}

export interface PlannedSample {
  /** Least moist sample in each vessel, g. */
  readonly smallestSampleGrams: number;
  /** The same and so much more that the sample, as it is read, does not come out below: what is to be weighed out, g. */
  readonly weighOutGrams: number;
  /** What asks for most of it. */
  readonly setBy: "rounding" | "repeatability" | "scatter";
  /** Student's t of the repeats, and how many times the sample of one run alone each of them is; undefined for one sample, or several kept apart. */
  readonly repeats: { readonly factor: number; readonly times: number } | undefined;
}

/**
 * Student's t, two-sided 95 %, and the chi-square that is exceeded in one case of twenty, for 2 to 6 samples, one degree of freedom
 * less each: NIST/SEMATECH e-Handbook of Statistical Methods, tables 1.3.6.7.2 and 1.3.6.7.4.
 */
const OF_SAMPLES: readonly { readonly t: number; readonly chiSquare: number }[] = [
  { t: 12.706, chiSquare: 3.841 },
  { t: 4.303, chiSquare: 5.991 },
  { t: 3.182, chiSquare: 7.815 },
  { t: 2.776, chiSquare: 9.488 },
  { t: 2.571, chiSquare: 11.07 },
];

// The sample is the difference of two readings and scatters by sqrt(2) u; three times that, in u, so that the least of six holds too.
const MARGIN = 4;

// About 95 %, as the sheet states the ± of one sample.
const COVERAGE = 2;

/**
 * Least moist sample whose stated ± (95 %) of the headline share keeps to the wanted U. With u of one zeroed weighing, READING.U with
 * `tared`, and the sample m before the loss, one sample states 2 u f / m. Repeats state t s / sqrt(n), whose s comes out below
 * sqrt(chi2 / (n - 1)) times the true scatter in 95 of 100 runs; that scatter is sqrt((u f / m)^2 + s_m^2) with the method's own s_m.
 *
 * f is the sheet's own, at the least favourable way of weighing: where the vessel is weighed again at the end sqrt(2 (1 + y^2)), y the
 * share that stays; for water sqrt(2), what the sheet asks of a sample just weighed in. Moist = dry / (1 - moisture on wet basis).
 * @throws InputProblem where the scatter between samples leaves no room
 */
export function plannedSample(wanted: SampleWanted): PlannedSample {
  const { readability, repeatability = 0, wantedUncertainty, samples, vapour, moisture } = wanted;
  const u = readingUncertainty({ readability, repeatability, tared: true });
  const rounding = readingUncertainty({ readability, tared: true });
  const perGram = u * (vapour === undefined ? Math.SQRT2 : Math.sqrt(2 * (1 + (1 - vapour) ** 2)));
  const alone = wantedUncertainty / COVERAGE;
  const areRepeats = samples > 1 && wanted.samplesAre === "repeats";
  const scatter = areRepeats ? (wanted.methodScatter ?? 0) : 0;
  const allowed = areRepeats ? wantedUncertainty / statedOverTrue(samples) : alone;
  if (scatter >= allowed) throw scatterTooWide(samples, enoughFor(wantedUncertainty, scatter));
  const ofWeighing = Math.min(alone, Math.sqrt(allowed ** 2 - scatter ** 2));
  const ofLost = perGram / ofWeighing;
  const moist = (grams: number): number => (vapour === undefined ? grams : grams / (1 - moisture));
  return {
    smallestSampleGrams: moist(ofLost),
    weighOutGrams: moist(ofLost + MARGIN * u),
    setBy: scatter > ofWeighing ? "scatter" : repeatability > rounding ? "repeatability" : "rounding",
    repeats: areRepeats ? { factor: OF_SAMPLES[samples - 2]?.t ?? NaN, times: alone / ofWeighing } : undefined,
  };
}

/** How many times the true scatter the ± together of n repeats comes to, at most, in 95 of 100 runs: t sqrt(chi2 / (n - 1)) / sqrt(n). */
function statedOverTrue(samples: number): number {
  const { t, chiSquare } = OF_SAMPLES[samples - 2] ?? { t: NaN, chiSquare: NaN };
  return t * Math.sqrt(chiSquare / (samples - 1) / samples);
}

/** As few repeats as leave room for the weighing beside a scatter; undefined where a sheet has not so many. */
const enoughFor = (wantedUncertainty: number, scatter: number): number | undefined =>
  OF_SAMPLES.map((_, index) => index + 2).find((samples) => scatter < wantedUncertainty / statedOverTrue(samples));
