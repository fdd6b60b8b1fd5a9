import { product, sum, when } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { numberOfLastCell } from "../formulas/cellsNamed";
import { stripCell } from "../formulas/strip";
import { firesBoxes } from "../formulas/wrongBoxes";
import { block } from "../formulas/weighings";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { stripsOf } from "./zerosCheck";

/**
 * The last box that holds TRUE or FALSE, row and column in one, where the spreadsheet counts them as 1 and 0, as LibreOffice does; 0 for none and in
 * every other program. Over a range nothing tells such a truth from a number but what its cell shows, and of a truth that came with a file, to which
 * LibreOffice gives a formula and the format of the box, that it is calculated. A box that works out 1 or 0 is taken for one too.
 */
export const lastTruth = (sheet: RunSheet): Expression =>
  when(fn("ISNUMBER", is(1, "=", 1)), fn("MAX", ...areas(sheet).map((of) => numberOfLastCell(isTruth(of), of))), 0);

/** Every box for a number. */
function areas(sheet: RunSheet): (Cell | Range)[] {
  const { options, drying, tables, fired, end, setup, settings, composition, caught, columns, rows, across } = sheet;
  const { first, total } = drying.rows;
  const inSettings = Object.values(settings).sort((one, other) => one.row - other.row);
  const [top, bottom] = [inSettings[0], inSettings.at(-1)];
  const parts = caught?.parts ?? [];
  const ofParts = (at: (part: number, sample: number) => Cell): Range => range(at(parts[0] ?? 0, 1), at(parts.at(-1) ?? 0, options.replicates));
  return [
    across((sample) => fixed(columns.box(rows.drying.vessel, sample))),
    ...tables.map((table) => block(sheet, table)),
    range(fixed(cell(first, CLOCK)), fixed(cell(total, CLOCK))),
    ...fired.map((table) => firesBoxes(table, "lit", "opened")),
    ...(end === undefined ? [] : [across(end.vessel)]),
    setup.date,
    ...(top === undefined || bottom === undefined ? [] : [range(top, bottom)]),
    ...(composition === undefined ? [] : [range(composition.carbon, composition.sulfur), composition.exactness]),
    ...(caught === undefined
      ? []
      : [ofParts(caught.before), ofParts(caught.after), range(caught.box("gas", 1), caught.box("known", options.replicates))]),
    ...(options.panZeros ? stripsOf(sheet).map(({ from, to }) => range(fixed(stripCell(from, "before")), fixed(stripCell(to, "after")))) : []),
  ];
}

/** Cell by cell, 1 where a truth stands. An error is none, and in no comparison. */
function isTruth(of: Cell | Range): Expression {
  const isOther = (than: 0 | 1): Expression => fn("ISNUMBER", reckon(1, "/", than === 0 ? of : reckon(of, "-", 1)));
  const isShown = (worth: 0 | 1): Expression =>
    worth === 1 ? fn("COUNTIFS", of, 1, of, "<>*1*", of, "<>*0*") : fn("COUNTIFS", of, 0, of, "?*", of, "<>*0*", of, "<>*-*");
  const isWorth = (worth: 0 | 1): Expression => product(reckon(1, "-", isOther(worth)), is(sum(fn("ISFORMULA", of), isShown(worth)), ">", 0));
  return product(fn("ISNUMBER", of), sum(isWorth(1), isWorth(0)));
}
