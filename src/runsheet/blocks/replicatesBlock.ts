import { NOTHING, noNumber, onceNumbers, orNothing, when } from "../expressions/choices";
import { cell, fn, is, reckon, retort, type Range } from "../expressions/Expression";
import { sharesOf } from "../formulas/results";
import type { RunSheet } from "../sheet/RunSheet";
import { replicateWords, resultWords } from "../words/resultWords";
import { band, headings, label, NO_BLOCK, ofCells, together, type Block } from "./Block";
import { boxRule, numbers } from "./entries";

const FORMAT = "0.00%";
// REPLICATES gives the critical range in this row and column of its table.
const CRITICAL_RANGE = [9, 2] as const;
const KNOWN = numbers({ atLeast: 0.000001, atMost: 1 });

/** Whether the samples agree as well as the method allows, share by share. */
export function replicatesBlock(sheet: RunSheet): Block {
  const own = sheet.rows.replicates;
  if (own === undefined) return NO_BLOCK;
  const shares = sheet.samples.slice(0, 1).flatMap((first) => sharesOf(sheet, first));
  return together(
    ofCells(...band(sheet, own.heading, replicateWords.heading, "heading"), ...headings(own.columnHeadings, replicateWords.columns)),
    ...shares.map((share, index) => shareLine(own.first + index, resultWords.shares[share.name], sheet.acrossSamples(share.cell.row))),
  );
}

/** The range of all samples held against the critical range for as many results, by the standard deviation known for the method. */
function shareLine(row: number, name: string, all: Range): Block {
  const [count, spread, known, critical, verdict] = [cell(row, 1), cell(row, 2), cell(row, 3), cell(row, 4), cell(row, 5)];
  // A share of exactly 0 is a result, which REPLICATES has to be told.
  const zeros = when(is(fn("COUNTIF", all, 0), "=", 0), "skip", "count");
  const range = reckon(fn("MAX", all), "-", fn("MIN", all));
  const criticalRange = fn("INDEX", retort("REPLICATES", all, known, zeros), ...CRITICAL_RANGE);
  const judged = when(is(spread, "<=", critical), replicateWords.agree, replicateWords.apart);
  return {
    cells: [
      label(count, name),
      { at: count, formula: when(noNumber(all), NOTHING, fn("COUNT", all)), style: "computed", format: "0" },
      { at: spread, formula: when(is(fn("COUNT", all), "<", 2), NOTHING, range), style: "computed", format: FORMAT },
      { at: known, style: "input", format: FORMAT },
      { at: critical, formula: onceNumbers([spread, known], orNothing(criticalRange)), style: "computed", format: FORMAT },
      { at: verdict, formula: onceNumbers([spread, critical], judged), style: "computed" },
    ],
    entryRules: [{ over: known, ...boxRule(replicateWords.known, KNOWN) }],
  };
}
