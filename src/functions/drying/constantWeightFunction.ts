import { constantWeight } from "../../weighing/constantWeight";
import { cellFunction } from "../cellFunction";
import { constancyInputs } from "./constancyInputs";
import { constancyRunOf } from "./constancyRunOf";
import { CONSTANCY_SOURCE } from "./constancySource";
import { constancyWorking } from "./constancyWorking";
import { DRYING_CAUTION } from "./dryingCaution";

export const constantWeightFunction = cellFunction({
  name: "CONSTANTWEIGHT",
  summary:
    "Number, from 1, of the weighing at which a drying sample reached constant weight and stayed; 0 while it has not (fewer than two weighings included).",
  inputs: constancyInputs,
  result: { about: "First weighing of the unbroken steady run; 0 for not yet", unit: "" },
  compute: (read) => constantWeight(constancyRunOf(read)),
  working: (read) => constancyWorking(constancyRunOf(read)),
  examples: [
    { cell: "=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893})", gives: 5 },
    {
      cell: '=RETORT.CONSTANTWEIGHT({10; 9.2; 8.95; 8.9; 8.893}, 0.002, "of total loss")',
      gives: 0,
      about: "The same sample by another standard: 7 mg is more than 0.2 % of the 1.107 g lost.",
    },
    {
      cell: "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.002,,, 25)",
      gives: 0,
      about: "With its 25 g vessel given: 50 mg is 0.56 % of the sample.",
    },
    {
      cell: "=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.002)",
      gives: 4,
      about: "Wrong: the same weighings with the vessel left in seem constant, 0.15 % of sample and vessel.",
    },
  ],
  source: CONSTANCY_SOURCE,
  caution: DRYING_CAUTION,
});
