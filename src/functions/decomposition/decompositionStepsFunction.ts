import { EDITION } from "../../chemistry/atomicWeights";
import { KNOWN_STEPS } from "../../chemistry/decompositionSteps";
import { decompositionSteps } from "../../decomposition/decompositionSteps";
import { formulaText } from "../../inputs/kinds/words";
import { tableFunction } from "../cellFunction";
import { label } from "../inCells/formulaInCells";
import { lossInCells } from "../inCells/lossInCells";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { DECOMPOSING } from "./cautions";

const HEADINGS = ["Step", "Leaves", "Loss of the original", "Loss of the step's start", "Left of the original", "Temperature reported"];

const named = (index: number, from: string, to: string): string => `${index + 1}: ${from} → ${to}`;

export const decompositionStepsFunction = tableFunction({
  name: "DECOMPOSITION.STEPS",
  summary: "The steps in which a common salt or mineral decomposes, as a table: what leaves, and each loss of the original and of the step's start.",
  inputs: {
    formula: {
      ...formulaText('Formula or name, such as "CuSO4·5H2O" or "gypsum".'),
      detail: `Listed: ${KNOWN_STEPS.map(({ start }) => start).join(", ")}, and what is left between their steps.`,
    },
  },
  result: { about: "Steps of the decomposition", unit: "" },
  computeTable: ({ formula }) => [
    HEADINGS,
    ...decompositionSteps(formula).map(({ from, to, leaves, lossOfOriginal, lossOfStep, left, temperature }, index) => [
      named(index, from, to),
      leaves,
      lossOfOriginal,
      lossOfStep,
      left,
      temperature,
    ]),
  ],
  inManyCells: ({ formula }) => {
    if (!isTypedText(formula)) return undefined;
    const [steps, found] = [[HEADINGS.map(label)], decompositionSteps(typedTextOf(formula))];
    let before = "1";
    for (const [index, { from, to, leaves, decomposition, temperature }] of found.entries()) {
      const loss = lossInCells(decomposition);
      const left = `(1-${loss})`;
      steps.push([label(named(index, from, to)), label(leaves), `${before}-${left}`, `1-${left}/${before}`, left, textInCells(temperature)]);
      before = left;
    }
    return steps;
  },
  working: ({ formula }) => {
    const steps = decompositionSteps(formula);
    return steps.flatMap(({ from, to, lossOfOriginal, lossOfStep, left }, index) => {
      const before = steps[index - 1]?.left ?? 1;
      return [
        `${from} → ${to}`,
        `loss of the original = ${inFigures(before)} - ${inFigures(left)} = ${inFigures(lossOfOriginal)}`,
        `loss of the step's start = ${inFigures(lossOfOriginal)} / ${inFigures(before)} = ${inFigures(lossOfStep)}`,
      ];
    });
  },
  examples: [
    {
      cell: '=RETORT.DECOMPOSITION.STEPS("CaC2O4·H2O")',
      gives: [
        ["Step", "Leaves", "Loss of the original", "Loss of the step's start", "Left of the original", "Temperature reported"],
        [
          "1: CaC2O4·H2O → CaC2O4",
          "H2O",
          0.123296671708496,
          0.123296671708496,
          0.876703328291504,
          "near 162 °C, heated as slowly as it loses; later when heated fast (Frost and Weier, Thermochim. Acta 409 (2004) 79)",
        ],
        [
          "2: CaC2O4 → CaCO3",
          "CO",
          0.191703567835413,
          0.218664126904821,
          0.684999760456092,
          "near 479 °C, heated as slowly as it loses; later when heated fast (Frost and Weier, Thermochim. Acta 409 (2004) 79)",
        ],
        ["3: CaCO3 → CaO", "CO2", 0.30120251042016, 0.439711847810883, 0.383797250035932, ""],
      ],
      about: "Books that give 21.9 % for the second step count it on what the first one left.",
    },
  ],
  source: `Losses from the formulas, atomic weights ${EDITION}; what leaves and in which order from memory of general chemistry; temperatures only as the named source gives them, none for carbonates, whose sources spread. Hydrates lose their steps into one another when heated fast.`,
  caution: DECOMPOSING,
});
