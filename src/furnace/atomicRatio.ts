import { carbonateAboveCarbon, moistureAboveElement, sharesAboveOne } from "../problems/functions/furnaceProblems";

// CIAAW 2021, abridged: Prohaska and others, Pure Appl. Chem. 94 (2022) 573.
export const HYDROGEN = 1.008;
export const CARBON = 12.011;
export const OXYGEN = 15.999;
/** Carbon in carbon dioxide, and hydrogen and oxygen in water, by mass. */
export const CARBON_OF_CO2 = CARBON / (CARBON + 2 * OXYGEN);
export const HYDROGEN_OF_WATER = (2 * HYDROGEN) / (2 * HYDROGEN + OXYGEN);
export const OXYGEN_OF_WATER = OXYGEN / (2 * HYDROGEN + OXYGEN);

/** An elemental analysis as fractions of the mass as analysed. */
export interface Elements {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
}

export interface AtomicRatios {
  /** The elements without those of moisture, fractions of the mass as analysed. */
  readonly dry: Elements;
  readonly organicCarbon: number;
  readonly hydrogenToCarbon: number;
  readonly oxygenToCarbon: number;
  readonly hydrogenToOrganic: number;
  readonly oxygenToOrganic: number;
}

// Real analyses close within 3 %; beyond this the shares are not of one sample. As for the oxygen demand of an analysis.
export const LARGEST_SUM = 1.02;

/**
 * Atoms of hydrogen and of oxygen for one of carbon: (H / 1.008) / (C / 12.011), (O / 15.999) / (C / 12.011). Moisture that was in the
 * sample when it was analysed takes its own hydrogen and oxygen out first; the carbon of carbonates is no organic carbon. Oxygen is left
 * with that of carbonates: by difference against ash it stands in the ash.
 * @param carbonateCO2 carbon dioxide that acid sets free, fraction
 * @param moisture of the sample as analysed, wet basis, where hydrogen and oxygen include it
 * @throws InputProblem for shares above the whole, and for moisture or carbonate beyond the element
 */
export function atomicRatios({ carbon, hydrogen, oxygen }: Elements, carbonateCO2 = 0, moisture = 0): AtomicRatios {
  const sum = carbon + hydrogen + oxygen;
  if (sum > LARGEST_SUM) throw sharesAboveOne(sum, LARGEST_SUM);
  const dry = { carbon, hydrogen: hydrogen - HYDROGEN_OF_WATER * moisture, oxygen: oxygen - OXYGEN_OF_WATER * moisture };
  if (dry.hydrogen < 0) throw moistureAboveElement(moisture, "hydrogen", hydrogen);
  if (dry.oxygen < 0) throw moistureAboveElement(moisture, "oxygen", oxygen);
  const organicCarbon = carbon - CARBON_OF_CO2 * carbonateCO2;
  if (organicCarbon <= 0) throw carbonateAboveCarbon(carbonateCO2, carbon);
  const [h, o] = [dry.hydrogen / HYDROGEN, dry.oxygen / OXYGEN];
  const [c, organic] = [carbon / CARBON, organicCarbon / CARBON];
  return {
    dry,
    organicCarbon,
    hydrogenToCarbon: h / c,
    oxygenToCarbon: o / c,
    hydrogenToOrganic: h / organic,
    oxygenToOrganic: o / organic,
  };
}
