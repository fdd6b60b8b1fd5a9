import { CRUCIBLE_RATE, hotWeighing } from "../../balance/hotWeighing";
import { gramsPerDegree, temperatureDifference } from "../../inputs/kinds/temperatures";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

export const hotWeighingFunction = cellFunction({
  name: "HOTWEIGHING",
  summary: "Warning figure: by how much a vessel weighed warm may read too light [g]. Wait and weigh again; never add it to a weighing.",
  inputs: {
    temperatureDifference: temperatureDifference("How much warmer the vessel is than the balance [°C]."),
    rate: {
      ...optional(gramsPerDegree("Error for each degree [g/°C]."), "0.00019, a 17 g porcelain crucible"),
      detail: "A compact steel body of 17 g was off by 0.00005 g/°C; larger and open vessels by more.",
    },
  },
  result: { about: "Error to fear, not a correction", unit: "g" },
  compute: ({ temperatureDifference: difference, rate }) => hotWeighing(difference, rate),
  working: ({ temperatureDifference: difference, rate = CRUCIBLE_RATE }) => [
    `error to fear = ${inFigures(difference)} x ${inFigures(rate)} = ${inFigures(hotWeighing(difference, rate))} g, too light`,
    "it fades over about half an hour; no correction, since shape, draught and time all count",
  ],
  inCells: ({ temperatureDifference: difference, rate }) => `${operand(difference)}*${numberInCells(rate, CRUCIBLE_RATE)}`,
  examples: [
    { cell: "=RETORT.HOTWEIGHING(30)", gives: 0.0057, about: "Nothing on a balance that shows 0.1 g, six steps on one that shows 1 mg." },
    { cell: "=RETORT.HOTWEIGHING(30, 0.00005)", gives: 0.0015, about: "A compact steel body." },
  ],
  source: "Blade, Differential Temperature Error in Weighing, Analytical Chemistry: up to 0.19 mg/°C for a porcelain crucible of 17 g.",
  caution:
    "Hot vessels burn, crack a balance's glass and damage its cell. Use tongs, let them cool closed or in a desiccator, and follow your local rules.",
});
