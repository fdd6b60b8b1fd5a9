import {
  type AtomicRatios,
  atomicRatios,
  CARBON,
  CARBON_OF_CO2,
  HYDROGEN,
  HYDROGEN_OF_WATER,
  OXYGEN,
  OXYGEN_OF_WATER,
} from "../../furnace/atomicRatio";
import type { Read } from "../../inputs/Input";
import { massFraction, presentMassFraction, wetMoisture } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";

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
