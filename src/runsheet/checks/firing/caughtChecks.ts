import { all, any, anyWhere, isNumber, noNumber, product, sum, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { lastCellWhere } from "../../formulas/cellsNamed";
import { explainedBy } from "../../formulas/explained";
import { block, countOf, isGapless, lastWeighed, latest } from "../../formulas/weighings";
import type { Caught } from "../../sheet/Caught";
import { APPARATUS, MOST_PERCENT } from "../../sheet/caughtRows";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const { caught: words, ledger } = checkWords;

const blockOf = ({ options }: RunSheet, from: (part: number, sample: number) => Range["from"], parts: readonly number[]): Range =>
  range(fixed(from(parts[0] ?? 0, 1)), fixed(from(parts.at(-1) ?? 0, options.replicates)));

const numbered = (of: Range): Expression => fn("ISNUMBER", of);
const notNumbered = (of: Range): Expression => reckon(1, "-", fn("ISNUMBER", of));

/** Whether all that was weighed empty is weighed again, in grams, and nothing but liquids grew heavier. */
export function caughtCheck(sheet: RunSheet): Check | undefined {
  const { caught, charring, working, samples, across } = sheet;
  if (caught === undefined || charring === undefined) return undefined;
  const [before, after] = [blockOf(sheet, caught.before, caught.parts), blockOf(sheet, caught.after, caught.parts)];
  const [emptyOnly, fullOnly] = [reckon(numbered(before), "*", notNumbered(after)), reckon(numbered(after), "*", notNumbered(before))];
  const boxes = range(fixed(caught.box("gas", 1)), fixed(caught.box("known", sheet.options.replicates)));
  // Weighing again is due once it has begun, or once the char is shown finished and the vessel weighed again.
  const isDue = any(is(fn("COUNT", after), ">", 0), ...(sheet.end === undefined ? [] : [is(fn("COUNT", across(sheet.end.vessel)), ">", 0)]));
  return {
    silentWhile: all(is(isDue, "=", false), is(fn("COUNTA", before, boxes), "=", 0)),
    steps: [
      step(anyWhere(fullOnly), words.notBefore(lastCellWhere(fullOnly, after))),
      step(all(isDue, anyWhere(emptyOnly)), words.notAfter(lastCellWhere(emptyOnly, after))),
      ...samples.flatMap((sample) => caught.parts.slice(0, APPARATUS.length).map((part) => lighter(sheet, caught, part, sample))),
      ...samples.map((sample) =>
        step(
          all(isNumber(caught.liquids(sample)), is(fn("N", caught.liquids(sample)), "<=", fn("N", working.explained))),
          words.nothingCaught(sample),
        ),
      ),
    ],
  };
}

function lighter(sheet: RunSheet, caught: Caught, part: number, sample: number): Step {
  const gain = caught.gain(part, sample);
  const isLighter = all(isNumber(gain), is(fn("N", gain), "<", reckon(0, "-", explainedBy(sheet))));
  return step(isLighter, words.lighter(nameOf(caught.after(part, sample))));
}

/** Whether a sample that is fed moist lost by drying before, by more than two readings explain. */
function hasLost(sheet: RunSheet, sample: number): Condition {
  const { drying } = sheet;
  const { from } = drying.counted(sample);
  const lost = reckon(fn("N", from), "-", fn("N", latest(drying, sample, 0)));
  return all(is(countOf(drying, sample), ">", 1), isGapless(drying, sample), is(lost, ">", explainedBy(sheet)));
}

const PERCENT = 100;
// Values of 1 and less are fractions more often than percentages; the box itself refuses them.
const FRACTION = 1;

/** Whether the products add up: percentages are such, water is not less than was fed, and what is unaccounted is within what is wanted. */
export function ledgerCheck(sheet: RunSheet): Check | undefined {
  const { caught, charring, samples, options } = sheet;
  if (caught === undefined || charring === undefined) return undefined;
  // The two rows stand one below the other.
  const percentages = range(fixed(caught.box("water", 1)), fixed(caught.box("fed", options.replicates)));
  const fractions = product(fn("ISNUMBER", percentages), is(percentages, "<", FRACTION));
  const feds = range(fixed(caught.box("fed", 1)), fixed(caught.box("fed", options.replicates)));
  const dryAndMoist = product(fn("ISNUMBER", feds), fn("ISNUMBER", sheet.across(sheet.drying.steady)));
  return {
    silentWhile: noNumber(
      block(sheet, charring),
      ...samples.flatMap((sample) => [caught.liquids(sample), caught.box("water", sample), caught.box("fed", sample)]),
    ),
    steps: [
      step(anyWhere(fractions), ledger.percent(lastCellWhere(fractions, percentages))),
      ...(
        [
          ["fed", ledger.mostlyWater],
          ["known", ledger.hardlyKnown],
        ] as const
      ).map(([name, said]) => {
        const boxes = range(fixed(caught.box(name, 1)), fixed(caught.box(name, options.replicates)));
        const isOver = product(fn("ISNUMBER", boxes), is(boxes, ">", MOST_PERCENT[name]));
        return step(anyWhere(isOver), said(lastCellWhere(isOver, boxes), MOST_PERCENT[name]));
      }),
      step(anyWhere(dryAndMoist), ledger.dryAndMoist(lastCellWhere(dryAndMoist, feds))),
      ...samples.flatMap((sample) => ofSample(sheet, caught, sample)),
    ],
  };
}

function ofSample(sheet: RunSheet, caught: Caught, sample: number): Step[] {
  const { share, plusMinus, settings, drying } = sheet;
  const [water, fed] = [caught.box("water", sample), caught.box("fed", sample)];
  const [formed, vapour, lost] = [share("waterFormed", sample), share("volatile", sample), share("unaccounted", sample)];
  const known = plusMinus("waterFormed", sample);
  const off = fn("N", known);
  const allowed = fn("MAX", fn("N", plusMinus("unaccounted", sample)), fn("N", settings.wanted));
  return [
    step(all(isNumber(fed), hasLost(sheet, sample)), ledger.driedBefore(nameOf(fed), lastWeighed(drying, sample))),
    step(all(isNumber(formed), isNumber(known), is(sum(fn("N", formed), off), "<", 0)), ledger.waterNegative(sample, nameOf(water))),
    step(
      all(isNumber(formed), isNumber(known), isNumber(vapour), is(reckon(fn("N", formed), "-", off), ">", fn("N", vapour))),
      ledger.waterOverVapour(sample, nameOf(water)),
    ),
    step(
      all(isNumber(lost), is(fn("N", lost), ">", allowed), isNumber(settings.wanted)),
      ledger.unaccounted(sample, fn("FIXED", reckon(PERCENT, "*", fn("N", lost)), 1, true)),
    ),
  ];
}
