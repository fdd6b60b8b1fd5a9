import { EDITION } from "../../chemistry/atomicWeights";
import { hydrateVerdict } from "../../decomposition/hydrateVerdict";
import { hydrateWater, type HydrateWater, type HydrateWeighings } from "../../decomposition/hydrateWater";
import { standardUncertainty } from "../../inputs/kinds/statistics";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { plainNumber } from "../../problems/quoted";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { DECOMPOSING } from "./cautions";
import { hydrateRefusals, hydrateTable } from "./hydrateInCells";

export const hydrateWaterFunction = tableFunction({
  name: "HYDRATEWATER",
  summary: "Water of a hydrate from weighings before and after heating, as a table: n with its uncertainty, and which hydrate fits within 2 u.",
  inputs: {
    vessel: vesselMass('Empty crucible [g], or "tared".'),
    before: mass("Crucible with the hydrate [g]."),
    after: {
      ...mass("The same after heating, cooled dry [g]."),
      detail: "Heated and weighed again until nothing more leaves, cooled in a desiccator.",
    },
    anhydrous: formulaText('Formula without its water, such as "CuSO4".'),
    u: {
      ...optional(standardUncertainty("Standard uncertainty of one weighing [g]."), "no verdict"),
      detail: "As READING.U gives it: its tared TRUE if the balance was zeroed before each weighing.",
    },
  },
  result: { about: "Water of the hydrate", unit: "" },
  computeTable: ({ anhydrous, ...weighed }) => {
    const water = hydrateWater(weighed, anhydrous);
    const { nearest, words } = hydrateVerdict(water);
    return [
      ["Hydrate", "Value"],
      ["Water lost, share of the hydrate", water.loss],
      ["Water per formula, n", water.n],
      ["its standard uncertainty", water.uncertainty ?? ""],
      ["Nearest", nearest],
      ["Verdict", words],
    ];
  },
  refusesInCells: hydrateRefusals,
  inManyCells: hydrateTable,
  hasStepsInCells: true,
  working: ({ anhydrous, ...weighed }) => steps(weighed, hydrateWater(weighed, anhydrous)),
  examples: [
    {
      cell: '=RETORT.HYDRATEWATER(20, 25, 23.2, "CuSO4", 0.005)',
      gives: [
        ["Hydrate", "Value"],
        ["Water lost, share of the hydrate", 0.36],
        ["Water per formula, n", 4.98340965861782],
        ["its standard uncertainty", 0.0268343847384175],
        ["Nearest", 5],
        ["Verdict", "CuSO4·5H2O within 2 u; adsorbed water counts as crystal water"],
      ],
    },
    {
      cell: '=RETORT.HYDRATEWATER("tared", 25, 16, "CuSO4")',
      gives: [
        ["Hydrate", "Value"],
        ["Water lost, share of the hydrate", 0.36],
        ["Water per formula, n", 4.98340965861782],
        ["its standard uncertainty", ""],
        ["Nearest", 5],
        ["Verdict", "no verdict without u: give the standard uncertainty of one weighing"],
      ],
    },
  ],
  source: `n = w / (1 - w) × M(anhydrous) / M(water), atomic weights ${EDITION}; uncertainty: GUM (JCGM 100:2008) equation 10. Water taken up by the air counts as crystal water; gypsum begins to lose its own below 105 °C.`,
  caution: DECOMPOSING,
});

function steps({ vessel, before, after }: HydrateWeighings, water: HydrateWater): readonly string[] {
  const { loss, n, uncertainty, lossUncertainty, anhydrous, anhydrousMass, waterMass } = water;
  const [w, salt, one] = [inFigures(loss), plainNumber(anhydrousMass), plainNumber(waterMass)];
  return [
    ...anhydrous.notes,
    `water lost, w = (${inFigures(before)} - ${inFigures(after)}) / (${inFigures(before)} - ${inFigures(vessel)}) = ${w}`,
    `n = ${w} / (1 - ${w}) × ${salt} / ${one} = ${inFigures(n)}`,
    ...(uncertainty === undefined || lossUncertainty === undefined
      ? []
      : [
          `standard uncertainty of w, as LOSSFRACTION.U: ${inFigures(lossUncertainty)}`,
          `standard uncertainty of n = ${salt} / ${one} / (1 - ${w})^2 × ${inFigures(lossUncertainty)} = ${inFigures(uncertainty)}`,
        ]),
    hydrateVerdict(water).words,
  ];
}
