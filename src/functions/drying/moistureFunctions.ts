import { convertMoisture, isWetterThanWood, MOISTURE_BASES, moistureDryBasis, moistureWetBasis, WETTEST_DRY_BASIS } from "../../drying/moisture";
import { choice } from "../../inputs/choice";
import { moistureContent } from "../../inputs/kinds/shares";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { looksLikePercentage } from "../../problems/sharing/plainCellProblems";
import { veryWet } from "../../problems/functions/weighingProblems";
import { shareSlack } from "../../weighing/roundingSlack";
import { cellFunction } from "../cellFunction";
import { driedInCells } from "../inCells/orderInCells";
import { isTypedText, put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";
import { DRYING_CAUTION } from "./dryingCaution";

/** The three weighings that a moisture content is worked out from. */
const moistureInputs = {
  vessel: vesselMass('Empty vessel [g], or "tared".'),
  moist: mass("Vessel with the moist sample [g]."),
  dry: mass("Vessel with the dried, cooled sample [g]."),
};

/** The first line of working; both weighings in g. */
const dryingLossLine = ({ moist, dry }: { readonly moist: number; readonly dry: number }): string =>
  `loss on drying = ${inFigures(moist)} - ${inFigures(dry)} = ${inFigures(moist - dry)} g`;

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
  refusesInCells: driedInCells,
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
  refusesInCells: driedInCells,
  inCells: ({ vessel, moist, dry }) => `(${operand(moist)}-${operand(dry)})/(${operand(dry)}-${numberInCells(vessel, 0)})`,
  examples: [{ cell: '=RETORT.MOISTURE.DRY("tared", 21.8, 20)', gives: 0.09, about: "A panel test piece, as EN 322 reckons it." }],
  source: "EN 322, EN 13183-1 and ASTM D4442 (dry basis).",
  caution: DRYING_CAUTION,
});

export const moistureConvertFunction = cellFunction({
  name: "MOISTURE.CONVERT",
  summary: "Moisture content carried from one basis to the other, wet to dry or dry to wet [fraction].",
  inputs: {
    moisture: {
      ...moistureContent("Moisture content [fraction]: below 1 on the wet basis, up to 49 on the dry basis."),
      detail:
        "On the dry basis 1 is 50 % water, 4 is 80 %, 9 is 90 %, 49 is 98 %. Wood stays below 2.5; fruit, sludge and peat reach 4 to 25 and more. " +
        "Above 4 This cell says how wet that is, since a percentage typed without its sign lands there too.",
    },
    from: choice('Basis it is on: "wet" or "dry".', MOISTURE_BASES),
    to: choice('Basis wanted: "wet" or "dry".', MOISTURE_BASES),
  },
  result: { about: "Moisture content on the basis wanted", unit: "fraction" },
  compute: ({ moisture, from, to }) => convertMoisture(moisture, from, to),
  working: ({ moisture, from, to }) => {
    const given = inFigures(moisture);
    const answer = inFigures(convertMoisture(moisture, from, to));
    const notes = from === "dry" && isWetterThanWood(moisture) ? [veryWet(moisture)] : [];
    if (from === to) return [`moisture, ${to} basis = ${given}, as given`, ...notes];
    return [`moisture, ${to} basis = ${given} / (1 ${from === "wet" ? "-" : "+"} ${given}) = ${answer}`, ...notes];
  },
  refusesInCells: ({ moisture, from }) => [
    {
      when: wordInCells(from, [["wet", `${operand(moisture)}>=1`]], `${operand(moisture)}>${WETTEST_DRY_BASIS}+${put(shareSlack)}`),
      says: looksLikePercentage,
    },
  ],
  inCells: ({ moisture, from, to }) => {
    const value = operand(moisture);
    const other = wordInCells(from, [["wet", `${value}/(1-${value})`]], `${value}/(1+${value})`);
    return isTypedText(from) && isTypedText(to)
      ? wordInCells(to, [[from.slice(1, -1).trim(), value]], other)
      : `IF(TRIM(${from})=TRIM(${to}),${value},${other})`;
  },
  examples: [
    { cell: '=RETORT.MOISTURE.CONVERT(0.2, "wet", "dry")', gives: 0.25 },
    { cell: '=RETORT.MOISTURE.CONVERT(1, "dry", "wet")', gives: 0.5 },
    { cell: '=RETORT.MOISTURE.CONVERT(9, "dry", "wet")', gives: 0.9, about: "Fruit: 9 g of water to each gram that stays." },
  ],
  source: "Follows from the two definitions: u = w / (1 - w), w = u / (1 + u). The dry basis may exceed 1 (ASTM D4442).",
});
