import { product, sum, when } from "../expressions/choices";
import { fixed, fn, is, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { CLOCK } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired, FireColumn } from "../sheet/Weighed";
import { numberOfLastCell } from "./cellsNamed";
import { FIRST_DATE } from "./clock";

type Boxes = readonly (Cell | Range)[];

/** Which numbers boxes may hold: any, 0 and more, or above 0. What is text, an error, TRUE or FALSE is none. */
export type Least = "any" | "0" | "above 0";

/** Cell by cell, 1 where something stands that is no number. */
const isNoNumber = (of: Cell | Range): Expression => reckon(reckon(1, "-", fn("ISNUMBER", of)), "-", fn("ISBLANK", of));

/** Whether something stands that is no number: COUNT passes over errors and texts where arithmetic would be an error itself. */
const holdNone = (boxes: Boxes) => is(fn("COUNTA", ...boxes), ">", fn("COUNT", ...boxes));

const lastOf = (boxes: Boxes, holds: (of: Cell | Range) => Expression): Expression =>
  fn("MAX", ...boxes.map((of) => numberOfLastCell(holds(of), of)));

/** Whether one of some boxes holds no such number. How small they are is asked only where all are numbers. */
export function areWrong(boxes: Boxes, least: Least) {
  const isNone = holdNone(boxes);
  if (least === "any") return isNone;
  // With 1 among them, boxes that are all blank are none too small.
  return when(isNone, true, least === "0" ? is(fn("MIN", ...boxes), "<", 0) : is(fn("MIN", 1, ...boxes), "<=", 0));
}

/** The last such box as a number, row and column in one; 0 where there is none. */
export function numberOfWrong(boxes: Boxes, least: Least): Expression {
  const none = lastOf(boxes, isNoNumber);
  if (least === "any") return none;
  const small = lastOf(boxes, (of) => product(fn("ISNUMBER", of), is(of, least === "0" ? "<" : "<=", 0)));
  return when(holdNone(boxes), none, small);
}

/** The boxes of some columns of a fire table, side by side. */
export const firesBoxes = ({ rows: { fire }, fire: inRow }: Fired, from: FireColumn, to: FireColumn): Range =>
  range(fixed(inRow(fire.first)[from]), fixed(inRow(fire.last)[to]));

/** The last box for minutes held that holds none, as such a number. */
export const wrongHeld = ({ fired }: RunSheet): Expression =>
  numberOfWrong(
    fired.map((table) => firesBoxes(table, "held", "held")),
    "0",
  );

/** The last clock box, of rounds and of firings, that holds neither a time of day nor a day with one, as such a number. */
export function wrongClock({ drying: { rows, box }, fired, options }: RunSheet): Expression {
  const clockOf = (row: number): Cell => fixed({ ...box(row, 1), column: CLOCK });
  const rounds = options.timing === "minutes" ? [] : [range(clockOf(rows.first), clockOf(rows.total))];
  const boxes = [...rounds, ...fired.flatMap((table) => [firesBoxes(table, "lit", "lit"), firesBoxes(table, "quiet", "opened")])];
  if (boxes.length === 0) return 0;
  const isNoTime = (of: Cell | Range): Expression =>
    product(fn("ISNUMBER", of), sum(is(of, "<", 0), product(is(of, ">=", 1), is(of, "<", FIRST_DATE))));
  return when(holdNone(boxes), lastOf(boxes, isNoNumber), lastOf(boxes, isNoTime));
}
