import { NOTHING, noNumber } from "../expressions/choices";
import { is, reckon } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

const words = checkWords.tare;

// A sample below this share of its vessel, 1 in 100, is more often a slip than a sample; common practice, no source.
const VESSEL_PER_SAMPLE = 100;

/** Whether the vessel was weighed, and the sample stands above it. */
export const vesselCheck = ({ columns }: RunSheet, { vessel, moist, weighIns }: SampleCells): Check => ({
  silentWhile: noNumber(weighIns(columns.at.loaded)),
  steps: [
    { when: noNumber(vessel), says: words.noVessel },
    { when: noNumber(moist), says: NOTHING },
    { when: is(moist, "<=", vessel), says: words.notAbove },
    { when: is(reckon(reckon(moist, "-", vessel), "*", VESSEL_PER_SAMPLE), "<", vessel), says: words.barelyAbove },
  ],
});
