import { all, anyWhere, noNumber, notNumber, product, sum } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Range } from "../expressions/Expression";
import { gap, hasGap, lastCellWhere } from "../formulas/cellsNamed";
import { block } from "../formulas/weighings";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { isStageShare, sharesOf } from "../sheet/sharesOf";
import type { Fired, Weighed } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { saltWords } from "../words/saltWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.rows;

/** Whether every box above a filled one is filled, with a number. */
export function rowsCheck(sheet: RunSheet): Check {
  const { tables } = sheet;
  return {
    silentWhile: noNumber(...tables.map((table) => block(sheet, table))),
    steps: [
      ...(sheet.stages === undefined ? [] : stageWithoutLine(sheet, sheet.stages)),
      ...tables.flatMap((table) => ofTable(sheet, table)),
      clockMissing(sheet),
    ],
  };
}

/** A stage put in by hand takes a row in three tables; in the results it has none, so what it lost would not be told. */
function stageWithoutLine({ options, share }: RunSheet, stages: Fired): Step[] {
  const names = sharesOf(options).filter(isStageShare);
  const [first, last] = [names[0], names.at(-1)];
  if (first === undefined || last === undefined) return [];
  const { rows, box } = stages;
  const put = reckon(fn("ROWS", range(fixed(box(rows.first, 1)), fixed(box(rows.total, 1)))), "-", 1);
  const isMore = is(put, ">", fn("ROWS", range(share(first, 1), share(last, 1))));
  return [step(isMore, words.stageWithoutLine(reckon(fn("ROW", fixed(box(rows.total, 1))), "-", 1)))];
}

function ofTable(sheet: RunSheet, table: Weighed): Step[] {
  const { first, total } = table.rows;
  const [below, above] = [block(sheet, table, first + 1, total + 1), block(sheet, table, first, total)];
  return [step(hasGap(below, above), words.gap(lastCellWhere(gap(below, above), above)))];
}

/** A weight of any sample beside a blank time. */
function clockMissing({ drying, options, salt, samples }: RunSheet): Step {
  const { first, total } = drying.rows;
  const clocks: Range = range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)));
  const weights = sum(0, ...samples.map((sample) => fn("ISNUMBER", drying.boxes(sample))));
  const untimed = product(is(weights, ">", 0), notNumber(clocks));
  // Of a salt heated as it was weighed in no time is used.
  const isUntimed = salt === undefined ? anyWhere(untimed) : all(is(salt.water, "=", saltWords.choices.driedFirst), anyWhere(untimed));
  return step(isUntimed, (options.timing === "clock" ? words.clock : words.minute)(lastCellWhere(untimed, clocks)));
}
