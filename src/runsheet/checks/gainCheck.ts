import { noNumber } from "../expressions/choices";
import { cell, fn, is, range, reckon } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

// About 95 % for the change between two weighings (GUM, JCGM 100:2008, 6.3.3).
const COVERAGE = 2;
// Twelfths of a squared display step that rounding puts into one reading (GUM 4.3.7).
const TWELFTHS = 12;
// Decimals of a gram to which a change is freed of binary rounding: 50.02 - 50 is not quite 0.02.
const NANOGRAM = 9;

/**
 * Whether a weigh-in is heavier than the one before it by more than two readings explain, as CHANGE.SIGNIFICANT has it for a
 * known display step d: more than 2 sqrt(2) s + d with s^2 = u^2 - d^2 / 12, and more than 2 d, g, since the balance is
 * zeroed before each weighing, so that u is at least d / sqrt(6).
 */
export const gainCheck = ({ columns, details: { readability }, weighingUncertainty: u }: RunSheet, { rows: { first, last } }: SampleCells): Check => {
  const changes = range(cell(first + 1, columns.at.change), cell(last, columns.at.change));
  const largest = fn("MAX", changes);
  // The first change belongs to the second weigh-in.
  const weighIn = reckon(fn("MATCH", largest, changes, 0), "+", 1);
  const scatter = fn("SQRT", reckon(reckon(u, "^", 2), "-", reckon(reckon(readability, "^", 2), "/", TWELFTHS)));
  const byScatter = reckon(reckon(reckon(COVERAGE, "*", fn("SQRT", 2)), "*", scatter), "+", readability);
  const explained = fn("MAX", byScatter, reckon(2, "*", readability));
  return {
    silentWhile: fn("OR", noNumber(changes), noNumber(u)),
    steps: [{ when: is(fn("ROUND", largest, NANOGRAM), ">", explained), says: checkWords.gain.heavier(weighIn) }],
  };
};
