import { CONSTANCY_CRITERIA, type ConstancyCriterion } from "../../drying/constantWeight/constancyCriteria";
import { all, any, firstOf, isNumber, noNumber, sum, when, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { isAbsent } from "../formulas/sentences/absence";
import { moistCell } from "../formulas/results";
import { block, isNotDry, lastWeighed } from "../formulas/weighings";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { weighingWords } from "../words/weighingWords";
import { step, type Check } from "./Check";
import { coarseWeights } from "./coarseWeights";
import { limitRefused } from "./limitRefused";
import { unjudgedStep } from "./unjudgedStep";

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
  const isWide = letsPass(sheet);
  return {
    first: [coarseWeights(sheet)],
    silentWhile: any(
      noNumber(block(sheet, drying)),
      all(isCharred === undefined ? waits : all(waits, is(fn("COUNT", block(sheet, heated ?? drying)), "=", 0)), is(isWide, "=", false)),
    ),
    unjudgedWhile: isAbsent(sheet),
    steps: [
      ...limitRefused(sheet, drying, (sample) => reckon(fn("N", moistCell(sheet, sample)), "-", fn("N", vessel(sample)))),
      unjudgedStep(sheet, drying),
      step(is(saying(unjudged.settingsMissing), ">", 0), words.settings(fn("ROW", settings.readability), fn("ROW", settings.limit))),
      step(isWide, words.tooWide(nameOf(settings.limit))),
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

// What a limit may let pass of the moist sample, 2 in 1000, twice what EN 322 and EN 13183-1 have; own bound, no source.
const MOIST_PER_LIMIT = 500;
// Above 4 % of the sample CONSTANTWEIGHT refuses a limit (constancyCriteria.ts) and says why.
const MOIST_PER_REFUSED = 25;
const MINUTES_PER_HOUR = 60;
const [, , , , OF_TOTAL_LOSS] = [undefined, ...CONSTANCY_CRITERIA];

/** Whether the limit lets more pass as no loss than that share of the mean moist sample, or than is wanted, and than two readings explain. */
export function letsPass(sheet: RunSheet): Condition {
  const { settings, drying, vessel, working, across } = sheet;
  const { limit, criterion, readability, interval, wanted } = settings;
  const weighedIn = across((sample) => moistCell(sheet, sample));
  const moist = reckon(reckon(fn("SUM", weighedIn), "-", fn("SUM", across(vessel))), "/", fn("MAX", 1, working.inUse));
  const isIn = (name: ConstancyCriterion): Condition => is(criterion, "=", name);
  const measuredIn = firstOf(
    [
      [isIn("readability"), fn("N", readability)],
      [isIn("absolute"), 1],
      [isIn(OF_TOTAL_LOSS), fn("MAX", 0, reckon(fn("N", moistCell(sheet, 1)), "-", fn("MIN", drying.counted(1))))],
      [isIn("per hour"), reckon(reckon(moist, "*", fn("N", interval)), "/", MINUTES_PER_HOUR)],
    ],
    moist,
  );
  const grams = reckon(fn("N", limit), "*", measuredIn);
  const most = fn("MIN", reckon(1, "/", MOIST_PER_LIMIT), when(isNumber(wanted), wanted, 1));
  const isMuch = is(grams, ">", fn("MAX", fn("N", working.explained), reckon(most, "*", moist)));
  return all(is(fn("COUNT", weighedIn), "=", working.inUse), isMuch, is(grams, "<=", reckon(moist, "/", MOIST_PER_REFUSED)));
}

const HELD_UP = [unjudged.weightIsText, unjudged.rowMissing, unjudged.vesselMissing, unjudged.clockMissing, unjudged.timesWrong];
