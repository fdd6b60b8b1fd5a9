import { firstOf, lacksNumber, NOTHING, onceNumbers, when } from "../expressions/choices";
import { cell, fixed, fn, is, reckon, type Call, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import type { WeighInColumn } from "../sheet/weighInColumns";
import { weighInWords } from "../words/weighInWords";
import { coldEnough, warmerBy } from "./coldEnough";
import { verdictOn } from "./constantWeight";
import { driftCorrected } from "./driftCorrected";

/** What each calculated column of a weigh-in table holds in one row. The first row has no change since the one before. */
export function weighInFormulas(sheet: RunSheet, sample: SampleCells, row: number): Partial<Record<WeighInColumn, Expression>> {
  const { at, gross, zeros, temperatures } = sheet.columns;
  const here = (column: number) => cell(row, column);
  const [weighed, mass, before] = [here(gross), here(at.sample), cell(row - 1, at.sample)];
  const isFirst = row === sample.rows.first;
  return {
    elapsed: isFirst ? when(fn("ISNUMBER", here(at.clock)), 0, NOTHING) : laterElapsed(sheet, sample, row),
    sample: onceNumbers([sample.vessel, weighed], reckon(weighed, "-", sample.vessel)),
    ...(isFirst ? {} : { change: onceNumbers([before, mass], reckon(mass, "-", before)) }),
    steady: steady(sheet, sample, row),
    chartElapsed: lastKnown(sheet, sample, row, "chartElapsed", "elapsed"),
    chartSample: lastKnown(sheet, sample, row, "chartSample", "sample"),
    ...(zeros && { corrected: driftCorrected(here(at.loaded), here(zeros.before), here(zeros.after)) }),
    ...(temperatures && {
      warmer: warmerBy(here(temperatures.room), here(temperatures.warmth)),
      cold: coldEnough(here(temperatures.room), here(temperatures.warmth), sheet.details.readability),
    }),
  };
}

const MINUTES_PER_DAY = 1440;
// Clocks are read to the second at best, so hundredths of a minute are enough.
const DECIMALS_OF_A_MINUTE = 2;

/**
 * Minutes since the first weigh-in. Dates with times count straight; bare clock times, fractions of a day below 1, are
 * counted on from the weigh-ins before: t = t(so far) + ((t(clock) - t(so far)) mod 1440), past midnight as often as needed.
 */
function laterElapsed({ columns: { at } }: RunSheet, sample: SampleCells, row: number): Expression {
  const [start, clock] = [fixed(cell(sample.rows.first, at.clock), "row"), cell(row, at.clock)];
  const soFar = fn("MAX", sample.weighIns(at.elapsed, row - 1));
  const minutes = reckon(reckon(clock, "-", start), "*", MINUTES_PER_DAY);
  const rounded = (value: Expression): Call => fn("ROUND", value, DECIMALS_OF_A_MINUTE);
  const onward = reckon(soFar, "+", fn("MOD", rounded(reckon(minutes, "-", soFar)), MINUTES_PER_DAY));
  return onceNumbers([start, clock], when(is(fn("MIN", start, clock), ">=", 1), rounded(minutes), onward));
}

/** The verdict on a weigh-in, or why there is none: each weigh-in down to this one must have its time and weight. */
function steady(sheet: RunSheet, sample: SampleCells, row: number): Expression {
  const { columns, details } = sheet;
  const { number, clock, elapsed, loaded, sample: mass } = columns.at;
  const { limit, readability, interval, criterion } = details;
  const { clockIsText, weightIsText, rowMissing, detailsMissing } = weighInWords.noVerdict;
  const filled = fn("MIN", fn("COUNT", sample.weighIns(elapsed, row)), fn("COUNT", sample.weighIns(loaded, row)));
  const known = reckon(fn("COUNT", limit, readability, interval), "+", fn("COUNTA", criterion));
  const answers = [
    [fn("ISTEXT", cell(row, clock)), clockIsText],
    [fn("ISTEXT", cell(row, loaded)), weightIsText],
    [lacksNumber(cell(row, elapsed), cell(row, mass)), NOTHING],
    [is(filled, "<", cell(row, number)), rowMissing],
    [is(known, "<", 4), detailsMissing],
  ] as const;
  return firstOf(answers, verdictOn(sheet, sample, row, cell(row, number)));
}

/** A chart takes the empty text of a cell not yet calculated for 0, so rows not yet weighed repeat the last point. */
function lastKnown(
  { columns: { at } }: RunSheet,
  { rows: { first } }: SampleCells,
  row: number,
  charted: "chartElapsed" | "chartSample",
  shown: "elapsed" | "sample",
): Expression {
  const otherwise = row === first ? NOTHING : cell(row - 1, at[charted]);
  return when(is(fn("COUNT", cell(row, at.elapsed), cell(row, at.sample)), "=", 2), cell(row, at[shown]), otherwise);
}
