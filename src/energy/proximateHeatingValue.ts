import { sumOfProximate } from "../problems/functions/energyProblems";

/** A proximate analysis of the dry sample, as fractions of its mass. */
export interface ProximateAnalysis {
  readonly fixedCarbon: number;
  readonly volatile: number;
  readonly ash: number;
}

// Parikh, Channiwala and Ghosal, Fuel 84 (2005) 487, doi:10.1016/j.fuel.2004.10.010: MJ/kg for one mass per cent, dry. The same in Energies
// 15 (2022) 7343, table 1.
export const PROXIMATE_FACTORS: Readonly<Record<keyof ProximateAnalysis, number>> = { fixedCarbon: 0.3536, volatile: 0.1559, ash: -0.0078 };
/** Average absolute error that the authors state, per cent. */
export const PROXIMATE_ERROR = 3.74;
export const PROXIMATE_RANGE = { fixedCarbon: [1, 91.5], volatile: [0.92, 90.6], ash: [0.12, 77.7] } as const;

const PERCENT = 100;
export const LEAST_SUM = 0.97;
export const MOST_SUM = 1.03;

/**
 * Higher heating value of the dry sample from its proximate analysis, MJ/kg: 0.3536 FC + 0.1559 VM - 0.0078 A in dry mass per cent. Less sure
 * than an ultimate analysis gives, since volatile matter may be tar or carbon dioxide.
 * @throws InputProblem where the three are not the whole of a dry sample
 */
export function proximateHeatingValue({ fixedCarbon, volatile, ash }: ProximateAnalysis): number {
  const sum = fixedCarbon + volatile + ash;
  if (sum < LEAST_SUM || sum > MOST_SUM) throw sumOfProximate(sum, LEAST_SUM, MOST_SUM);
  return PERCENT * (PROXIMATE_FACTORS.fixedCarbon * fixedCarbon + PROXIMATE_FACTORS.volatile * volatile + PROXIMATE_FACTORS.ash * ash);
}
