import { firstOf, NOTHING, when } from "../expressions/choices";
import { fn, is, reckon, retort, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { weighInWords } from "../words/weighInWords";

/** What CONSTANTWEIGHT and CONSTANTWEIGHT.STEPS are given: one sample's weighings down to a row, and the run details. */
function given({ details, columns }: RunSheet, sample: SampleCells, to?: number): readonly Expression[] {
  const { limit, criterion, readability, interval } = details;
  const [weights, minutes] = [sample.weighIns(columns.gross, to), sample.weighIns(columns.at.elapsed, to)];
  return [weights, limit, criterion, minutes, sample.vessel, readability, interval];
}

// CONSTANTWEIGHT.STEPS gives headings in its first row and the verdict in its last column.
const HEADING_ROWS = 1;
const VERDICT_COLUMN = 5;

/** The verdict on the weigh-in of a row, by the weighings down to it. @param number cell of the weigh-in's number */
export function verdictOn(sheet: RunSheet, sample: SampleCells, row: number, number: Cell): Call {
  const steps = retort("CONSTANTWEIGHT.STEPS", ...given(sheet, sample, row));
  return fn("INDEX", steps, reckon(number, "+", HEADING_ROWS), VERDICT_COLUMN);
}

/** How many weigh-ins hold anything: the number of the latest, since they are filled in row by row. */
const latest = ({ columns }: RunSheet, sample: SampleCells): Call => fn("COUNTA", sample.weighIns(columns.at.loaded));

/** The verdict on the latest weigh-in, whatever it holds; only where there is one. */
export const newestVerdict = (sheet: RunSheet, sample: SampleCells): Call =>
  fn("INDEX", sample.weighIns(sheet.columns.at.steady), latest(sheet, sample));

const { first, steady, notYet } = weighInWords.verdicts;

/** Since which weigh-in a sample is steady, or else the verdict on its latest one. */
export function steadySince(sheet: RunSheet, sample: SampleCells): Expression {
  const newest = newestVerdict(sheet, sample);
  const answers = [
    [is(latest(sheet, sample), "=", 0), NOTHING],
    [is(newest, "=", steady), retort("CONSTANTWEIGHT", ...given(sheet, sample))],
    [is(newest, "=", first), notYet],
  ] as const;
  return firstOf(answers, newest);
}

/** The latest weighing, g with the vessel: it counts as the dry one once it belongs to a steady run. */
export function dryWeighing(sheet: RunSheet, sample: SampleCells): Expression {
  const weighing = fn("INDEX", sample.weighIns(sheet.columns.gross), latest(sheet, sample));
  const isSteady = is(newestVerdict(sheet, sample), "=", steady);
  return when(is(latest(sheet, sample), "=", 0), NOTHING, when(isSteady, weighing, NOTHING));
}
