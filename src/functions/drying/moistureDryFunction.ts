import { moistureDryBasis } from "../../weighing/moistureDryBasis";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { DRYING_CAUTION } from "./dryingCaution";
import { dryingLossLine } from "./dryingLossLine";
import { moistureInputs } from "./moistureInputs";

export const moistureDryFunction = cellFunction({
  name: "MOISTURE.DRY",
  summary: "Moisture content, dry basis: loss on drying per gram of dry sample [fraction]; may exceed 1.",
  inputs: moistureInputs,
  result: { about: "Moisture content, dry basis", unit: "fraction" },
  compute: ({ vessel, moist, dry }) => moistureDryBasis(vessel, moist, dry),
  working: (read) => [
    dryingLossLine(read),
    `dry sample = ${inFigures(read.dry)} - ${inFigures(read.vessel)} = ${inFigures(read.dry - read.vessel)} g`,
    `moisture, dry basis = ${inFigures(read.moist - read.dry)} / ${inFigures(read.dry - read.vessel)} = ${inFigures(moistureDryBasis(read.vessel, read.moist, read.dry))}`,
  ],
  inCells: ({ vessel, moist, dry }) => `(${operand(moist)}-${operand(dry)})/(${operand(dry)}-${numberInCells(vessel, 0)})`,
  examples: [{ cell: '=RETORT.MOISTURE.DRY("tared", 21.8, 20)', gives: 0.09, about: "A panel test piece, as EN 322 reckons it." }],
  source: "EN 322, EN 13183-1 and ASTM D4442 (dry basis).",
  caution: DRYING_CAUTION,
});
