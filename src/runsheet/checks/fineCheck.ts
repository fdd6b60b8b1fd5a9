import { all, any, lacksNumber } from "../expressions/choices";
import { fn, is, reckon } from "../expressions/Expression";
import { headline } from "../formulas/answer";
import { moistCell } from "../formulas/results";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.fine;

// About 95 %.
const COVERAGE = 2;

/**
 * Whether the balance is fine enough for the wanted ±: of a sample just weighed in, by SAMPLE.MINIMUM at the least favourable loss,
 * 2 u sqrt(2) / U; once its share is known, by the ± of the weighing.
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

const noneWeighedIn = (sheet: RunSheet) => is(fn("COUNT", ...sheet.samples.map((sample) => moistCell(sheet, sample))), "=", 0);
