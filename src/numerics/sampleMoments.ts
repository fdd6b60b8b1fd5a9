/** Mean and spread of a sample. */
export interface SampleMoments {
  readonly mean: number;
  /** Standard deviation with n - 1; 0 for one value. */
  readonly deviation: number;
}

/**
 * Mean and standard deviation in two passes about the first value, with the corrected sum of squares: Chan, Golub and
 * LeVeque, Am. Stat. 37 (1983) 242, doi:10.1080/00031305.1983.10483115, equation 1.7. Deviations are scaled, so no square
 * overflows or vanishes.
 * @param values at least one
 */
export function sampleMoments(values: readonly number[]): SampleMoments {
  const origin = values[0] ?? NaN;
  const shifted = values.map((value) => value - origin);
  const shift = sum(shifted) / values.length;
  const deviations = shifted.map((value) => value - shift);
  const scale = deviations.reduce((largest, deviation) => Math.max(largest, Math.abs(deviation)), 0);
  if (scale === 0) return { mean: origin + shift, deviation: 0 };
  const scaled = deviations.map((deviation) => deviation / scale);
  const residue = sum(scaled);
  const squares = sum(scaled.map((deviation) => deviation * deviation)) - (residue * residue) / values.length;
  return { mean: origin + (shift + (scale * residue) / values.length), deviation: scale * Math.sqrt(squares / (values.length - 1)) };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
