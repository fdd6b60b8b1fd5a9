import { all, any, anyWhere, firstOf, notNumber, NOTHING, placeWhere, product, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { dixonCritical } from "../../confidence/dixonAssessment";
import { AGREEMENT, areRepeats, criticalRange, everyAgreement, sharesAcross, spreadOf, weighingOf, WORTH_SAYING } from "../formulas/agreement";
import { headline } from "../formulas/headline";
import { isAnyVesselDoubtful } from "../formulas/vesselAgain";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import type { ShareName } from "../sheet/layout";
import { optionBounds } from "../options/optionBounds";
import { sharesOf } from "../sheet/sharesOf";
import type { Fired } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";
import { copied } from "./copiedColumns";

const words = checkWords.agree;

// Of fewer samples none can be told to stand apart.
const FEWEST_FOR_ONE_APART = 3;

/**
 * Whether repeats agree: in the answer's share their common ± within the wanted one, and their range within the critical range of the
 * method's own scatter; in every other row that has a value together the first of the two. First of all, that no column repeats another.
 */
export function agreeCheck(sheet: RunSheet): Check | undefined {
  const { setup, settings, working } = sheet;
  if (sheet.options.replicates === 1) return undefined;
  const name = headline(sheet);
  const shares = sharesAcross(sheet, name);
  const spread = spreadOf(sheet, name);
  const percent = percentOf(spread);
  const times = fn("FIXED", reckon(spread, "/", weighingOf(sheet, name)), 1, true);
  const together = percentOf(fn("N", working.together(name)));
  const agreement = working.agreement(name);
  const every = everyAgreement(sheet);
  const isUnsaid = is(agreement, "=", AGREEMENT.unsaid);
  const haveTwo = all(areRepeats(sheet), is(fn("COUNT", shares), ">", 1));
  const isAnywhere = (found: number) => is(fn("COUNTIF", every, found), ">", 0);
  // The ash is told before the char without it, which follows from it.
  const names = sharesOf(sheet.options);
  const ash = names.includes("ash") ? names.indexOf("ash") + 1 : undefined;
  const { apart, wide, unexplained } = AGREEMENT;
  const isOther = any(...[apart, wide, unexplained].map(isAnywhere));
  const vesselDoubtful = isAnyVesselDoubtful(sheet);
  const fired = sheet.charring ?? sheet.heating;
  const isHinted = all(
    areRepeats(sheet),
    is(agreement, "=", AGREEMENT.agree),
    is(spread, ">", reckon(WORTH_SAYING, "*", weighingOf(sheet, name))),
    isOneApart(sheet, name),
    ...(fired === undefined ? [] : [is(isMixed(sheet, fired), "=", false)]),
  );
  const [box, wantedBox] = [nameOf(setup.samplesAre), nameOf(settings.wanted)];
  return {
    first: copied(sheet),
    silentWhile: is(any(isUnsaid, haveTwo, isOther), "=", false),
    steps: [
      step(all(isUnsaid, is(fn("LEN", setup.samplesAre), ">", 0)), words.notInList(box)),
      step(isUnsaid, words.sayWhich(box)),
      ...(vesselDoubtful === undefined
        ? []
        : [step(all(vesselDoubtful, any(isOther, isAnywhere(AGREEMENT.beyondMethod))), checkWords.vesselAgain.waits)]),
      ...(fired === undefined
        ? []
        : [
            step(
              all(isMixed(sheet, fired), any(...[unexplained, apart, wide, AGREEMENT.beyondMethod].map((found) => is(agreement, "=", found)))),
              waitsFor(sheet, fired),
            ),
          ]),
      step(
        any(...[unexplained, apart, wide].map((found) => is(agreement, "=", found))),
        words.ranged(
          when(is(agreement, "=", wide), words.together(together), words.range),
          percent,
          times,
          standingApart(sheet, name),
          firstOf(
            [
              [is(agreement, "=", unexplained), words.unexplained(wantedBox)],
              [is(agreement, "=", wide), words.differ],
            ],
            words.farApart,
          ),
        ),
      ),
      step(is(agreement, "=", AGREEMENT.beyondMethod), words.beyondMethod(percent, percentOf(criticalRange(sheet)), standingApart(sheet, name))),
      ...([apart, wide, unexplained] as const).map((found) => {
        const first = fn("MATCH", found, every, 0);
        const place = ash === undefined ? first : when(is(working.agreement("ash"), "=", found), ash, first);
        const down = (column: number): Expression =>
          fn("INDEX", range(fixed(cell(every.from.row, column)), fixed(cell(every.to.row, column))), place);
        const [label, off] = [down(LABEL), percentOf(down(working.together(name).column))];
        const said = {
          [apart]: words.rowApart(label, off),
          [wide]: words.rowWide(label, off),
          [unexplained]: words.rowUnexplained(label, wantedBox),
        };
        return step(isAnywhere(found), said[found]);
      }),
      step(isHinted, words.oneApart(sampleApart(sheet, name))),
    ],
  };
}

const percentOf = (share: Expression): Expression => fn("FIXED", reckon(100, "*", share), 1, true);

// Both ends are looked at, so each takes half of what lies outside 95 %: one in 40.
const OUTSIDE_OF_ONE_END = 1 / 40;
// In cell formulas a whole number over a power of ten, as critical values are printed.
const PER = 1000;

/**
 * The critical value of Dixon's r10 for so many samples, two-sided 95 %, in thousandths, as DIXON integrates it: 970, 830, 710 and
 * 628 for three to six, where Rorabacher prints 0.970, 0.829, 0.710 and 0.625 (Anal. Chem. 63 (1991) 139, doi:10.1021/ac00002a010).
 */
const criticalRatio = (count: Expression): Expression => {
  const of = (n: number): number => Math.round(dixonCritical(n, OUTSIDE_OF_ONE_END) * PER);
  const fewer = Array.from({ length: optionBounds.replicates.atMost - FEWEST_FOR_ONE_APART }, (_, index) => FEWEST_FOR_ONE_APART + index);
  return firstOf(
    fewer.map((n) => [is(count, "=", n), of(n)] as const),
    of(optionBounds.replicates.atMost),
  );
};

/** The ends of the samples' shares, and how far each lies from its neighbour. */
function endsOf(sheet: RunSheet, name: ShareName) {
  const shares = sharesAcross(sheet, name);
  const [most, least] = [fn("MAX", shares), fn("MIN", shares)];
  return { shares, most, least, above: reckon(most, "-", fn("LARGE", shares, 2)), below: reckon(fn("SMALL", shares, 2), "-", least) };
}

/**
 * Whether a sample stands apart from the others by Dixon's r10, the gap to its neighbour over the range (Ann. Math. Stat. 22 (1951) 68); none
 * where the range is no more than weighing explains.
 */
function isOneApart(sheet: RunSheet, name: ShareName): Condition {
  const { shares, above, below } = endsOf(sheet, name);
  const spread = spreadOf(sheet, name);
  const isApart = all(
    is(spread, ">", weighingOf(sheet, name)),
    is(reckon(fn("MAX", above, below), "*", PER), ">", reckon(criticalRatio(fn("COUNT", shares)), "*", spread)),
  );
  // Of fewer there is no second, and the gaps would be errors.
  return when(is(fn("COUNT", shares), ">=", FEWEST_FOR_ONE_APART), isApart, false);
}

function sampleApart(sheet: RunSheet, name: ShareName): Expression {
  const { shares, most, least, above, below } = endsOf(sheet, name);
  return fn("MATCH", when(is(above, ">", below), most, least), shares, 0);
}

const standingApart = (sheet: RunSheet, name: ShareName): Expression => when(isOneApart(sheet, name), words.apart(sampleApart(sheet, name)), NOTHING);

/** Which samples have a share and are not shown finished, cell by cell. */
const unfinishedOf = (sheet: RunSheet, { steady }: Fired): Expression =>
  product(fn("ISNUMBER", sharesAcross(sheet, headline(sheet))), notNumber(sheet.across(steady)));

/** Whether some samples are shown finished and others not, which lose yet. */
const isMixed = (sheet: RunSheet, table: Fired): Condition =>
  all(is(fn("COUNT", sheet.across(table.steady)), ">", 0), anyWhere(unfinishedOf(sheet, table)));

const waitsFor = (sheet: RunSheet, table: Fired): Expression =>
  words.unfinished(placeWhere(unfinishedOf(sheet, table)), fn("COUNT", sheet.across(table.steady)));
