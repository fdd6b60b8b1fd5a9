import { plainNumber } from "./quoted";

export const SURPLUS = "The formula carries more oxygen than it needs: burning takes up none and the rest is given off.";

export const WATER_AND_FIRE_SULFUR =
  "Nitrogen ends as in the water trade but sulfur as in burning: for the water trade throughout, give sulfurTo as H2SO4.";

export const WATER_AND_FIRE_NITROGEN =
  "Sulfur ends as in the water trade but nitrogen as in burning: for the water trade throughout, give nitrogenTo as NH3 or HNO3.";

export const AIR_NITROGEN = "The nitrogen that comes with the air is not counted among the gases.";

export const NO_ASH = "No ash weighed: taken as none.";

export const SOLIDS_OF_FORMULA = "No ash weighed: the solids are those of the formula.";

export const openAnalysis = (sum: number, smallest: number, largest: number): string =>
  `The fractions and ash sum to ${plainNumber(sum)} of the dry sample, outside ${smallest} to ${largest}: check the analysis.`;
