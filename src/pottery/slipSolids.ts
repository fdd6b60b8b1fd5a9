import { lighterThanVessel, lighterThanWater, denserThanSolid } from "../problems/functions/potteryProblems";

/** Density of water, kg/m3, as Brongniart's formula has it; at 20 degC it is 998.2 (from memory), which makes 0.2 % of the solids. */
export const WATER_DENSITY = 1000;
/** Clays and most glaze materials: 2.5 to 2.65 g/cm3, kg/m3 (Handbook for Australian Potters, as quoted). */
export const USUAL_SOLID = 2600;

/** Density of a slip, kg/m3, the same as g/L. @param mass g @param volume mL */
export const slipDensity = (mass: number, volume: number): number => (WATER_DENSITY * mass) / volume;

/** Dry solids in a litre of slip, g: (P - 1000) G / (G - 1), Brongniart's formula in metric units, with G the solids' density over water's. */
export const solidsPerLitre = (density: number, solid = USUAL_SOLID): number => ((density - WATER_DENSITY) * solid) / (solid - WATER_DENSITY);

/**
 * Dry solids of a slip or glaze as a share of its mass, from the weight of a known volume: what is heavier than water is solids less the water
 * they displace. A. Brongniart, Traité des arts céramiques.
 * @param vessel, full g
 * @param volume mL
 * @param solid density of the dry grains, kg/m3
 * @throws InputProblem for a slip lighter than water or as dense as its solids
 */
export function slipSolids(vessel: number, full: number, volume: number, solid = USUAL_SOLID): number {
  if (full <= vessel) throw lighterThanVessel(full, vessel);
  const density = slipDensity(full - vessel, volume);
  if (density < WATER_DENSITY) throw lighterThanWater(density);
  if (density >= solid || solid <= WATER_DENSITY) throw denserThanSolid(density, solid);
  return solidsPerLitre(density, solid) / density;
}
