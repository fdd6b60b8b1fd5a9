import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { lossOnIgnition } from "../../residue/lossOnIgnition";
import { cellFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { OPEN_IGNITION } from "./cautions";

export const lossOnIgnitionFunction = cellFunction({
  name: "LOSSONIGNITION",
  summary: "Loss on ignition: what a dry sample loses when ignited in air, per gram of dry sample [fraction].",
  inputs: {
    vessel: vesselMass('Empty crucible [g], or "tared".'),
    before: { ...mass("Crucible with the dry sample [g]."), detail: "Dried first: water left in is counted as loss." },
    after: mass("Crucible after ignition, cooled [g]."),
  },
  result: { about: "Loss on ignition", unit: "fraction" },
  compute: ({ vessel, before, after }) => lossOnIgnition(vessel, before, after),
  working: ({ vessel, before, after }) => [
    `loss = ${inFigures(before)} - ${inFigures(after)} = ${inFigures(before - after)} g`,
    `dry sample = ${inFigures(before)} - ${inFigures(vessel)} = ${inFigures(before - vessel)} g`,
    `loss on ignition = ${inFigures(before - after)} / ${inFigures(before - vessel)} = ${inFigures(lossOnIgnition(vessel, before, after))}`,
  ],
  refusesInCells: ({ vessel, before, after }) => [orderInCells({ vessel, before, after })],
  inCells: ({ vessel, before, after }) => `(${operand(before)}-${operand(after)})/(${operand(before)}-${numberInCells(vessel, 0)})`,
  examples: [{ cell: "=RETORT.LOSSONIGNITION(30, 35, 34.7)", gives: 0.06, about: "0.3 g lost by 5 g of dry soil." }],
  source:
    "Follows from the definition. State temperature and time, 550 °C and 950 °C are common: carbonates lose carbon dioxide above about 700 °C (from memory), and metals gain oxygen.",
  caution: OPEN_IGNITION,
});
