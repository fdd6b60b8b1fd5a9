import { airDemand, kindOfAir, OXYGEN_IN_AIR, oxygenByVolume } from "../../chemistry/burning/airDemand";
import { oxygenInAir, oxygenTaken } from "../../inputs/kinds/oxygen";
import { optional } from "../../inputs/optional";
import { enrichedAir, vitiatedAir } from "../../problems/functions/burningProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { OPEN_BURNING } from "./cautions";

export const airDemandFunction = cellFunction({
  name: "AIRDEMAND",
  summary: "Dry air that brings the oxygen burning takes up, per gram of fuel [g/g].",
  inputs: {
    oxygen: oxygenTaken("Oxygen taken up per gram of fuel [g/g], from OXYGENDEMAND."),
    oxygenInAir: {
      ...optional(oxygenInAir("Oxygen in the air by mass [fraction], not the share by volume, 0.2095."), "0.2314"),
      detail: "From 0.05, below which nothing burns, to 1, pure oxygen; 0.2 to 0.22 is refused as the share by volume of ordinary air.",
    },
  },
  result: { about: "Air demand", unit: "g/g" },
  compute: ({ oxygen, oxygenInAir: share }) => airDemand(oxygen, share),
  working: ({ oxygen, oxygenInAir: share = OXYGEN_IN_AIR }) => [
    `air demand = ${inFigures(oxygen)} / ${inFigures(share)} = ${inFigures(airDemand(oxygen, share))} g air per g`,
    ...noteOn(share),
  ],
  inCells: ({ oxygen, oxygenInAir: share }) => `${operand(oxygen)}/${numberInCells(share, OXYGEN_IN_AIR)}`,
  examples: [
    {
      cell: "=RETORT.AIRDEMAND(3.4713, 0.23)",
      gives: 15.092608695652173,
      about: "An oil that takes up 3.4713 g of oxygen, with the 23 % of older books.",
    },
  ],
  source: "Dry air holds 0.2314 of oxygen by mass (mole fraction 0.2095, 28.965 g/mol); older books 0.232 and 0.23.",
  caution: OPEN_BURNING,
});

/** Says so where the gas is not ordinary air, with the share by volume to check by. */
function noteOn(share: number): readonly string[] {
  const kind = kindOfAir(share);
  if (kind === undefined) return [];
  return [(kind === "enriched" ? enrichedAir : vitiatedAir)(share, oxygenByVolume(share))];
}
