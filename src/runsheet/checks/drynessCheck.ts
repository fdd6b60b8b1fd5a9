import { all, any, noNumber, sum } from "../expressions/choices";
import { fn, is, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { isAbsent } from "../formulas/absence";
import { block, isNotDry, lastWeighed } from "../formulas/weighings";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { weighingWords } from "../words/weighingWords";
import { step, type Check } from "./Check";

const words = checkWords.dryness;
const { verdicts, unjudged } = weighingWords;

/** Whether every sample can be judged, and was shown dry before it was charred. */
export function drynessCheck(sheet: RunSheet): Check {
  const { drying, charring, samples, across, settings, working, vessel } = sheet;
  const [heated] = sheet.fired;
  const steady = across(drying.steady);
  const isCharred = heated && is(fn("COUNT", block(sheet, heated)), ">", 0);
  const notDry = isNotDry(sheet);
  const saying = (verdict: string): Expression => fn("COUNTIF", steady, verdict);
  // Judged and still on the way, or held up by what another check names.
  const onTheWay = sum(
    ...[verdicts.first, verdicts.notYet, verdicts.tooSoon, verdicts.gain].map(saying),
    ...HELD_UP.map(saying),
    fn("COUNT", steady),
  );
  const waits = all(notDry, is(onTheWay, ">=", working.inUse));
  return {
    silentWhile: any(
      noNumber(block(sheet, drying)),
      isCharred === undefined ? waits : all(waits, is(fn("COUNT", block(sheet, heated ?? drying)), "=", 0)),
    ),
    unjudgedWhile: isAbsent(sheet),
    steps: [
      ...samples.map((sample) => step(any(fn("ISERROR", drying.steady(sample))), words.unjudged(sample, nameOf(drying.steady(sample))))),
      step(is(saying(unjudged.settingsMissing), ">", 0), words.settings(fn("ROW", settings.readability), fn("ROW", settings.limit))),
      step(is(saying(verdicts.tooCoarse), ">", 0), words.tooCoarse(nameOf(settings.limit))),
      ...(heated === undefined || isCharred === undefined
        ? []
        : samples.map((sample) => {
            const isUnderWay = is(fn("COUNT", vessel(sample), drying.boxes(sample)), ">", 0);
            const said = charring === undefined ? checkWords.heatedBefore : words.charredBefore;
            const isUndried = all(notDry, isCharred, isUnderWay, noNumber(drying.net(sample)));
            return step(isUndried, said(sample, fn("ROW", heated.box(heated.rows.first, 1)), lastWeighed(drying, sample)));
          })),
    ],
  };
}

const HELD_UP = [unjudged.weightIsText, unjudged.rowMissing, unjudged.vesselMissing, unjudged.clockMissing, unjudged.timesWrong];
