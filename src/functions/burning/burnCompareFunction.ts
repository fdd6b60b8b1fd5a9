import type { CharAndBurn } from "../../chemistry/burning/burnCompare";
import { massFraction, presentMassFraction } from "../../inputs/kinds/shares";
import { mass, vesselMass } from "../../inputs/kinds/weighings";
import { formulaText } from "../../inputs/kinds/words";
import { optional } from "../../inputs/optional";
import { type Shown, tableFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { inFigures } from "../inFigures";
import { CLOSED_AND_OPEN } from "./cautions";
import { compared } from "./compared";
import { comparisonInCells, compositionRefusals } from "./comparisonInCells";

export const burnCompareFunction = tableFunction({
  name: "BURN.COMPARE",
  summary: "One dry sample charred without air against the same sample burned in the open, as a table [g and g per g dry sample].",
  inputs: {
    vessel: vesselMass('Empty vessel [g], or "tared".'),
    dry: mass("Vessel with the dry sample [g]."),
    char: mass("Vessel with the char, cooled [g]."),
    ash: optional(mass("Vessel with the ash, cooled [g]."), "no ash is reckoned"),
    formula: optional(formulaText("Formula of the part that burns, without ash. Give this or the analysis."), "the analysis is taken"),
    carbon: optional(presentMassFraction("Carbon in the dry sample, ash included in the sample [fraction]."), "the formula is taken"),
    hydrogen: optional(presentMassFraction("Hydrogen in the dry sample [fraction]."), "the formula is taken"),
    oxygen: optional(massFraction("Oxygen in the dry sample [fraction]."), "none"),
    nitrogen: optional(massFraction("Nitrogen in the dry sample [fraction]."), "none"),
    sulfur: optional(massFraction("Sulfur in the dry sample [fraction]."), "none"),
  },
  result: { about: "Charring against burning", unit: "" },
  computeTable: (read) => {
    const { comparison, notes } = compared(read);
    return [...comparisonTable(comparison), [notes.join(" "), "", "", "", ""]];
  },
  working: (read) => {
    const { comparison, notes } = compared(read);
    const { dry, charred, burned } = comparison;
    return [
      `dry sample = ${inFigures(dry)} g`,
      `left as vapour = ${inFigures(dry)} - ${inFigures(charred.left)} = ${inFigures(charred.gone)} g`,
      `share that left = ${inFigures(charred.gone)} / ${inFigures(dry)} = ${inFigures(charred.gone / dry)}`,
      `burned, in = ${inFigures(dry)} + ${inFigures(burned.oxygenTaken)} oxygen = ${inFigures(burned.massIn)} g`,
      `burned, out = ${inFigures(burned.left)} ash + ${inFigures(burned.carbonDioxide)} CO2 + ${inFigures(burned.water)} H2O + ${inFigures(burned.otherGases)} other + ${inFigures(burned.notCovered)} not covered = ${inFigures(burned.massOut)} g`,
      ...notes,
    ];
  },
  refusesInCells: (texts) => [orderInCells({ vessel: texts.vessel, dry: texts.dry, char: texts.char }), ...compositionRefusals(texts)],
  inManyCells: comparisonInCells,
  examples: [
    {
      cell: '=RETORT.BURN.COMPARE(25, 35, 28, 25.125, "C6H10O5")',
      gives: [
        [
          "Dry sample, two ways",
          "Charred without air [g]",
          "Charred without air [g per g dry]",
          "Burned in the open [g]",
          "Burned in the open [g per g dry]",
        ],
        ["In: dry sample", 10, 1, 10, 1],
        ["In: oxygen taken up", 0, 0, 11.69279515976835, 1.169279515976835],
        ["In, together", 10, 1, 21.69279515976835, 2.169279515976835],
        ["Stays: char, or ash", 3, 0.3, 0.125, 0.0125],
        ["Leaves: vapours, or burned gases", 7, 0.7, 21.567795159768345, 2.1567795159768344],
        ["of these CO2", "", "", 16.08188706126149, 1.608188706126149],
        ["of these H2O", "", "", 5.485908098506855, 0.5485908098506855],
        ["of these other gases and smoke", "", "", 0, 0],
        ["Not covered by the analysis", 0, 0, 0, 0],
        ["Out, together", 10, 1, 21.692795159768345, 2.1692795159768345],
        ["Air that brings the oxygen", 0, 0, 50.530661883182155, 5.0530661883182155],
        ["The nitrogen that comes with the air is not counted among the gases.", "", "", "", ""],
      ],
      about: "10 g of dry cellulose, 0.125 g of it ash: 3 g of char left, against 21.6 g of gases from open burning.",
    },
  ],
  source: "Weighings, and complete burning as OXYGENDEMAND and BURN.PRODUCTS reckon it; dry air holds 0.2314 of oxygen by mass. Ash is not burned.",
  caution: CLOSED_AND_OPEN,
});

/** The two fates of one dry sample side by side, always twelve rows by five columns. */
function comparisonTable({ dry, charred, burned }: CharAndBurn): readonly (readonly Shown[])[] {
  const both = (label: string, whenCharred: number, whenBurned: number): readonly Shown[] => [
    label,
    whenCharred,
    whenCharred / dry,
    whenBurned,
    whenBurned / dry,
  ];
  const gas = (label: string, whenBurned: number): readonly Shown[] => [label, "", "", whenBurned, whenBurned / dry];
  return [
    [
      "Dry sample, two ways",
      "Charred without air [g]",
      "Charred without air [g per g dry]",
      "Burned in the open [g]",
      "Burned in the open [g per g dry]",
    ],
    both("In: dry sample", dry, dry),
    both("In: oxygen taken up", charred.oxygenTaken, burned.oxygenTaken),
    both("In, together", charred.massIn, burned.massIn),
    both("Stays: char, or ash", charred.left, burned.left),
    both("Leaves: vapours, or burned gases", charred.gone, burned.gone),
    gas("of these CO2", burned.carbonDioxide),
    gas("of these H2O", burned.water),
    gas("of these other gases and smoke", burned.otherGases),
    both("Not covered by the analysis", charred.notCovered, burned.notCovered),
    both("Out, together", charred.massOut, burned.massOut),
    both("Air that brings the oxygen", 0, burned.air),
  ];
}
