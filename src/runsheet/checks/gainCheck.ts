import { noNumber } from "../expressions/choices";
import { cell, fn, is, range, reckon } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

// About 95 % for the change between two weighings (GUM, JCGM 100:2008, 6.3.3).
const COVERAGE = 2;

/**
 * Whether a weigh-in is heavier than the one before it by more than two readings explain, as CHANGE.SIGNIFICANT has it:
 * more than 2 sqrt(2) u, g, since the difference of two readings has the standard uncertainty sqrt(2) u.
 */
export const gainCheck = ({ columns, weighingUncertainty: u }: RunSheet, { rows: { first, last } }: SampleCells): Check => {
  const changes = range(cell(first + 1, columns.at.change), cell(last, columns.at.change));
  const largest = fn("MAX", changes);
  // The first change belongs to the second weigh-in.
  const weighIn = reckon(fn("MATCH", largest, changes, 0), "+", 1);
  const explained = reckon(reckon(COVERAGE, "*", fn("SQRT", 2)), "*", u);
  return {
    silentWhile: fn("OR", noNumber(changes), noNumber(u)),
    steps: [{ when: is(largest, ">", explained), says: checkWords.gain.heavier(weighIn) }],
  };
};
