import {
  type AtomicRatios,
  atomicRatios,
  CARBON,
  CARBON_OF_CO2,
  HYDROGEN,
  HYDROGEN_OF_WATER,
  LARGEST_SUM,
  OXYGEN,
  OXYGEN_OF_WATER,
} from "../../furnace/atomicRatio";
import type { Read } from "../../inputs/Input";
import { massFraction, presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { carbonatesHoldAllCarbon, moistureAboveItsElements, sharesAboveWhole } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { label } from "../inCells/formulaInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

const inputs = {
  carbon: presentMassFraction("Carbon, that of carbonates included [fraction of the mass]."),
  hydrogen: presentMassFraction("Hydrogen [fraction of the mass]."),
  oxygen: presentMassFraction("Oxygen, measured or by difference against the ash [fraction of the mass]."),
  carbonateCO2: optional(massFraction("Carbon dioxide that acid sets free from carbonates [fraction of the mass]."), "all carbon is organic"),
  moisture: {
    ...optional(wetMoisture("Moisture of the sample as analysed, where H and O include its water [fraction]."), "H and O are without water"),
    detail: "Wet char analysed as it is shows the hydrogen of its water as its own.",
  },
};

const ratiosOf = ({ carbonateCO2, moisture, ...elements }: Read<typeof inputs>): AtomicRatios => atomicRatios(elements, carbonateCO2, moisture);

type Texts = Readonly<Record<keyof typeof inputs, string>>;

/** Hydrogen and oxygen without those of moisture, and organic carbon. */
const takenInCells = ({ carbon, hydrogen, oxygen, carbonateCO2, moisture }: Texts): Readonly<Record<"hydrogen" | "oxygen" | "organic", string>> => ({
  hydrogen: lessInCells(hydrogen, HYDROGEN_OF_WATER, moisture),
  oxygen: lessInCells(oxygen, OXYGEN_OF_WATER, moisture),
  organic: lessInCells(carbon, CARBON_OF_CO2, carbonateCO2),
});

const lessInCells = (whole: string, factor: number, taken: string): string =>
  taken === "" ? operand(whole) : `(${operand(whole)}-${factor}*${numberInCells(taken, 0)})`;

export const atomicRatioFunction = tableFunction({
  name: "ATOMICRATIO",
  summary: "Table of atoms of hydrogen and oxygen for one of carbon, and for one of organic carbon, from an elemental analysis.",
  inputs,
  result: { about: "Four atomic ratios", unit: "" },
  computeTable: (read) => {
    const of = ratiosOf(read);
    return [
      ["Ratio", "Value"],
      ["H/C", of.hydrogenToCarbon],
      ["O/C", of.oxygenToCarbon],
      ["H/Corg", of.hydrogenToOrganic],
      ["O/Corg", of.oxygenToOrganic],
    ];
  },
  refusesInCells: (texts) => {
    const { hydrogen, oxygen, organic } = takenInCells(texts);
    return [
      { when: `${operand(texts.carbon)}+${operand(texts.hydrogen)}+${operand(texts.oxygen)}>${LARGEST_SUM}`, says: sharesAboveWhole },
      { when: `(${hydrogen}<0)+(${oxygen}<0)`, says: moistureAboveItsElements },
      { when: `${organic}<=0`, says: carbonatesHoldAllCarbon },
    ];
  },
  inManyCells: (texts) => {
    const { hydrogen, oxygen, organic } = takenInCells(texts);
    const ratio = (element: string, weight: number, carbon: string): string => `(${element}/${weight})/(${carbon}/${CARBON})`;
    const row = (name: string, carbon: string): string[][] => [
      [label(`H/${name}`), ratio(hydrogen, HYDROGEN, carbon)],
      [label(`O/${name}`), ratio(oxygen, OXYGEN, carbon)],
    ];
    return [[label("Ratio"), label("Value")], ...row("C", operand(texts.carbon)), ...row("Corg", organic)];
  },
  working: (read) => {
    const of = ratiosOf(read);
    const { carbon, hydrogen, oxygen, carbonateCO2 = 0, moisture = 0 } = read;
    return [
      ...(moisture === 0
        ? []
        : [
            `hydrogen without water = ${inFigures(hydrogen)} - ${inFigures(HYDROGEN_OF_WATER)} x ${inFigures(moisture)} = ${inFigures(of.dry.hydrogen)}`,
            `oxygen without water = ${inFigures(oxygen)} - ${inFigures(OXYGEN_OF_WATER)} x ${inFigures(moisture)} = ${inFigures(of.dry.oxygen)}`,
          ]),
      `H/C = (${inFigures(of.dry.hydrogen)} / ${HYDROGEN}) / (${inFigures(carbon)} / ${CARBON}) = ${inFigures(of.hydrogenToCarbon)}`,
      `O/C = (${inFigures(of.dry.oxygen)} / ${OXYGEN}) / (${inFigures(carbon)} / ${CARBON}) = ${inFigures(of.oxygenToCarbon)}`,
      ...(carbonateCO2 === 0
        ? []
        : [
            `organic carbon = ${inFigures(carbon)} - ${inFigures(CARBON_OF_CO2)} x ${inFigures(carbonateCO2)} = ${inFigures(of.organicCarbon)}`,
            `H/Corg = (${inFigures(of.dry.hydrogen)} / ${HYDROGEN}) / (${inFigures(of.organicCarbon)} / ${CARBON}) = ${inFigures(of.hydrogenToOrganic)}`,
          ]),
    ];
  },
  examples: [
    {
      cell: "=RETORT.ATOMICRATIO(0.9119, 0.0228, 0.0365)",
      gives: [
        ["Ratio", "Value"],
        ["H/C", 0.29792453224298815],
        ["O/C", 0.03004913517150748],
        ["H/Corg", 0.29792453224298815],
        ["O/Corg", 0.03004913517150748],
      ],
      about: "Char of pine from 700 °C.",
    },
  ],
  source:
    "Definition, with the atomic weights of CIAAW 2021 (van Krevelen's ratios). The oxygen of carbonates is not taken off: by difference against ash it stands in the ash.",
});
