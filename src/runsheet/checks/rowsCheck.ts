import { anyWhere, noNumber, notNumber } from "../expressions/choices";
import { cell, fixed, fn, range, reckon, type Range } from "../expressions/Expression";
import { gap, hasGap, lastCellWhere } from "../formulas/cellsNamed";
import { block } from "../formulas/weighings";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet, Weighed } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.rows;

/** Whether every box above a filled one is filled, with a number. */
export function rowsCheck(sheet: RunSheet): Check {
  const { tables, samples } = sheet;
  return {
    silentWhile: noNumber(...tables.map((table) => block(sheet, table))),
    steps: [...tables.flatMap((table) => ofTable(sheet, table)), ...samples.flatMap((sample) => clockOf(sheet, sample))],
  };
}

function ofTable(sheet: RunSheet, table: Weighed): Step[] {
  const { first, total } = table.rows;
  const every = block(sheet, table);
  const [below, above] = [block(sheet, table, first + 1, total + 1), block(sheet, table, first, total)];
  return [
    step(anyWhere(fn("ISERROR", every)), words.error(lastCellWhere(fn("ISERROR", every), every))),
    step(anyWhere(fn("ISTEXT", every)), words.isText(lastCellWhere(fn("ISTEXT", every), every))),
    step(hasGap(below, above), words.gap(lastCellWhere(gap(below, above), above))),
  ];
}

/** A weight beside a blank time. */
function clockOf({ drying, options }: RunSheet, sample: number): Step[] {
  const { first, total } = drying.rows;
  const clocks: Range = range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK)));
  const untimed = reckon(fn("ISNUMBER", drying.boxes(sample)), "*", notNumber(clocks));
  return [step(anyWhere(untimed), (options.timing === "clock" ? words.clock : words.minute)(lastCellWhere(untimed, clocks)))];
}
