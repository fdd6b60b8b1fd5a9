import { buoyancy, USUAL_AIR, USUAL_REFERENCE } from "../../balance/buoyancy";
import { airDensityInput, solidDensity } from "../../inputs/kinds/air";
import { balanceReading } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

export const buoyancyFunction = cellFunction({
  name: "BUOYANCY",
  summary: "Mass of a body from its reading in air, the lift of the air on body and weights taken out [g].",
  inputs: {
    reading: balanceReading("Net reading of the balance [g]."),
    density: {
      ...solidDensity("Density of the material itself [kg/m³]: 2.7 g/cm³ is 2700."),
      detail: "Of the grains and not of the heap: air between grains and in open pores lifts nothing.",
    },
    airDensity: optional(airDensityInput("Density of the air [kg/m³], as AIRDENSITY gives it."), "1.2"),
    referenceDensity: optional(solidDensity("Density of the weights that the balance was adjusted with [kg/m³]."), "8000"),
  },
  result: { about: "Mass", unit: "g" },
  compute: ({ reading, density, airDensity, referenceDensity }) => buoyancy(reading, density, airDensity, referenceDensity),
  working: ({ reading, density, airDensity: air = USUAL_AIR, referenceDensity: reference = USUAL_REFERENCE }) => {
    const answer = buoyancy(reading, density, air, reference);
    const factor = `(1 - ${inFigures(air)} / ${inFigures(reference)}) / (1 - ${inFigures(air)} / ${inFigures(density)})`;
    return [
      `mass = ${inFigures(reading)} x ${factor} = ${inFigures(answer)} g`,
      `correction = ${inFigures(answer - reading)} g; within one material it cancels in a loss fraction`,
    ];
  },
  inCells: ({ reading, density, airDensity, referenceDensity }) => {
    const [air, reference] = [numberInCells(airDensity, USUAL_AIR), numberInCells(referenceDensity, USUAL_REFERENCE)];
    return `${operand(reading)}*(1-${air}/${operand(reference)})/(1-${air}/${operand(density)})`;
  },
  examples: [
    { cell: "=RETORT.BUOYANCY(2, 2700)", gives: 2.0005891507336595, about: "2 g of aluminium." },
    { cell: "=RETORT.BUOYANCY(100, 1500)", gives: 100.06505204163332, about: "Wood substance: 0.065 % on the mass." },
  ],
  source: "Conventional mass, OIML D 28: weights of 8000 kg/m³ in air of 1.2 kg/m³.",
});
