import { moistureWetBasis } from "../../weighing/moistureWetBasis";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { DRYING_CAUTION } from "./dryingCaution";
import { dryingLossLine } from "./dryingLossLine";
import { moistureInputs } from "./moistureInputs";

export const moistureWetFunction = cellFunction({
  name: "MOISTURE.WET",
  summary: "Moisture content, wet basis: loss on drying per gram of moist sample [fraction], 0 to below 1.",
  inputs: moistureInputs,
  result: { about: "Moisture content, wet basis", unit: "fraction" },
  compute: ({ vessel, moist, dry }) => moistureWetBasis(vessel, moist, dry),
  working: (read) => [
    dryingLossLine(read),
    `moist sample = ${inFigures(read.moist)} - ${inFigures(read.vessel)} = ${inFigures(read.moist - read.vessel)} g`,
    `moisture, wet basis = ${inFigures(read.moist - read.dry)} / ${inFigures(read.moist - read.vessel)} = ${inFigures(moistureWetBasis(read.vessel, read.moist, read.dry))}`,
  ],
  inCells: ({ vessel, moist, dry }) => `(${operand(moist)}-${operand(dry)})/(${operand(moist)}-${numberInCells(vessel, 0)})`,
  examples: [
    { cell: "=RETORT.MOISTURE.WET(25, 35, 31.5)", gives: 0.35 },
    { cell: '=RETORT.MOISTURE.WET("tared", 10, 6.5)', gives: 0.35, about: "The balance was zeroed with the vessel on it." },
    {
      cell: '=RETORT.MOISTURE.WET("tared", 35, 31.5)',
      gives: 0.1,
      about: "Wrong: the 25 g vessel is still in both weighings, so 35 % reads as 10 %.",
    },
  ],
  source: "ISO 18134-3 and ASTM E871 (wet basis, as received); the ratio follows from the definition.",
  caution: DRYING_CAUTION,
});
