import { moreHydrogenThanHeat, sharesAboveDry } from "../problems/functions/energyProblems";

// ISO 18125 (the form of ISO 1928), from memory: J/g for one mass per cent, at constant pressure and 25 degC. Water formed by 1 % of hydrogen
// takes 212.2, the change of volume by 1 % of oxygen and nitrogen 0.8, and 1 % of moisture 24.43 to evaporate.
export const PER_HYDROGEN = 212.2;
export const PER_OXYGEN_NITROGEN = 0.8;
export const PER_MOISTURE = 24.43;
const PERCENT = 100;
const JOULES_PER_GRAM = 1000;
export const LARGEST_SUM = 1;

/** The dry sample's own hydrogen, oxygen and nitrogen, as fractions. */
export interface DryShares {
  readonly hydrogen: number;
  readonly oxygen: number;
  readonly nitrogen: number;
}

/** Net heating value of the dry sample, MJ/kg. */
export const netDry = (higherDry: number, { hydrogen, oxygen, nitrogen }: DryShares): number =>
  higherDry - (PERCENT * (PER_HYDROGEN * hydrogen + PER_OXYGEN_NITROGEN * (oxygen + nitrogen))) / JOULES_PER_GRAM;

/** MJ that evaporating the moisture of one kg of the moist sample takes. */
export const evaporation = (moisture: number): number => (PERCENT * PER_MOISTURE * moisture) / JOULES_PER_GRAM;

/**
 * Net heating value at constant pressure of the sample with its moisture, MJ/kg: (q - 212.2 H - 0.8 (O + N)) (1 - 0.01 M) - 24.43 M in J/g with
 * per cents. All but the moisture are of the dry sample: any other form counts the hydrogen of the water twice or not at all.
 * @param higherDry gross value of the dry sample, MJ/kg
 * @param moisture wet basis, fraction
 * @throws InputProblem for shares above the whole, and for hydrogen that takes more heat than there is
 */
export function netHeatingValue(higherDry: number, shares: DryShares, moisture: number): number {
  const sum = shares.hydrogen + shares.oxygen + shares.nitrogen;
  if (sum > LARGEST_SUM) throw sharesAboveDry(sum);
  const dry = netDry(higherDry, shares);
  if (dry <= 0) throw moreHydrogenThanHeat(higherDry, shares.hydrogen);
  return dry * (1 - moisture) - evaporation(moisture);
}

/** The moisture at which nothing is left of the net value, wet basis. */
export const moistureAtZero = (dryNet: number): number => dryNet / (dryNet + evaporation(1));
