import { calcinationDegree } from "../../decomposition/calcinationDegree";
import { fraction, presentMassFraction } from "../../inputs/kinds/shares";
import { nothingStays, productLosesMoreThanRaw } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { neededInCells } from "../residue/neededInCells";
import { LIME_BURNING } from "./cautions";

export const calcinationDegreeFunction = cellFunction({
  name: "CALCINATION.DEGREE",
  summary: "Degree of calcination: the share of what a raw material can lose that has left it, from two losses on ignition [fraction].",
  inputs: {
    productLoss: {
      ...fraction("Loss on ignition of the burnt product [fraction]; 0 if burnt through."),
      detail: "Of the product's own mass, fresh from the kiln.",
    },
    rawLoss: presentMassFraction("Loss on ignition of the dry raw material [fraction]."),
  },
  result: { about: "Degree of calcination", unit: "fraction" },
  compute: ({ productLoss, rawLoss }) => calcinationDegree(productLoss, rawLoss),
  working: ({ productLoss, rawLoss }) => {
    const [product, raw] = [inFigures(productLoss), inFigures(rawLoss)];
    const still = (productLoss * (1 - rawLoss)) / (1 - productLoss);
    return [
      `still in the product, per g of raw material = ${product} × (1 - ${raw}) / (1 - ${product}) = ${inFigures(still)} g`,
      `degree of calcination = 1 - ${inFigures(still)} / ${raw} = ${inFigures(calcinationDegree(productLoss, rawLoss))}`,
    ];
  },
  refusesInCells: ({ productLoss, rawLoss }) => [
    { when: `${operand(rawLoss)}>=1`, says: nothingStays },
    { when: `${operand(productLoss)}>${operand(rawLoss)}`, says: productLosesMoreThanRaw },
  ],
  inCells: ({ productLoss, rawLoss }) => {
    const [product, raw] = [operand(productLoss), neededInCells(rawLoss)];
    return `1-${product}*(1-${raw})/((1-${product})*${raw})`;
  },
  examples: [
    {
      cell: "=RETORT.CALCINATION.DEGREE(0.05, 0.4397)",
      gives: 0.932932741223083,
      about: "Lime that still loses 5 %, of limestone that loses 43.97 %.",
    },
    { cell: "=RETORT.CALCINATION.DEGREE(0, 0.42)", gives: 1, about: "Burnt through." },
  ],
  source:
    "Balance over the part that stays, follows from the definition. Lime that slaked or took up CO2 again reads low; in a cement kiln the hot meal's loss also counts alkali salts, so it reads low there.",
  caution: LIME_BURNING,
});
