import { choice } from "../../inputs/choice";
import { moistureContent } from "../../inputs/kinds/shares";
import { convertMoisture, MOISTURE_BASES } from "../../weighing/convertMoisture";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";

export const moistureConvertFunction = cellFunction({
  name: "MOISTURE.CONVERT",
  summary: "Moisture content carried from one basis to the other, wet to dry or dry to wet [fraction].",
  inputs: {
    moisture: moistureContent("Moisture content [fraction]: below 1 on the wet basis, up to 4 on the dry basis. 0 counts."),
    from: choice('Basis it is on: "wet" or "dry".', MOISTURE_BASES),
    to: choice('Basis wanted: "wet" or "dry".', MOISTURE_BASES),
  },
  result: { about: "Moisture content on the basis wanted", unit: "fraction" },
  compute: ({ moisture, from, to }) => convertMoisture(moisture, from, to),
  working: ({ moisture, from, to }) => {
    const given = inFigures(moisture);
    const answer = inFigures(convertMoisture(moisture, from, to));
    if (from === to) return [`moisture, ${to} basis = ${given}, as given`];
    return [`moisture, ${to} basis = ${given} / (1 ${from === "wet" ? "-" : "+"} ${given}) = ${answer}`];
  },
  inCells: ({ moisture, from, to }) => {
    const value = operand(moisture);
    return `IF(TRIM(${from})=TRIM(${to}),${value},IF(TRIM(${from})="wet",${value}/(1-${value}),${value}/(1+${value})))`;
  },
  examples: [
    { cell: '=RETORT.MOISTURE.CONVERT(0.2, "wet", "dry")', gives: 0.25 },
    { cell: '=RETORT.MOISTURE.CONVERT(1, "dry", "wet")', gives: 0.5 },
  ],
  source: "Follows from the two definitions: u = w / (1 - w), w = u / (1 + u). The dry basis may exceed 1 (ASTM D4442).",
});
