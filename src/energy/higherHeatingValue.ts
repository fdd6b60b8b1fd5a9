import { sumOfAnalysis } from "../problems/functions/energyProblems";

/** An ultimate analysis of the dry sample, as fractions of its mass. */
export interface UltimateAnalysis {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
  readonly nitrogen: number;
  readonly sulfur: number;
  readonly ash: number;
}

export type Element = keyof UltimateAnalysis;
export const ELEMENTS = ["carbon", "hydrogen", "oxygen", "nitrogen", "sulfur", "ash"] as const satisfies readonly Element[];

/** A published correlation: MJ/kg from mass per cent of the dry sample, and what its authors say of it. */
export interface Correlation {
  readonly constant?: number;
  /** MJ/kg for one per cent of each element. */
  readonly factors: Readonly<Partial<Record<Element, number>>>;
  /** Average absolute error that its authors state, per cent; undefined where coefficients are remembered. */
  readonly statedError?: number;
  readonly isForCoal?: true;
  /** Per cent, least and most; undefined where no range is known here. */
  readonly range?: Readonly<Partial<Record<Element, readonly [least: number, most: number]>>>;
}

export const CORRELATIONS = ["Channiwala-Parikh", "Boie", "Milne", "Dulong", "Sheng-Azevedo"] as const;
export type CorrelationName = (typeof CORRELATIONS)[number];
export const USUAL_CORRELATION: CorrelationName = "Channiwala-Parikh";

export const correlations: Readonly<Record<CorrelationName, Correlation>> = {
  // Fuel 81 (2002) 1051, doi:10.1016/S0016-2361(01)00131-4: solid, liquid and gaseous fuels. The same six factors are printed in Energies 15
  // (2022) 7343, table 1.
  "Channiwala-Parikh": {
    factors: { carbon: 0.3491, hydrogen: 1.1783, sulfur: 0.1005, oxygen: -0.1034, nitrogen: -0.0151, ash: -0.0211 },
    statedError: 1.45,
    range: { carbon: [0, 92.25], hydrogen: [0.43, 25.15], oxygen: [0, 50], nitrogen: [0, 5.6], sulfur: [0, 94.08], ash: [0, 71.4] },
  },
  Boie: { factors: { carbon: 0.3517, hydrogen: 1.1626, sulfur: 0.1047, oxygen: -0.111, nitrogen: 0.0628 } },
  Milne: {
    factors: { carbon: 0.341, hydrogen: 1.322, sulfur: 0.0686, ash: -0.0153, oxygen: -0.12, nitrogen: -0.12 },
  },
  // Made for coal: about 12 % low for wood. Printed copies differ in the last digit: 33.86, 144.4 and 9.428 for a fraction (Perry's handbook,
  // 5th edition, as cited), 337, 1442 and 93 kJ/kg for a per cent (an encyclopedia); 0.1 to 0.5 % apart.
  Dulong: {
    factors: { carbon: 0.3383, hydrogen: 1.443, oxygen: -1.443 / 8, sulfur: 0.0942 },
    isForCoal: true,
    range: { oxygen: [0, 15] },
  },
  // Biomass and Bioenergy 28 (2005) 499: what is neither C, H nor ash counts as O*. From memory; Energies 15 (2022) 7343, table 1, prints
  // 0.3237 for carbon, which makes wood 0.5 MJ/kg hotter than the other correlations and the measurements have it: taken for a misprint.
  "Sheng-Azevedo": { constant: -1.3675 + 3.18, factors: { carbon: 0.3137 - 0.0318, hydrogen: 0.7009 - 0.0318, ash: -0.0318 } },
};

const PERCENT = 100;
// Real analyses stray by 3 %; beyond a tenth the figures are not of one dry sample. Common practice, no source.
export const LEAST_SUM = 0.9;
export const MOST_SUM = 1.1;

export const sumOf = (analysis: UltimateAnalysis): number => ELEMENTS.reduce((sum, element) => sum + analysis[element], 0);

/**
 * Higher heating value of the dry sample, MJ/kg, by a published correlation, linear in mass per cent. That of Channiwala and Parikh is the
 * usual one because it alone reaches from gas to char.
 * @throws InputProblem where the shares are not of one dry sample
 */
export function higherHeatingValue(analysis: UltimateAnalysis, name: CorrelationName = USUAL_CORRELATION): number {
  const sum = sumOf(analysis);
  if (sum < LEAST_SUM || sum > MOST_SUM) throw sumOfAnalysis(sum, LEAST_SUM, MOST_SUM, analysis.ash === 0);
  const { constant = 0, factors } = correlations[name];
  return ELEMENTS.reduce((value, element) => value + (factors[element] ?? 0) * PERCENT * analysis[element], constant);
}

/** An element beyond the range that a correlation was made for, per cent. */
export interface Outside {
  readonly share: string;
  readonly percent: number;
  readonly least: number;
  readonly most: number;
}

// Sums of decimals stray by this in binary: 50 % of oxygen may be 50.00000000000001.
export const HAIR = 1e-9;

/** What lies outside a range of per cents. */
export const outsideRange = <S extends string>(
  shares: Readonly<Record<S, number>>,
  range: Readonly<Partial<Record<S, readonly [number, number]>>>,
): readonly Outside[] =>
  (Object.keys(range) as S[]).flatMap((share) => {
    const [least, most] = range[share] as readonly [number, number];
    const percent = PERCENT * shares[share];
    return percent < least - HAIR || percent > most + HAIR ? [{ share, percent, least, most }] : [];
  });
