import { choice } from "../../inputs/choice";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { optional } from "../../inputs/optional";
import { LEAST_LEFT, shrinkage, SHRINKAGE_OF } from "../../pottery/shrinkage";
import { lengthGrown, lengthHalved } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";

const LENGTH = "Give the length, in one unit for both.";

export const shrinkageFunction = cellFunction({
  name: "SHRINKAGE",
  summary: "Shrinkage of clay on drying, firing or both: how much a length loses, as a share of the length before [fraction].",
  inputs: {
    before: { ...positiveNumber("Length between two marks before.", LENGTH, "a length"), detail: "For total shrinkage that of the plastic clay." },
    after: positiveNumber("The same length after, in the same unit.", LENGTH, "a length"),
    of: optional(choice("Shrinkage of what, the volume alike in all directions.", SHRINKAGE_OF), '"length"'),
  },
  result: { about: "Shrinkage", unit: "fraction" },
  compute: ({ before, after, of }) => shrinkage(before, after, of),
  working: ({ before, after, of }) => {
    const linear = shrinkage(before, after);
    return [
      `shrinkage of length = (${inFigures(before)} - ${inFigures(after)}) / ${inFigures(before)} = ${inFigures(linear)}`,
      ...(of === "volume"
        ? [`shrinkage of volume = 1 - (${inFigures(after)} / ${inFigures(before)})^3 = ${inFigures(shrinkage(before, after, of))}`]
        : []),
      `to be made larger = ${inFigures(before)} / ${inFigures(after)} = ${inFigures(before / after)} times what is wanted after`,
    ];
  },
  refusesInCells: ({ before, after }) => [
    { when: `${operand(after)}>${operand(before)}`, says: lengthGrown },
    { when: `${operand(after)}<${LEAST_LEFT}*${operand(before)}`, says: lengthHalved },
  ],
  inCells: ({ before, after, of }) => {
    const [first, second] = [operand(before), operand(after)];
    return wordInCells(of, [["volume", `1-(${second}/${first})^3`]], `(${first}-${second})/${first}`);
  },
  examples: [
    { cell: "=RETORT.SHRINKAGE(100, 88)", gives: 0.12, about: "A mark of 100 mm in plastic clay, 88 mm after firing." },
    { cell: '=RETORT.SHRINKAGE(100, 88, "volume")', gives: 0.3185279999999999 },
  ],
  source: "ASTM C326 (from memory, check your edition): loss of length over plastic length. Firing shrinkage alone is of the dry length.",
});
