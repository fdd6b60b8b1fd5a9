import type { CharAndBurn } from "../../chemistry/burning/burnCompare";
import type { Shown } from "../cellFunction";

/** The two fates of one dry sample side by side, always twelve rows by five columns. */
export function comparisonTable({ dry, charred, burned }: CharAndBurn): readonly (readonly Shown[])[] {
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
