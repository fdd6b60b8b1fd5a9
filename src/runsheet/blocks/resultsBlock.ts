import { NOTHING, onceNumbers, orNothing, when } from "../expressions/choices";
import { cell, fn, is, reckon, type Call, type Cell, type Expression } from "../expressions/Expression";
import { steadySince } from "../formulas/constantWeight";
import { sharesOf, type Share } from "../formulas/results";
import { withUncertainty } from "../formulas/withUncertainty";
import type { RunSheet } from "../sheet/RunSheet";
import { VALUE } from "../sheet/sampleCells";
import { resultWords } from "../words/resultWords";
import { sheetWords } from "../words/sheetWords";
import { band, headings, label, ofCells, type Block, type BlockCell } from "./Block";

const FRACTION_FORMAT = "0.0%";
const UNCERTAINTY_FORMAT = "0.000000";

/** What the run gives: one column a sample, with mean and standard deviation (n - 1) of those that are finished. */
export function resultsBlock(sheet: RunSheet): Block {
  const { samples, rows, options } = sheet;
  const { results } = rows;
  const isSpread = options.replicates > 1;
  const columns = [resultWords.column, ...samples.map(({ number }) => sheetWords.sample(number))];
  const shares = bySample(sheet);
  return ofCells(
    ...band(sheet, results.heading, resultWords.heading, "heading"),
    ...headings(results.columnHeadings, isSpread ? [...columns, resultWords.mean, resultWords.deviation] : columns),
    ...workingHeadings(sheet),
    ...samples.flatMap((sample, index): BlockCell[] => [
      ...(index === 0 ? [label(sample.steadySince, resultWords.steadySince)] : []),
      { at: sample.steadySince, formula: steadySince(sheet, sample), style: "result" },
    ]),
    ...shares.flatMap((line) => [
      ...line.slice(0, 1).map(({ name, cell: at }) => label(at, resultWords.shares[name])),
      ...line.map(({ cell: at, value }): BlockCell => ({ at, formula: value, style: "result", format: FRACTION_FORMAT })),
    ]),
    ...shares.flatMap((line) => [...uncertaintyLine(sheet, line), ...(isSpread ? spreadCells(sheet, line) : [])]),
  );
}

/** The same share of every sample, share by share. */
function bySample(sheet: RunSheet): Share[][] {
  const every = sheet.samples.flatMap((sample) => sharesOf(sheet, sample));
  return [...new Set(every.map(({ name }) => name))].map((name) => every.filter((share) => share.name === name));
}

function workingHeadings({ samples, rows: { results } }: RunSheet): BlockCell[] {
  const { workings } = sheetWords;
  return [
    ...samples.slice(0, 1).map((first): BlockCell => ({ at: first.working(results.heading), content: workings.results, style: "note" })),
    ...samples.map((sample): BlockCell => ({
      at: sample.working(results.columnHeadings),
      content: workings.sample(sample.number),
      style: "noteHeading",
    })),
  ];
}

/** Under each share the same share rounded with its uncertainty, and right of everything printed that uncertainty itself. */
function uncertaintyLine({ weighingUncertainty }: RunSheet, line: readonly Share[]): BlockCell[] {
  return [
    ...line.slice(0, 1).map((first) => label(below(first.cell), resultWords.uncertain)),
    ...line.map(({ cell: share, working }): BlockCell => ({
      at: below(share),
      formula: onceNumbers([share, working], withUncertainty(share, working)),
      style: "result",
    })),
    // A sample below ten uncertainties has no answer; the checks say that the balance is too coarse.
    ...line.map(({ cell: share, working, uncertainty }): BlockCell => ({
      at: working,
      formula: onceNumbers([share, weighingUncertainty], orNothing(uncertainty)),
      style: "note",
      format: UNCERTAINTY_FORMAT,
    })),
  ];
}

const below = ({ row, column }: Cell): Cell => cell(row + 1, column);

// Replicates that agree to the last digit leave a deviation of binary rounding only, far below one in a thousand million.
const BELOW_DISPLAY = 1_000_000_000;

/** Empty until two samples have the result. The mean's own uncertainty is s / sqrt(n), empty where all agree to the last digit. */
function spreadCells(sheet: RunSheet, line: readonly Share[]): BlockCell[] {
  const { replicates } = sheet.options;
  return line.slice(0, 1).flatMap(({ cell: { row } }): BlockCell[] => {
    const all = sheet.acrossSamples(row);
    const [mean, deviation] = [cell(row, VALUE + replicates), cell(row, VALUE + replicates + 1)];
    const fromTwo = (answer: Expression): Call => when(is(fn("COUNT", all), "<", 2), NOTHING, answer);
    const ofMean = reckon(deviation, "/", fn("SQRT", fn("COUNT", all)));
    const isRoundingOnly = is(reckon(deviation, "*", BELOW_DISPLAY), "<", 1);
    return [
      { at: mean, formula: fromTwo(fn("AVERAGE", all)), style: "result", format: FRACTION_FORMAT },
      { at: deviation, formula: fromTwo(fn("STDEV", all)), style: "result", format: FRACTION_FORMAT },
      {
        at: below(mean),
        formula: onceNumbers([mean, deviation], when(isRoundingOnly, NOTHING, withUncertainty(mean, ofMean))),
        style: "result",
      },
      { at: below(deviation), style: "result" },
    ];
  });
}
