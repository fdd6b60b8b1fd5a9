import { anyWhere, noNumber } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../expressions/Expression";
import { lastCellWhere } from "../formulas/cellsNamed";
import { block } from "../formulas/weighings";
import type { RunSheet, Weighed } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

/** What was lost in each row of a table, down to and with the row of the total, whose mass is below 0 only where the order is wrong. */
const lostIn = ({ options }: RunSheet, table: Weighed): Range =>
  range(fixed(table.lost(firstLoss(table), 1)), fixed(table.lost(table.rows.total, options.replicates)));

/** The first round while drying has none before it; the first firing is held against what was fired. */
const firstLoss = ({ rows }: Weighed): number => ("fire" in rows ? rows.first : rows.first + 1);

/**
 * Which boxes are heavier than the ones above by more than two readings explain (changeExplained). A row that shows no loss shows no
 * gain.
 */
const gainedIn = (sheet: RunSheet, table: Weighed): Expression => {
  const lost = lostIn(sheet, table);
  return reckon(fn("ISNUMBER", lost), "*", is(lost, "<", reckon(0, "-", fn("N", sheet.working.explained))));
};

export function gained(sheet: RunSheet, table: Weighed, said: (at: Expression) => Expression): Step {
  const boxes = block(sheet, table, firstLoss(table));
  return step(anyWhere(gainedIn(sheet, table)), said(lastCellWhere(gainedIn(sheet, table), boxes)));
}

/** Whether a sample gained between two rounds, or while it was ashed; between the firings of a char, air got in. */
export function gainCheck(sheet: RunSheet): Check {
  const tables = [sheet.drying, sheet.ashing].flatMap((table) => (table === undefined ? [] : [table]));
  return {
    silentWhile: noNumber(...tables.map((table) => lostIn(sheet, table))),
    steps: tables.map((table) => gained(sheet, table, checkWords.gain.heavier)),
  };
}
