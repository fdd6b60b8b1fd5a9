import { NOTHING, noNumber, orNothing, when } from "../expressions/choices";
import { fn, is, retort, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { weighInWords } from "../words/weighInWords";

// DRYING.END gives the weighings still to come in this row and column of its table.
const WEIGHINGS_LEFT = [9, 2] as const;
// A straight line through fewer weighings fits them all, so it foretells nothing.
const FEWEST_WEIGHINGS = 3;

/**
 * How many more weighings the falling-rate curve foretells; empty once steady, and until the weighings can carry a curve.
 * Too few weighings, a gain or too much noise have no prediction; the table above and the checks say what is wrong.
 */
export function weighingsLeft({ columns, details }: RunSheet, sample: SampleCells): Call {
  const [elapsed, gross] = [sample.weighIns(columns.at.elapsed), sample.weighIns(columns.gross)];
  const end = retort("DRYING.END", elapsed, gross, sample.vessel, details.readability, details.limit, details.criterion);
  const isTooEarly = is(fn("COUNT", sample.weighIns(columns.at.sample)), "<", FEWEST_WEIGHINGS);
  const isDry = is(fn("COUNT", sample.dry), "=", 1);
  return when(isTooEarly, NOTHING, when(isDry, NOTHING, orNothing(fn("INDEX", end, ...WEIGHINGS_LEFT))));
}

/** The same in words. @param count cell of how many */
export function predictionInWords(count: Cell): Expression {
  const more = when(is(count, "=", 1), weighInWords.oneMore, weighInWords.more(count));
  return when(noNumber(count), NOTHING, when(is(count, "=", 0), NOTHING, weighInWords.byTheCurve(more)));
}
