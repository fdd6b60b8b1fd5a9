import { NOTHING, onceNumbers, when } from "../expressions/choices";
import { fn, is, LEFT_OUT, retort, type Call, type Expression } from "../expressions/Expression";
import type { Comparison } from "../sheet/layout";
import type { Composition } from "../sheet/RunSheet";
import type { Charring, SampleCells } from "../sheet/sampleCells";
import { burningWords } from "../words/burningWords";
import { isAnalysed, isTooLittle } from "./analysedPercent";

/** Row and column of a quantity in the table that BURN.COMPARE gives, headings counted as row 1. */
const PLACE: Readonly<Record<Comparison | "notes", readonly [row: number, column: number]>> = {
  dry: [2, 2],
  oxygenTaken: [3, 4],
  massIn: [4, 4],
  charLeft: [5, 2],
  ashLeft: [5, 4],
  vapourLeft: [6, 2],
  gases: [6, 4],
  notCovered: [10, 4],
  massOut: [11, 4],
  air: [12, 4],
  notes: [13, 1],
};

/**
 * A quantity of the comparison with open burning, g. Empty until the char is weighed and a composition given: a formula,
 * or carbon, hydrogen and whatever else brings the sum near the whole.
 */
export function compared(composition: Composition, sample: SampleCells, { char }: Charring, quantity: keyof typeof PLACE): Call {
  const { vessel, dry, ashing } = sample;
  const { formula, carbon, hydrogen, oxygen, nitrogen, sulfur } = composition;
  const call = retort("BURN.COMPARE", vessel, dry, char, ashing?.ash ?? LEFT_OUT, formula, carbon, hydrogen, oxygen, nitrogen, sulfur);
  const isUnfinished = fn("OR", is(fn("COUNT", carbon, hydrogen), "<", 2), isTooLittle(composition, sample));
  const answer = fn("INDEX", call, ...PLACE[quantity]);
  return onceNumbers([vessel, dry, char], when(fn("AND", isAnalysed(composition), isUnfinished), NOTHING, answer));
}

/** What BURN.COMPARE notes on a sample, under its name; empty until it has compared. */
export const comparisonNote = (composition: Composition, sample: SampleCells, charring: Charring): Expression =>
  when(is(charring.comparison.dry, "=", NOTHING), NOTHING, burningWords.note(sample.number, compared(composition, sample, charring, "notes")));
