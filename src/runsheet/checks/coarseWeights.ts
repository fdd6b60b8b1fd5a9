import { all, countWhere, firstOf, product, sum, unlessError, when, type Condition } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { block } from "../formulas/weighings";
import type { RunSheet } from "../sheet/RunSheet";
import type { Weighed } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { weighingWords } from "../words/weighingWords";
import { step, type Step } from "./Check";

/*
 * A balance that shows more than is typed. Where each figure of a balance of step d is as likely as another, n weights are all whole k d by chance
 * once in k^n runs. Asked are tens from 4 weights on, once in 10,000, with the vessels, and from 5 on without them, once in 100,000; fives from 6
 * and 7 on, once in 15,625 and 78,125; twos from 14 and 15 on, once in 16,384 and 32,768: together in about one run in 5,000 of honest ones. A round
 * that shows what the one before it did is no further weight. A vessel of 0 g or a tared one is none either, and a sample weighed out on a tared
 * balance may be round on purpose. Balances of other samples cannot be told apart: one weight with all its figures clears the run.
 */
const ASKED = [
  { times: 10, weights: 5 },
  { times: 5, weights: 7 },
  { times: 2, weights: 15 },
] as const;
// More than a run has.
const NEVER = 10_000;

/** Whether every weight of the run stands on a step coarser than the balance's. */
export function coarseWeights(sheet: RunSheet): Step {
  const { tables, columns, rows, settings, across } = sheet;
  const { readability } = settings;
  const vessels = across((sample) => fixed(columns.box(rows.drying.vessel, sample)));
  const weights = tables.map((table) => block(sheet, table));
  // What is left over of so many display steps; of a text an error, which is told elsewhere.
  const over = (of: Range, times: number): Expression => countWhere(fn("MOD", fn("ROUND", reckon(of, "/", readability), 0), times));
  const isWhole = (times: number): Condition => is(sum(...weights.map((of) => over(of, times))), "=", 0);
  const [{ times: most }] = ASKED;
  const areVesselsWhole = all(is(over(vessels, most), "=", 0), is(fn("MAX", vessels), ">", 0));
  const fromVessels = fn("IFERROR", when(areVesselsWhole, sum(countWhere(is(vessels, ">", 0)), 1), 0), 0);
  const onPurpose = fn("COUNTIF", vessels, weighingWords.tared);
  const count = reckon(sum(fromVessels, ...tables.map((table) => different(sheet, table))), "-", onPurpose);
  const least = firstOf(
    ASKED.map(({ times, weights: asked }) => [isWhole(times), asked] as const),
    NEVER,
  );
  const [tens, fives, twos] = ASKED.map(({ times }) => times) as [number, number, number];
  const times = firstOf(
    [
      [isWhole(tens), tens],
      [isWhole(fives), fives],
    ],
    twos,
  );
  const isCoarse = unlessError(all(is(fn("N", readability), ">", 0), is(count, ">=", least)));
  return step(isCoarse, checkWords.dryness.coarse(product(times, readability), nameOf(readability)));
}

/** Weights of a table that differ from the one above: what weighs the same again shows the same figures. */
function different(sheet: RunSheet, table: Weighed): Expression {
  const { first, total } = table.rows;
  const [below, above] = [block(sheet, table, first + 1, total + 1), block(sheet, table, first, total)];
  const firsts = range(fixed(table.box(first, 1)), fixed(table.box(first, sheet.options.replicates)));
  return sum(fn("COUNT", firsts), countWhere(product(fn("ISNUMBER", below), reckon(1, "-", is(below, "=", above)))));
}
