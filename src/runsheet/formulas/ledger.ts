import { all, isNumber, NOTHING, onceNumbers, product, square, sum, when } from "../expressions/choices";
import { fn, is, reckon, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { Caught } from "../sheet/Caught";
import type { LedgerShare } from "../sheet/sharesOf";
import type { RunSheet } from "../sheet/RunSheet";
import { weighingWords } from "../words/weighingWords";
import { gainVariance } from "./vesselAgain";
import { offByDrying } from "./yetToDry";
import { countOf, isGapless, latest } from "./weighings";

const PERCENT = 100;

/** What was gained by a part, g; nothing until it was weighed twice. */
export const gainOf = (caught: Caught, part: number, sample: number): Expression =>
  onceNumbers([caught.before(part, sample), caught.after(part, sample)], reckon(caught.after(part, sample), "-", caught.before(part, sample)));

export const pairsWeighed = (caught: Caught, sample: number): Call =>
  fn("SUMPRODUCT", reckon(fn("ISNUMBER", caught.befores(sample)), "*", fn("ISNUMBER", caught.afters(sample))));

/** What receivers, trap, tube and lid gained, g; nothing while one of them is weighed only once. */
export function liquidsOf(caught: Caught, sample: number): Expression {
  const [befores, afters, pairs] = [caught.befores(sample), caught.afters(sample), caught.pairs(sample)];
  const isWhole = all(is(pairs, ">", 0), is(fn("COUNT", befores), "=", pairs), is(fn("COUNT", afters), "=", pairs));
  return when(isWhole, reckon(fn("SUM", afters), "-", fn("SUM", befores)), NOTHING);
}

/**
 * The dry part of a sample that is charred moist, g: its latest weighing less the vessel, times 1 - w, with its moisture w as measured
 * on another part of the same material.
 */
export function dryPartFedMoist({ drying, vessel }: RunSheet, caught: Caught, sample: number): Expression {
  const moisture = caught.box("fed", sample);
  const isKnown = all(isNumber(moisture), isNumber(vessel(sample)), is(countOf(drying, sample), ">", 0), isGapless(drying, sample));
  const dryShare = reckon(1, "-", reckon(moisture, "/", PERCENT));
  return when(isKnown, product(reckon(latest(drying, sample, 0), "-", vessel(sample)), dryShare), NOTHING);
}

/** What went into the fire, g: the dry sample, with its water where it was charred moist. */
export const fedOf = ({ drying }: RunSheet, caught: Caught, sample: number): Expression =>
  onceNumbers(
    [drying.net(sample)],
    when(
      isNumber(drying.steady(sample)),
      drying.net(sample),
      reckon(drying.net(sample), "/", reckon(1, "-", reckon(caught.box("fed", sample), "/", PERCENT))),
    ),
  );

/** Char, liquids and the gas that was measured, g. */
export function foundOf({ charring }: RunSheet, caught: Caught, sample: number): Expression {
  const char = charring?.net(sample) ?? caught.liquids(sample);
  return onceNumbers([char, caught.liquids(sample)], sum(char, caught.liquids(sample), fn("N", caught.box("gas", sample))));
}

/** Readings that char, feed and liquids are differences of: the vessel's cancels unless it was weighed again. */
const readings = ({ end }: RunSheet, caught: Caught, sample: number): Expression =>
  sum(end === undefined ? 2 : when(isNumber(end.vessel(sample)), 4, 2), reckon(2, "*", caught.pairs(sample)));

/** ± 95 %, g, of what was fed less what was found: 2 u sqrt(n), n readings of their own (GUM, JCGM 100:2008, 5.1.2). */
export const balanceOff = (sheet: RunSheet, caught: Caught, sample: number): Expression =>
  product(2, fn("N", sheet.working.u), fn("SQRT", readings(sheet, caught, sample)));

/**
 * A share of the product ledger, of the dry feed: liquids L / D; water formed (L w - W) / D with the feed water W = F - D, which is
 * none where the sample was dried; gas measured G / D, or by difference (F - char - L) / D; unaccounted (F - char - L - G) / D; and the
 * closure, what was found over what was fed. The last two need a gas that was measured: by difference the sum is 1 by construction.
 */
export function ledgerShare(sheet: RunSheet, caught: Caught, name: LedgerShare, sample: number): Expression {
  const dry = sheet.drying.net(sample);
  const [fed, found, liquids] = [caught.fed(sample), caught.found(sample), caught.liquids(sample)];
  const [gas, water] = [caught.box("gas", sample), caught.box("water", sample)];
  const notFound = reckon(reckon(fed, "-", found), "/", dry);
  switch (name) {
    case "liquidYield":
      return onceNumbers([dry, liquids], reckon(liquids, "/", dry));
    case "waterFormed":
      return onceNumbers([fed, liquids, water], reckon(sum(waterIn(liquids, water), reckon(dry, "-", fed)), "/", dry));
    case "gasMeasured":
      return onceNumbers([dry, gas], reckon(gas, "/", dry));
    case "gasDifference":
      return when(isNumber(gas), NOTHING, onceNumbers([fed, found], notFound));
    case "unaccounted":
      return onceNumbers([fed, found, gas], notFound);
    case "closure":
      return onceNumbers([fed, found, gas], reckon(found, "/", fed));
  }
}

const waterIn = (liquids: Cell, water: Cell): Expression => reckon(reckon(liquids, "*", water), "/", PERCENT);

/** Standard uncertainty of a typed percentage, as a fraction: half of what it is known to, none where that is blank. */
const known = (caught: Caught, sample: number): Expression => reckon(fn("N", caught.box("known", sample)), "/", 2 * PERCENT);

/** The same of a sample fed moist; a dried one has no feed water to be wrong about. */
export const knownMoisture = ({ drying }: RunSheet, caught: Caught, sample: number): Expression =>
  when(isNumber(drying.steady(sample)), 0, known(caught, sample));

/**
 * ± 95 % of a share of the ledger: 2 u(y). Each share is built of readings with the same u, n of them in the liquids' pairs, and of
 * typed percentages. With F fed and D dry, and x the share times D / F: of what is fed less what is found the vessel cancels as far
 * as it is common, u(y) = u / D sqrt(q^2 + 1 + (1 - q)^2 + 2 n) with q = found / F, as LOSSFRACTION.U; of liquids, water and gas
 * u / D sqrt(2 n c^2 + 2 x^2), where c is the water content for water and 0 for gas. The moisture w of a sample fed moist adds
 * (y u(w) / (1 - w))^2, for water formed ((1 - y) u(w) / (1 - w))^2, and the water content of the liquids (L u / D)^2
 * (GUM, JCGM 100:2008, 5.1.2); what the vessel gained adds its own to all that the char stands in (gainVariance). A gas is taken as typed.
 */
export function ledgerPlusMinus(sheet: RunSheet, caught: Caught, name: LedgerShare, sample: number): Expression {
  const dry = sheet.drying.net(sample);
  const [fed, liquids, water, pairs] = [caught.fed(sample), caught.liquids(sample), caught.box("water", sample), caught.pairs(sample)];
  const share = sheet.share(name, sample);
  const ofFed = reckon(reckon(share, "*", dry), "/", fed);
  const contents = reckon(water, "/", PERCENT);
  const moist = reckon(reckon(knownMoisture(sheet, caught, sample), "*", fed), "/", dry);
  const ofReadings = (readingsSquared: Expression, per: Cell): Expression =>
    reckon(product(square(sheet.working.u), readingsSquared), "/", square(per));
  const pair = reckon(2, "*", pairs);
  const net = netReadings(sheet, sample);
  const difference = sum(notFoundReadings(sheet, caught, sample), pair);
  const ofGain = (per: Cell): Expression[] => (sheet.end === undefined ? [] : [reckon(gainVariance(sheet, sample, "all"), "/", square(per))]);
  const variance = {
    liquidYield: () => sum(ofReadings(sum(pair, reckon(net, "*", square(ofFed))), dry), square(product(share, moist))),
    waterFormed: () => {
      const ofReading = sum(product(pair, square(contents)), product(net, square(reckon(waterIn(liquids, water), "/", fed))));
      const ofContents = square(reckon(product(liquids, known(caught, sample)), "/", dry));
      return sum(ofReadings(ofReading, dry), ofContents, square(product(reckon(1, "-", share), moist)));
    },
    gasMeasured: () => sum(ofReadings(reckon(net, "*", square(ofFed)), dry), square(product(share, moist))),
    gasDifference: () => sum(ofReadings(difference, dry), ...ofGain(dry), square(product(share, moist))),
    unaccounted: () => sum(ofReadings(difference, dry), ...ofGain(dry), square(product(share, moist))),
    closure: () => sum(ofReadings(difference, fed), ...ofGain(fed)),
  }[name]();
  return onceNumbers([share, sheet.working.u], sum(reckon(2, "*", fn("SQRT", variance)), offByDrying(sheet, name, sample)));
}

/** Readings in a net mass: that of the vessel too, unless the balance was tared. */
const netReadings = (sheet: RunSheet, sample: number): Expression => when(isTared(sheet, sample), 1, 2);

export const isTared = ({ columns, rows }: RunSheet, sample: number) => is(columns.box(rows.drying.vessel, sample), "=", weighingWords.tared);

/** q^2 + 1 + (1 - q)^2, without the last on a tared balance, twice the first two where the vessel was weighed again. */
function notFoundReadings(sheet: RunSheet, caught: Caught, sample: number): Expression {
  const q = reckon(caught.found(sample), "/", caught.fed(sample));
  const own = sum(1, square(q));
  const once = when(isTared(sheet, sample), own, sum(own, square(reckon(1, "-", q))));
  return sheet.end === undefined ? once : when(isNumber(sheet.end.vessel(sample)), reckon(2, "*", own), once);
}
