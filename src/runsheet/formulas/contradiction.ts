import { all, firstOf, isNumber, NOTHING, sum, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Cell, type Expression } from "../expressions/Expression";
import { nameBelow, nameOf } from "../expressions/formulaText";
import { APPARATUS } from "../sheet/caughtRows";
import type { Caught, RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { balanceOff } from "./ledger";
import { moistCell } from "./results";
import { grams } from "./rowSays";
import { countOf } from "./weighings";

const words = checkWords.order;

/** What contradicts in a sample's weights, as far as they are made, by more than two readings explain; nothing where all can be. */
export function contradictionOf(sheet: RunSheet, sample: number): Expression {
  const { drying, charring, ashing, caught, stages, heating, vessel, working, rows, columns } = sheet;
  const explained = fn("N", working.explained);
  const [box, moist, dry] = [columns.box(rows.drying.vessel, sample), moistCell(sheet, sample), drying.net(sample)];
  const last = (table: { readonly rows: { readonly first: number }; box(row: number, sample: number): Cell }, of: Expression) =>
    nameBelow(table.box(table.rows.first, sample), reckon(of, "-", 1));
  const dryName = last(drying, countOf(drying, sample));
  const isAbove = (one: Expression, other: Expression) =>
    all(isNumber(one), isNumber(other), is(fn("N", one), ">", reckon(fn("N", other), "+", explained)));
  const isBelowVessel = (net: Cell) => all(isNumber(net), is(fn("N", net), "<", reckon(0, "-", explained)));
  const char = charring && { net: charring.net(sample), name: last(charring, countOf(charring, sample)) };
  const ash = ashing && { net: ashing.net(sample), name: last(ashing, countOf(ashing, sample)) };
  return firstOf(
    [
      [is(fn("COUNT", vessel(sample), moist), "<", 2), NOTHING],
      [is(fn("MIN", drying.counted(sample)), "<=", vessel(sample)), words.belowVessel(lowestName(sheet, sample), nameOf(box))],
      [
        all(isNumber(dry), is(fn("N", dry), ">", sum(moist, reckon(0, "-", vessel(sample)), explained))),
        words.dryAboveMoist(dryName, nameOf(drying.box(drying.rows.first, sample))),
      ],
      ...(char === undefined
        ? []
        : ([
            [isAbove(char.net, dry), words.charAboveDry(char.name, dryName)],
            [isBelowVessel(char.net), words.charBelowVessel(char.name, nameOf(box))],
          ] as const)),
      ...(char === undefined || ash === undefined
        ? []
        : ([
            [isAbove(ash.net, char.net), words.ashAboveChar(ash.name, char.name)],
            [isBelowVessel(ash.net), words.ashBelowVessel(ash.name, nameOf(box))],
          ] as const)),
      ...[stages, heating].flatMap((table) =>
        table === undefined
          ? []
          : ([[isBelowVessel(table.net(sample)), words.leftBelowVessel(last(table, countOf(table, sample)), nameOf(box))]] as const),
      ),
      ...(caught === undefined
        ? []
        : [
            ...caught.parts.slice(APPARATUS.length).map((part) => lostByReceiver(sheet, caught, part, sample)),
            productsAboveFed(sheet, caught, sample),
          ]),
    ],
    NOTHING,
  );
}

/** A receiver that is lighter than it was empty; what a trap or a tube lost is doubtful, and told by its check. */
function lostByReceiver({ working }: RunSheet, caught: Caught, part: number, sample: number): readonly [Condition, Expression] {
  const [before, after] = [caught.before(part, sample), caught.after(part, sample)];
  const isLighter = is(fn("N", after), "<", reckon(fn("N", before), "-", fn("N", working.explained)));
  return [all(is(fn("COUNT", before, after), "=", 2), isLighter), words.receiverLighter(nameOf(after), nameOf(before))];
}

/** More found than was fed, by more than the weighings explain at 95 %. */
function productsAboveFed(sheet: RunSheet, caught: Caught, sample: number): readonly [Condition, Expression] {
  const [fed, found] = [caught.fed(sample), caught.found(sample)];
  const isAbove = is(reckon(fn("N", found), "-", fn("N", fed)), ">", balanceOff(sheet, caught, sample));
  return [all(is(fn("COUNT", fed, found), "=", 2), isAbove), words.productsAboveFed(grams(sheet, found), grams(sheet, fed))];
}

function lowestName({ drying }: RunSheet, sample: number): Expression {
  const counted = drying.counted(sample);
  const down = fn("MATCH", fn("MIN", counted), counted, 0);
  return nameBelow(drying.box(drying.rows.first, sample), reckon(down, "-", 1));
}
