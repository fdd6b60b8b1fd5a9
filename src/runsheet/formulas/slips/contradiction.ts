import { all, any, firstOf, isNumber, NOTHING, sum, unlessError, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow, nameOf } from "../../expressions/formulaText";
import type { Caught } from "../../sheet/Caught";
import { APPARATUS } from "../../sheet/caughtRows";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { explainedBy } from "../explained";
import { balanceOff } from "../ledger";
import { moistCell } from "../results";
import { grams } from "../sentences/rowSays";
import { unitSlips } from "./unitSlip";
import { isOtherVessel, isVesselDoubtful } from "../vesselAgain";
import { countOf, isGapless, lastWeighed, latest } from "../weighings";

const words = checkWords.order;

type Told = readonly [Condition, Expression];

// Beyond what takes up most on heating, boron, whose oxide weighs 3.22 times as much (10.81 and 15.999 g/mol), nothing gains so much.
const MOST_TIMES_HEATED = 4;
// A latest weight is above the moist one by a slip, not by damp, from this share of the moist sample on, 1 in 100; own bound, no source.
const MOIST_PER_EXCESS = 100;

/** What contradicts in a sample's weights, as far as they are made, by more than two readings explain; nothing where all can be. */
export function contradictionOf(sheet: RunSheet, sample: number): Expression {
  const { drying, end, vessel, columns, rows, caught } = sheet;
  const [box, moist] = [columns.box(rows.drying.vessel, sample), moistCell(sheet, sample)];
  const fired = ofFired(sheet, sample);
  // The vessel at the end is taken off each of them, so where it can be doubted it is named first.
  const byVessel = end && isVesselDoubtful(sheet, end, sample);
  const again = end && nameOf(end.vessel(sample));
  const slips = unitSlips(sheet, sample);
  const isAny = fired.length === 0 ? undefined : any(...fired.map(([condition]) => condition));
  return firstOf(
    [
      [is(fn("COUNT", vessel(sample), moist), "<", 2), NOTHING],
      ...slips,
      ...(caught === undefined ? [] : percentsAboveAll(caught, sample)),
      [is(fn("MIN", drying.counted(sample)), "<=", vessel(sample)), words.belowVessel(lowestName(sheet, sample), nameOf(box))],
      ...ofDrying(sheet, sample),
      ...(caught === undefined ? [] : caught.parts.slice(APPARATUS.length).map((part) => lostByReceiver(sheet, caught, part, sample))),
      ...(end === undefined || again === undefined ? [] : [[isOtherVessel(sheet, end, sample), words.vesselFar(again, nameOf(box))] as const]),
      ...(byVessel === undefined || again === undefined || isAny === undefined
        ? []
        : [[all(byVessel, isAny), words.vesselExplains(again, nameOf(box))] as const]),
      ...fired,
    ],
    NOTHING,
  );
}

/** More water than liquids, or a feed that is nothing but water: the percentage is the slip, whatever else follows from it. */
function percentsAboveAll(caught: Caught, sample: number): Told[] {
  const [water, fed] = [caught.box("water", sample), caught.box("fed", sample)];
  return [
    [unlessError(is(fn("SUM", water), ">", 100)), words.waterAboveAll(nameOf(water))],
    [unlessError(is(fn("SUM", fed), ">=", 100)), words.fedAllWater(nameOf(fed))],
  ];
}

function ofDrying(sheet: RunSheet, sample: number): Told[] {
  const { drying, vessel } = sheet;
  const [moist, dry, explained] = [moistCell(sheet, sample), drying.net(sample), explainedBy(sheet)];
  const said = words.dryAboveMoist(lastWeighed(drying, sample), nameOf(drying.box(drying.rows.first, sample)));
  const weighedIn = reckon(moist, "-", vessel(sample));
  const excess = reckon(fn("N", latest(drying, sample, 0)), "-", moist);
  return [
    [all(isNumber(dry), is(fn("N", dry), ">", sum(weighedIn, explained))), said],
    [all(is(countOf(drying, sample), ">", 1), isGapless(drying, sample), is(reckon(excess, "*", MOIST_PER_EXCESS), ">", weighedIn)), said],
  ];
}

