import { all, any, lacksNumber, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import { headline } from "../formulas/headline";
import { moistCell } from "../formulas/results";
import { decimalsOf } from "../sheet/massFormats";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.fine;

// About 95 %.
const COVERAGE = 2;

/**
 * Whether the balance is fine enough for the wanted ±: of a sample just weighed in, by its plan, or by SAMPLE.MINIMUM at the least
 * favourable loss, 2 u sqrt(2) / U; once its share is known, by the ± of the weighing.
 */
export function fineCheck(sheet: RunSheet): Check {
  const { working, settings, vessel, samples, across, plusMinus } = sheet;
  const known = across((sample) => plusMinus(headline(sheet), sample));
  const least = reckon(reckon(reckon(COVERAGE, "*", fn("SQRT", 2)), "*", fn("N", working.u)), "/", settings.wanted);
  // Up to two figures, so that the printed mass is enough.
  const roundedUp = fn("ROUNDUP", least, reckon(1, "-", fn("INT", fn("LOG10", least))));
  const moistOf = (sample: number) => reckon(fn("N", moistCell(sheet, sample)), "-", fn("N", vessel(sample)));
  return {
    silentWhile: any(
      lacksNumber(working.u, settings.wanted),
      ...(samples.length === 1 ? [lacksNumber(vessel(1), moistCell(sheet, 1))] : [noneWeighedIn(sheet)]),
    ),
    steps: [
      step(
        all(is(fn("COUNT", known), ">", 0), is(fn("MAX", known), ">", settings.wanted)),
        words.plusMinus(fn("FIXED", reckon(100, "*", fn("MAX", known)), 2, true)),
      ),
      ...(sheet.options.plan === undefined ? [] : samples).map((sample): Step =>
        belowPlan(sheet, sample, moistOf(sample), is(fn("COUNT", known), "=", 0)),
      ),
      ...samples.map((sample): Step =>
        step(
          all(
            is(fn("COUNT", known), "=", 0),
            is(fn("COUNT", vessel(sample), moistCell(sheet, sample)), "=", 2),
            is(moistOf(sample), ">", 0),
            is(moistOf(sample), "<", least),
          ),
          words.tooLittle(sample, roundedUp),
        ),
      ),
    ],
  };
}

/** Less weighed in than planned, by more than a display step; the ± that was planned grows as the sample shrinks. */
function belowPlan({ settings, vessel, options }: RunSheet, sample: number, moist: Expression, isUnknown: Condition): Step {
  const { planned, wanted, readability } = settings;
  const decimals = decimalsOf(options.readability);
  return step(
    all(
      isUnknown,
      is(fn("COUNT", planned, readability, vessel(sample)), "=", 3),
      is(moist, ">", 0),
      is(reckon(moist, "+", fn("N", readability)), "<", fn("N", planned)),
    ),
    words.belowPlan(
      sample,
      fn("FIXED", moist, decimals, true),
      fn("FIXED", fn("N", planned), decimals, true),
      fn("FIXED", reckon(reckon(reckon(100, "*", wanted), "*", planned), "/", moist), 2, true),
    ),
  );
}

const noneWeighedIn = (sheet: RunSheet) => is(fn("COUNT", ...sheet.samples.map((sample) => moistCell(sheet, sample))), "=", 0);
