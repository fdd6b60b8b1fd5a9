import { all, anyWhere, noNumber, product, type Condition } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { lastCellWhere } from "../formulas/cellsNamed";
import { crosswiseNames } from "../formulas/crosswise";
import { explainedBy, isExplainedKnown } from "../formulas/explained";
import { block } from "../formulas/weighings";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired, Weighed } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

/** What was lost in each row of a table, down to and with the row of the total, so that rows put in above it belong to it. */
const lostIn = ({ options }: RunSheet, table: Weighed): Range =>
  range(fixed(table.lost(firstLoss(table), 1)), fixed(table.lost(table.rows.total, options.replicates)));

/** The first round while drying has none before it; the first firing is held against what was fired. */
const firstLoss = ({ rows }: Weighed): number => ("fire" in rows ? rows.first : rows.first + 1);

/**
 * Which boxes are heavier than the ones above by more than two readings explain (changeExplained). A row that shows no loss shows no
 * gain.
 */
const gainedIn = (sheet: RunSheet, table: Weighed, boxes: Range): Expression => {
  const lost = lostIn(sheet, table);
  // The total's mass stands in the column of what was lost, and no box stands beside it.
  return product(fn("ISNUMBER", lost), fn("ISNUMBER", boxes), is(lost, "<", reckon(0, "-", explainedBy(sheet))));
};

/** The same of one sample. */
export function hasGained(sheet: RunSheet, table: Weighed, sample: number): Condition {
  const { total } = table.rows;
  const [lost, boxes] = [table.lost, table.box].map((at) => range(fixed(at(firstLoss(table), sample)), fixed(at(total, sample)))) as [Range, Range];
  // Asked only while the check of gains is in doubt, so that the limit is known.
  const isGain = is(lost, "<", reckon(0, "-", fn("N", sheet.working.explained)));
  return anyWhere(product(fn("ISNUMBER", lost), fn("ISNUMBER", boxes), isGain));
}

export function gained(sheet: RunSheet, table: Weighed, said: (at: Expression) => Expression): Step {
  const boxes = block(sheet, table, firstLoss(table));
  const gains = gainedIn(sheet, table, boxes);
  return step(anyWhere(gains), said(lastCellWhere(gains, boxes)));
}

/** Whether a sample gained between two rounds, or while it was ashed; between the firings of a char, air got in. */
export function gainCheck(sheet: RunSheet): Check {
  const tables = [sheet.drying, sheet.ashing, sheet.heating].flatMap((table) => (table === undefined ? [] : [table]));
  return {
    silentWhile: noNumber(...tables.map((table) => lostIn(sheet, table))),
    steps: [
      ...crosswiseSteps(sheet),
      ...tables.map((table) => gained(sheet, table, checkWords.gain.heavier)),
      ...(sheet.stages === undefined ? [] : inStages(sheet, sheet.stages)),
      ...crosswiseIn(sheet).map((at) => step(is(fn("N", at), "<", 0), checkWords.gain.crosswiseUnseen)),
    ],
  };
}

const crosswiseIn = ({ working, samples, fired }: RunSheet): Cell[] =>
  samples.length === 1 ? [] : [working.crosswise, ...(fired.length === 0 ? [] : [working.crosswiseFired])];

/** Two samples that stand crosswise explain the gain of the one. */
const crosswiseSteps = (sheet: RunSheet): Step[] =>
  crosswiseIn(sheet).map((at) => {
    const [one, other] = crosswiseNames(fn("N", at));
    return step(all(isExplainedKnown(sheet), is(fn("N", at), ">", 0)), checkWords.gain.crosswise(one, other));
  });

/** The same between stages, where what is left is a share of the dry sample, carried on over what is not weighed. */
const inStages = (sheet: RunSheet, stages: Fired): Step[] =>
  sheet.samples.map((sample) => {
    const left = stages.counted(sample);
    const { first, total, heading } = stages.rows;
    const down = (from: number, to: number): Range => range(fixed({ ...left.from, row: from }), fixed({ ...left.from, row: to }));
    const [dry, explained] = [fn("N", sheet.drying.net(sample)), explainedBy(sheet)];
    // Both reach into the row of the total or past it, which are empty here, so that rows put in above the total belong to both.
    const grew = is(reckon(reckon(down(first, total + 1), "-", down(heading, total)), "*", dry), ">", explained);
    const boxes = range(fixed(stages.box(first, sample)), fixed(stages.box(total + 1, sample)));
    return step(anyWhere(grew), checkWords.gain.stage(lastCellWhere(reckon(grew, "*", 1), boxes)));
  });