function ofFired(sheet: RunSheet, sample: number): Told[] {
  const { drying, charring, ashing, caught, stages, heating, vessel, rows, columns } = sheet;
  const explained = explainedBy(sheet);
  const [box, dry] = [columns.box(rows.drying.vessel, sample), drying.net(sample)];
  const dryName = lastWeighed(drying, sample);
  const isAbove = (one: Expression, other: Expression) =>
    all(isNumber(one), isNumber(other), is(fn("N", one), ">", reckon(fn("N", other), "+", explained)));
  // Shown dry or not: what was weighed last before the fire.
  const lastDry = latest(drying, sample, 0);
  const isKnown = all(is(countOf(drying, sample), ">", 0), isGapless(drying, sample));
  const before = when(isKnown, when(isNumber(lastDry), reckon(lastDry, "-", vessel(sample)), NOTHING), NOTHING);
  const isLowBelow = (table: Fired): Condition =>
    all(
      is(countOf(table, sample), ">", 0),
      isNumber(table.vessel(sample)),
      is(fn("MIN", counts(table, sample)), "<", reckon(fn("N", table.vessel(sample)), "-", explained)),
    );
  const lowest = (table: Fired): Expression =>
    nameBelow(table.box(table.rows.first, sample), reckon(fn("MATCH", fn("MIN", counts(table, sample)), counts(table, sample), 0), "-", 1));
  const vesselName = nameOf(box);
  return [
    ...(charring === undefined
      ? []
      : ([
          [isAbove(charring.net(sample), before), words.charAboveDry(lastWeighed(charring, sample), dryName)],
          [isLowBelow(charring), words.charBelowVessel(lowest(charring), vesselName)],
        ] as const)),
    ...(charring === undefined || ashing === undefined
      ? []
      : ([
          [isAbove(ashing.net(sample), charring.net(sample)), words.ashAboveChar(lastWeighed(ashing, sample), lastWeighed(charring, sample))],
          [isLowBelow(ashing), words.ashBelowVessel(lowest(ashing), vesselName)],
        ] as const)),
    ...[stages, heating].flatMap((table): Told[] => {
      if (table === undefined) return [];
      const left = table.net(sample);
      const isFar = all(is(fn("COUNT", left, dry), "=", 2), is(fn("N", left), ">", reckon(MOST_TIMES_HEATED, "*", fn("N", dry))));
      const isBelow = table === heating ? isLowBelow(table) : all(isNumber(left), is(fn("N", left), "<", reckon(0, "-", explained)));
      return [
        [isBelow, words.leftBelowVessel(table === heating ? lowest(table) : lastWeighed(table, sample), vesselName)],
        [isFar, words.leftFarAbove(lastWeighed(table, sample), MOST_TIMES_HEATED, dryName)],
      ];
    }),
    ...(caught === undefined ? [] : [productsAboveFed(sheet, caught, sample)]),
  ];
}

/** What counts of the weighings of a fired table, without the one before the first. */
const counts = (table: Fired, sample: number): Range => {
  const { from, to } = table.counted(sample);
  return range(fixed({ ...from, row: table.rows.first }), to);
};

/** A receiver that is lighter than it was empty; what a trap or a tube lost is doubtful, and told by its check. */
function lostByReceiver(sheet: RunSheet, caught: Caught, part: number, sample: number): readonly [Condition, Expression] {
  const [before, after] = [caught.before(part, sample), caught.after(part, sample)];
  const isLighter = is(fn("N", after), "<", reckon(fn("N", before), "-", explainedBy(sheet)));
  return [all(is(fn("COUNT", before, after), "=", 2), isLighter), words.receiverLighter(nameOf(after), nameOf(before))];
}

/** More found than was fed, by more than the weighings explain at 95 %. */
function productsAboveFed(sheet: RunSheet, caught: Caught, sample: number): readonly [Condition, Expression] {
  const [fed, found] = [caught.fed(sample), caught.found(sample)];
  const isAbove = is(reckon(fn("N", found), "-", fn("N", fed)), ">", balanceOff(sheet, caught, sample));
  return [all(is(fn("COUNT", fed, found, sheet.working.u), "=", 3), isAbove), words.productsAboveFed(grams(sheet, found), grams(sheet, fed))];
}

function lowestName({ drying }: RunSheet, sample: number): Expression {
  const counted = drying.counted(sample);
  const down = fn("MATCH", fn("MIN", counted), counted, 0);
  return nameBelow(drying.box(drying.rows.first, sample), reckon(down, "-", 1));
}
