import { all, any, firstOf, NOTHING, when } from "../expressions/choices";
import { cell, fixed, fn, is, range, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { AGREEMENT, criticalRange, everyAgreement, sharesAcross, spreadOf, weighingOf } from "../formulas/agreement";
import { headline } from "../formulas/headline";
import { LABEL } from "../sheet/Columns";
import type { RunSheet } from "../sheet/RunSheet";
import { sharesOf } from "../sheet/sharesOf";
import { checkWords } from "../words/checkWords";
import { step, type Check } from "./Check";

const words = checkWords.agree;

// Of fewer samples none can be told to stand apart.
const FEWEST_FOR_ONE_APART = 3;

/**
 * Whether repeats agree: in the answer's share their common ± within the wanted one, and their range within the critical range of the
 * method's own scatter; in every other row that has a value together the first of the two.
 */
export function agreeCheck(sheet: RunSheet): Check | undefined {
  const { setup, working } = sheet;
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
  const haveTwo = all(is(setup.samplesAre, "=", "repeats"), is(fn("COUNT", shares), ">", 1));
  const isAnywhere = (found: number) => is(fn("COUNTIF", every, found), ">", 0);
  // The ash is told before the char without it, which follows from it.
  const names = sharesOf(sheet.options);
  const ash = names.includes("ash") ? names.indexOf("ash") + 1 : undefined;
  const isOther = any(isAnywhere(AGREEMENT.wide), isAnywhere(AGREEMENT.apart));
  return {
    silentWhile: is(any(isUnsaid, haveTwo, isOther), "=", false),
    steps: [
      step(isUnsaid, words.sayWhich(nameOf(setup.samplesAre))),
      step(is(agreement, "=", AGREEMENT.apart), words.farApart(percent, times, apart(shares))),
      step(is(agreement, "=", AGREEMENT.wide), words.differ(together, percent, times, apart(shares))),
      step(is(agreement, "=", AGREEMENT.beyondMethod), words.beyondMethod(percent, percentOf(criticalRange(sheet)), apart(shares))),
      ...([AGREEMENT.apart, AGREEMENT.wide] as const).map((found) => {
        const first = fn("MATCH", found, every, 0);
        const place = ash === undefined ? first : when(is(working.agreement("ash"), "=", found), ash, first);
        const down = (column: number): Expression =>
          fn("INDEX", range(fixed(cell(every.from.row, column)), fixed(cell(every.to.row, column))), place);
        const [label, off] = [down(LABEL), percentOf(down(working.together(name).column))];
        return step(isAnywhere(found), found === AGREEMENT.apart ? words.rowApart(label, off) : words.rowWide(label, off));
      }),
    ],
  };
}

const percentOf = (share: Expression): Expression => fn("FIXED", reckon(100, "*", share), 1, true);

// An end twice as far from the median as the other end stands apart; own bound, a hint and no verdict.
const TIMES_AS_FAR = 2;

/** The sample that stands apart from the others, where one does. */
function apart(shares: Expression): Expression {
  const median = fn("MEDIAN", shares);
  const [above, below] = [reckon(fn("MAX", shares), "-", median), reckon(median, "-", fn("MIN", shares))];
  const sampleWith = (share: Expression): Expression => words.apart(fn("MATCH", share, shares, 0));
  return firstOf(
    [
      [is(fn("COUNT", shares), "<", FEWEST_FOR_ONE_APART), NOTHING],
      [is(above, ">", reckon(TIMES_AS_FAR, "*", below)), sampleWith(fn("MAX", shares))],
      [is(below, ">", reckon(TIMES_AS_FAR, "*", above)), sampleWith(fn("MIN", shares))],
    ],
    NOTHING,
  );
}
