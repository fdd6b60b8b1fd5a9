import { ashShare, NO_ASH, presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { sharesAboveWhole } from "../../problems/sharing/plainCellProblems";
import { fixedCarbon } from "../../residue/fixedCarbon";
import { shareSlack } from "../../weighing/roundingSlack";
import { cellFunction } from "../cellFunction";
import { put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { neededInCells } from "./neededInCells";

export const fixedCarbonFunction = cellFunction({
  name: "FIXEDCARBON",
  summary: "Fixed carbon by difference: 1 less moisture, volatile matter and ash, all on one basis [fraction].",
  inputs: {
    moisture: {
      ...wetMoisture("Moisture [fraction] on the basis of the other two; 0 on the dry basis."),
      detail: "With dry-basis volatile matter and ash the moisture is 0, else it is subtracted twice.",
    },
    volatile: presentMassFraction("Volatile matter [fraction], less moisture, as VOLATILEMATTER gives it."),
    ash: { ...ashShare('Ash [fraction], or "none".'), detail: "Ash left out would be counted as carbon." },
  },
  result: { about: "Fixed carbon", unit: "fraction" },
  compute: ({ moisture, volatile, ash }) => fixedCarbon(moisture, volatile, ash),
  working: ({ moisture, volatile, ash }) => [
    `moisture + volatile matter + ash = ${inFigures(moisture)} + ${inFigures(volatile)} + ${inFigures(ash)} = ${inFigures(moisture + volatile + ash)}`,
    `fixed carbon = 1 - ${inFigures(moisture + volatile + ash)} = ${inFigures(fixedCarbon(moisture, volatile, ash))}`,
  ],
  refusesInCells: (texts) => [{ when: `${sumInCells(texts)}>1+${put(shareSlack)}`, says: sharesAboveWhole }],
  inCells: (texts) => `1-${sumInCells(texts)}`,
  examples: [
    { cell: "=RETORT.FIXEDCARBON(0.05, 0.75, 0.01)", gives: 0.19 },
    { cell: '=RETORT.FIXEDCARBON(0, 0.8, "none")', gives: 0.2, about: "Dry basis, a substance that leaves no ash." },
  ],
  source: "ASTM D3172: fixed carbon is what is left after moisture, volatile matter and ash; it is not the element carbon.",
});

const sumInCells = ({ moisture, volatile, ash }: Readonly<Record<"moisture" | "volatile" | "ash", string>>): string =>
  `(${operand(moisture)}+${operand(volatile)}+${neededInCells(ash, NO_ASH)})`;
