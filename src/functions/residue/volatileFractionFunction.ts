import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { volatileFraction } from "../../residue/volatileMatter";
import { cellFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { CLOSED_HEATING } from "./cautions";

export const volatileFractionFunction = cellFunction({
  name: "VOLATILEFRACTION",
  summary: "Share of a sample that left as vapour when heated without air, by weight [fraction].",
  inputs: {
    vessel: vesselMass('Empty vessel [g], or "tared".'),
    before: mass("Vessel with the sample before heating [g]."),
    after: mass("Vessel with the residue after cooling [g]."),
  },
  result: { about: "Volatile fraction", unit: "fraction" },
  compute: ({ vessel, before, after }) => volatileFraction(vessel, before, after),
  working: ({ vessel, before, after }) => [
    `loss on heating = ${inFigures(before)} - ${inFigures(after)} = ${inFigures(before - after)} g`,
    `sample = ${inFigures(before)} - ${inFigures(vessel)} = ${inFigures(before - vessel)} g`,
    `volatile fraction = ${inFigures(before - after)} / ${inFigures(before - vessel)} = ${inFigures(volatileFraction(vessel, before, after))}`,
  ],
  refusesInCells: ({ vessel, before, after }) => [orderInCells({ vessel, before, after })],
  inCells: ({ vessel, before, after }) => `(${operand(before)}-${operand(after)})/(${operand(before)}-${numberInCells(vessel, 0)})`,
  examples: [{ cell: "=RETORT.VOLATILEFRACTION(25, 35, 28)", gives: 0.7 }],
  source: "Loss over sample mass, the ratio of ASTM E872 clause 7.1; at your own temperature and time, so not the standard's volatile matter.",
  caution: CLOSED_HEATING,
});
