import { dryingTooHot, waterGone, frozenWater, notHeated, vesselHeatMissing, vesselMassMissing } from "../problems/functions/energyProblems";

/** 0 degC in kelvin, exact by definition of the Celsius scale (SI brochure). */
const ZERO_CELSIUS = 273.15;
/** Liquid water between 0 and 100 degC, kJ/(kg K): 4.18 to 4.22 (steam tables, from memory). */
export const WATER_HEAT = 4.18;
/** Heat of evaporation of water at 100 degC, kJ/kg (steam tables, from memory), and what it gains for each degree below. */
export const EVAPORATION = 2257;
/** From 2500.9 kJ/kg at 0 degC (steam tables, from memory) on a straight line, within 0.3 % between. */
export const EVAPORATION_PER_DEGREE = 2.439;
export const BOILING = 100;
/** Dry wood, kJ/(kg K): 0.1031 + 0.003867 T, T in K. Wood Handbook (USDA), chapter 4. */
export const WOOD = { constant: 0.1031, perKelvin: 0.003867 } as const;
/** Wood chars above, degC (common practice, no source). */
export const HOTTEST = 300;
const JOULES_PER_KILOJOULE = 1000;

/** What is dried, in g and degC. */
export interface Drying {
  readonly dry: number;
  readonly water: number;
  readonly from: number;
  readonly to: number;
  /** kJ/(kg K); undefined for dry wood at the mean temperature. */
  readonly solidHeat: number | undefined;
  readonly vesselMass: number | undefined;
  readonly vesselHeat: number | undefined;
}

/** Each part of the heat, kJ. */
export interface DryingHeat {
  readonly solidHeat: number;
  readonly evaporatesAt: number;
  readonly latent: number;
  readonly solid: number;
  readonly warming: number;
  readonly evaporating: number;
  readonly vessel: number;
  readonly sum: number;
}

/** Heat capacity of dry wood at the middle of two temperatures, kJ/(kg K): exact for its mean, since it is a straight line. */
export const woodHeat = (from: number, to: number): number => WOOD.constant + WOOD.perKelvin * ((from + to) / 2 + ZERO_CELSIUS);

/**
 * Heat that drying takes, kJ: solid and vessel to the oven's temperature, the water to its own boiling point or to the oven where that is
 * cooler, and its evaporation there. Without the sorption of the last water in wood, without losses of the oven and without the air: the
 * least that must be put in.
 * @throws InputProblem for temperatures out of order or of ice, and for a vessel's mass or heat alone
 */
export function dryingHeat({ dry, water, from, to, solidHeat, vesselMass, vesselHeat }: Drying): DryingHeat {
  if (from < 0) throw frozenWater(from);
  if (from >= BOILING) throw waterGone(from);
  if (to <= from) throw notHeated(to, from);
  if (to > HOTTEST) throw dryingTooHot(to, HOTTEST);
  if (vesselMass !== undefined && vesselHeat === undefined) throw vesselHeatMissing(vesselMass);
  if (vesselHeat !== undefined && vesselMass === undefined) throw vesselMassMissing(vesselHeat);
  const rise = to - from;
  const evaporatesAt = Math.min(to, BOILING);
  const latent = EVAPORATION + EVAPORATION_PER_DEGREE * (BOILING - evaporatesAt);
  const heat = solidHeat ?? woodHeat(from, to);
  const parts = {
    solid: (dry * heat * rise) / JOULES_PER_KILOJOULE,
    warming: (water * WATER_HEAT * (evaporatesAt - from)) / JOULES_PER_KILOJOULE,
    evaporating: (water * latent) / JOULES_PER_KILOJOULE,
    vessel: ((vesselMass ?? 0) * (vesselHeat ?? 0) * rise) / JOULES_PER_KILOJOULE,
  };
  return { solidHeat: heat, evaporatesAt, latent, ...parts, sum: parts.solid + parts.warming + parts.evaporating + parts.vessel };
}
