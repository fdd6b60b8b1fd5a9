import { solidDensity } from "../../inputs/kinds/air";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { slipDensity, slipSolids, solidsPerLitre, USUAL_SOLID, WATER_DENSITY } from "../../pottery/slipSolids";
import { measureNotAboveVessel, slipDenserThanGrains, slipLighterThanWater } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { SLIP_DUST } from "./cautions";

export const slipSolidsFunction = cellFunction({
  name: "SLIP.SOLIDS",
  summary: "Dry solids in a slip or glaze as a share of its weight, from the weight of a known volume [fraction].",
  inputs: {
    vessel: vesselMass('Empty measure [g], or "tared".'),
    full: mass("The measure filled to the mark with stirred slip [g]."),
    volume: positiveNumber("Volume to the mark [mL].", "Give millilitres: 1 L is 1000, a pint (UK) 568.", "a volume of slip", "mL"),
    density: {
      ...optional(solidDensity("Density of the dry grains [kg/m³]."), "2600, clay"),
      detail: "Clays and most glazes 2500 to 2650; with lead or barium more.",
    },
  },
  result: { about: "Dry solids", unit: "fraction" },
  compute: ({ vessel, full, volume, density }) => slipSolids(vessel, full, volume, density),
  working: ({ vessel, full, volume, density: solid = USUAL_SOLID }) => {
    const slip = slipDensity(full - vessel, volume);
    const perLitre = solidsPerLitre(slip, solid);
    const share = slipSolids(vessel, full, volume, solid);
    return [
      `slip = (${inFigures(full)} - ${inFigures(vessel)}) x 1000 / ${inFigures(volume)} = ${inFigures(slip)} g/L`,
      `solids per litre = (${inFigures(slip)} - ${WATER_DENSITY}) x ${inFigures(solid)} / (${inFigures(solid)} - ${WATER_DENSITY}) = ${inFigures(perLitre)} g`,
      `solids = ${inFigures(perLitre)} / ${inFigures(slip)} = ${inFigures(share)} of the weight`,
      `in this measure = ${inFigures(share)} x (${inFigures(full)} - ${inFigures(vessel)}) = ${inFigures(share * (full - vessel))} g of dry solids`,
    ];
  },
  refusesInCells: ({ vessel, full, volume, density }) => {
    const slip = `(${operand(full)}-${numberInCells(vessel, 0)})`;
    const perLitre = `${WATER_DENSITY}*${slip}/${operand(volume)}`;
    const solid = operand(numberInCells(density, USUAL_SOLID));
    return [
      { when: `${operand(full)}<=${numberInCells(vessel, 0)}`, says: measureNotAboveVessel },
      { when: `${perLitre}<${WATER_DENSITY}`, says: slipLighterThanWater },
      { when: `(${perLitre}>=${solid})+(${solid}<=${WATER_DENSITY})`, says: slipDenserThanGrains },
    ];
  },
  inCells: ({ vessel, full, volume, density }) => {
    const slip = `(${operand(full)}-${numberInCells(vessel, 0)})`;
    const solid = operand(numberInCells(density, USUAL_SOLID));
    return `(${slip}-${operand(volume)})*${solid}/(${solid}-${WATER_DENSITY})/${slip}`;
  },
  examples: [
    {
      cell: '=RETORT.SLIP.SOLIDS("tared", 1500, 1000, 2500)',
      gives: 0.5555555555555556,
      about: "833 g of dry matter in a litre of glaze of 1500 g.",
    },
    { cell: "=RETORT.SLIP.SOLIDS(120, 294, 100)", gives: 0.6910919540229885 },
  ],
  source: "Brongniart's formula, W = (P - 1000) G / (G - 1) in grams a litre, water at 1 g/mL: at 20 °C solids are 0.2 to 0.4 % low for it.",
  caution: SLIP_DUST,
});
