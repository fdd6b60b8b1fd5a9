import { wetMoisture } from "../../inputs/kinds/shares";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { moreThanTheSample } from "../../problems/sharing/plainCellProblems";
import { ashFraction } from "../../residue/ashFraction";
import { shareSlack } from "../../weighing/roundingSlack";
import { cellFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { OPEN_IGNITION } from "./cautions";

export const ashFractionFunction = cellFunction({
  name: "ASHFRACTION",
  summary: "Ash per gram of sample as weighed; with its moisture given, ash per gram of dry sample [fraction].",
  inputs: {
    vessel: vesselMass('Empty dish [g], or "tared".'),
    before: mass("Dish with the sample [g]."),
    ash: { ...mass("Dish with the ash, cooled [g]."), detail: "Burnt in air to constant weight; say at what temperature." },
    moisture: optional(wetMoisture("Moisture of the sample as weighed, wet basis [fraction]."), "ash of the sample as weighed"),
  },
  result: { about: "Ash", unit: "fraction" },
  compute: ({ vessel, before, ash, moisture }) => ashFraction(vessel, before, ash, moisture),
  working: ({ vessel, before, ash, moisture }) => {
    const asWeighed = ashFraction(vessel, before, ash);
    return [
      `ash = ${inFigures(ash)} - ${inFigures(vessel)} = ${inFigures(ash - vessel)} g`,
      `ash, as weighed = ${inFigures(ash - vessel)} / (${inFigures(before)} - ${inFigures(vessel)}) = ${inFigures(asWeighed)}`,
      ...(moisture === undefined || moisture === 0
        ? []
        : [`ash, dry = ${inFigures(asWeighed)} / (1 - ${inFigures(moisture)}) = ${inFigures(ashFraction(vessel, before, ash, moisture))}`]),
    ];
  },
  refusesInCells: ({ vessel, before, ash, moisture }) => {
    const order = orderInCells({ vessel, before, ash });
    if (moisture === "") return [order];
    const when = `${asWeighedInCells(vessel, before, ash)}+${numberInCells(moisture, 0)}>1+${put(shareSlack)}`;
    return [order, { when, says: moreThanTheSample }];
  },
  inCells: ({ vessel, before, ash, moisture }) => {
    const asWeighed = asWeighedInCells(vessel, before, ash);
    return moisture === "" ? asWeighed : `${asWeighed}/(1-${numberInCells(moisture, 0)})`;
  },
  examples: [
    { cell: "=RETORT.ASHFRACTION(25, 27, 25.024)", gives: 0.012, about: "24 mg of ash from 2 g." },
    { cell: '=RETORT.ASHFRACTION("tared", 2, 0.024, 0.08)', gives: 0.013043478260869565, about: "The same 2 g held 8 % of water." },
  ],
  source:
    "Ash over sample: ISO 18122 at 550 °C (from memory), ASTM E1755 at 575 °C, ASTM D1102 at 580 to 600 °C. Hotter ashing drives off potassium, chlorine and the carbon dioxide of carbonates and gives less.",
  caution: OPEN_IGNITION,
});

function asWeighedInCells(vessel: string, before: string, ash: string): string {
  const empty = numberInCells(vessel, 0);
  return `(${operand(ash)}-${empty})/(${operand(before)}-${empty})`;
}
