import { has, isFired } from "../kinds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import type { checkWords } from "../words/checkWords";

type CheckName = keyof (typeof checkWords)["names"];

/** What is looked at on a sheet for these options, in its order. */
export const checksOf = ({ kind, panZeros, temperatures, replicates }: CheckedOptions): readonly CheckName[] => {
  const only = (isWanted: boolean, ...names: CheckName[]): CheckName[] => (isWanted ? names : []);
  const [charring, ashing, stages, heating] = [has(kind, "charring"), has(kind, "ashing"), has(kind, "stages"), has(kind, "heating")];
  return [
    // A vessel that changed explains every weight after it, and air that got in a char that is not steady, so they come first.
    "vessel",
    ...only(isFired(kind), "vesselAgain"),
    ...(["times", "rows", "gain", "order", "dryness"] as const),
    ...only(isFired(kind), "opened"),
    ...only(charring, "air", "charDone"),
    ...only(ashing, "ashDone"),
    ...only(stages, "rising", "stageHeld"),
    ...only(heating, "heatDone", "theory"),
    ...only(has(kind, "caught"), "caught", "ledger"),
    ...only(replicates > 1, "agree"),
    "fine",
    // What the literature reports is of plant matter; what is heated in stages may be anything.
    ...only(!stages && !heating, "range"),
    "material",
    ...only(has(kind, "openFire"), "analysis"),
    ...only(panZeros, "zeros"),
    ...only(temperatures, "warmth"),
    "typedOver",
  ];
};
