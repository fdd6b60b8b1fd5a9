import { choice } from "../../inputs/choice";
import { wetMoisture } from "../../inputs/kinds/shares";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { moistureAboveWholeLoss } from "../../problems/sharing/plainCellProblems";
import { VOLATILE_BASES, volatileFraction, volatileMatter } from "../../residue/volatileMatter";
import { shareSlack } from "../../weighing/roundingSlack";
import { cellFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";
import { CLOSED_HEATING } from "./cautions";

export const volatileMatterFunction = cellFunction({
  name: "VOLATILEMATTER",
  summary: "Volatile matter: what a sample loses when heated closed by the standard's time and temperature, less its moisture [fraction].",
  inputs: {
    vessel: vesselMass('Empty crucible with lid [g], or "tared".'),
    before: mass("Crucible with lid and sample [g]."),
    after: { ...mass("Crucible with lid and char, cooled closed [g]."), detail: "After 7 min at 900 °C (ISO 18123) or 950 °C (ASTM E872)." },
    moisture: {
      ...wetMoisture("Moisture of the sample as weighed in, wet basis [fraction]; of a dried one 0."),
      detail: "Taken on the same day and from the same bottle as the sample.",
    },
    basis: optional(choice("Basis of the answer.", VOLATILE_BASES), '"as analysed", the sample as weighed in'),
  },
  result: { about: "Volatile matter", unit: "fraction" },
  compute: ({ vessel, before, after, moisture, basis }) => volatileMatter(vessel, before, after, moisture, basis),
  working: ({ vessel, before, after, moisture, basis }) => {
    const loss = volatileFraction(vessel, before, after);
    const asAnalysed = volatileMatter(vessel, before, after, moisture);
    return [
      `loss on heating = (${inFigures(before)} - ${inFigures(after)}) / (${inFigures(before)} - ${inFigures(vessel)}) = ${inFigures(loss)}`,
      `volatile matter, as analysed = ${inFigures(loss)} - ${inFigures(moisture)} = ${inFigures(asAnalysed)}`,
      ...(basis === "dry"
        ? [
            `volatile matter, dry = ${inFigures(asAnalysed)} / (1 - ${inFigures(moisture)}) = ${inFigures(volatileMatter(vessel, before, after, moisture, basis))}`,
          ]
        : []),
    ];
  },
  refusesInCells: ({ vessel, before, after, moisture }) => [
    orderInCells({ vessel, before, after }),
    { when: `${operand(moisture)}>${lossInCells(vessel, before, after)}+${put(shareSlack)}`, says: moistureAboveWholeLoss },
  ],
  inCells: ({ vessel, before, after, moisture, basis }) => {
    const water = operand(moisture);
    const asAnalysed = `${lossInCells(vessel, before, after)}-${water}`;
    const share = wordInCells(basis, [["dry", `(1-${water})`]], "1");
    return share === "1" ? asAnalysed : `(${asAnalysed})/${share}`;
  },
  examples: [
    { cell: '=RETORT.VOLATILEMATTER("tared", 1, 0.2, 0.05)', gives: 0.75 },
    { cell: '=RETORT.VOLATILEMATTER("tared", 1, 0.2, 0.05, "dry")', gives: 0.7894736842105263, about: "0.75 g of the 0.95 g that were dry." },
  ],
  source:
    "As analysed: loss minus moisture, ASTM E872 clause 7.1. Dry: that over 1 - moisture, the form of ISO 18123 (from memory). Heated otherwise, as in a kiln, the figure is a VOLATILEFRACTION at your temperature.",
  caution: CLOSED_HEATING,
});

const lossInCells = (vessel: string, before: string, after: string): string =>
  `(${operand(before)}-${operand(after)})/(${operand(before)}-${numberInCells(vessel, 0)})`;
