import { readingUncertainty } from "../../confidence/readingUncertainty";
import { all, any, anyWhere, isNumber, lacksNumber, NOTHING, placeWhere, product, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { isWantedKnown } from "../formulas/agreement";
import { headline } from "../formulas/headline";
import { moistCell } from "../formulas/results";
import { grams } from "../formulas/sentences/rowSays";
import { isAnyVesselDoubtful } from "../formulas/vesselAgain";
import { optionBounds } from "../options/optionBounds";
import type { CarriedPlan } from "../options/RunSheetOptions";
import { decimalsOf } from "../sheet/massFormats";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { step, type Check, type Step } from "./Check";

const words = checkWords.fine;

// About 95 %.
const COVERAGE = 2;

/**
 * Whether the balance is fine enough for the wanted ±: of a sample just weighed in, by its plan, or by SAMPLE.MINIMUM at the least
 * favourable loss, 2 u sqrt(2) / U; once its share is known, by the ± of the weighing. A plan holds for its balance and its wanted ± alone,
 * and for as much dry sample as it reckoned with: where one of them turns out otherwise, that is told before the share is known.
 */
export function fineCheck(sheet: RunSheet): Check {
  const { working, settings, vessel, samples, across, plusMinus, options } = sheet;
  const { plan } = options;
  const known = across((sample) => plusMinus(headline(sheet), sample));
  const least = reckon(reckon(reckon(COVERAGE, "*", fn("SQRT", 2)), "*", fn("N", working.u)), "/", settings.wanted);
  const moistOf = (sample: number) => reckon(fn("N", moistCell(sheet, sample)), "-", fn("N", vessel(sample)));
  const unweighed = samples.length === 1 ? lacksNumber(vessel(1), moistCell(sheet, 1)) : noneWeighedIn(sheet);
  const unplanned = plan === undefined ? undefined : offPlan(sheet, plan, moistOf);
  const toCome = across(working.yetToDry);
  // What was pasted there passes no entry rule.
  const isNoWanted = all(is(fn("LEN", settings.wanted), ">", 0), is(isWantedKnown(sheet), "=", false));
  const vesselDoubtful = isAnyVesselDoubtful(sheet);
  const nothingYet = unplanned === undefined ? unweighed : all(unweighed, is(unplanned.isOff, "=", false));
  return {
    silentWhile: all(is(isNoWanted, "=", false), any(lacksNumber(working.u, settings.wanted), nothingYet)),
    steps: [
      step(isNoWanted, words.noWanted(nameOf(settings.wanted), optionBounds.wanted.atMost * 100)),
      ...(vesselDoubtful === undefined
        ? []
        : [step(all(is(fn("COUNT", known), ">", 0), is(fn("MAX", known), ">", settings.wanted), vesselDoubtful), checkWords.vesselAgain.waits)]),
      step(
        all(is(fn("COUNT", known), ">", 0), is(fn("MAX", known), ">", settings.wanted), is(fn("MAX", toCome), ">", fn("N", working.explained))),
        words.toDry(fn("FIXED", reckon(100, "*", fn("MAX", known)), 2, true), grams(sheet, fn("MAX", toCome))),
      ),
      step(
        all(is(fn("COUNT", known), ">", 0), is(fn("MAX", known), ">", settings.wanted)),
        words.plusMinus(fn("FIXED", reckon(100, "*", fn("MAX", known)), 2, true)),
      ),
      // Nothing more is foretold of a share that is known.
      step(is(fn("COUNT", known), ">", 0), NOTHING),
      ...(unplanned === undefined ? [] : [step(unplanned.isOff, unplanned.says)]),
      ...(plan?.dryGrams === undefined ? [] : [dryBelowPlan(sheet, plan.dryGrams / plan.moistGrams)]),
      ...(plan === undefined ? [] : samples).map((sample): Step => belowPlan(sheet, sample, moistOf(sample))),
      ...samples.map((sample): Step =>
        step(
          all(is(fn("COUNT", vessel(sample), moistCell(sheet, sample)), "=", 2), is(moistOf(sample), ">", 0), is(moistOf(sample), "<", least)),
          words.tooLittle(sample, upToTwoFigures(least)),
        ),
      ),
      // What goes on after drying is weighed against the dry sample.
      ...(sheet.fired.length === 0 ? [] : [firstDryBelow(sheet, least, (sample) => words.tooLittleDry(sample, upToTwoFigures(least)))]),
    ],
  };
}

/** Up to two figures, so that the printed mass is enough. */
const upToTwoFigures = (grams: Expression): Expression => fn("ROUNDUP", grams, reckon(1, "-", fn("INT", fn("LOG10", grams))));

// What binary rounding may make of the same figures.
const ALIKE = 1e-6;

/** Whether the balance is coarser than the plan's, or more is wanted of it, and the samples are not so much larger as that asks for. */
function offPlan(
  sheet: RunSheet,
  plan: CarriedPlan,
  moistOf: (sample: number) => Expression,
): { readonly isOff: Condition; readonly says: Expression } {
  const { working, settings, samples, vessel, options } = sheet;
  const { repeatability = 0, wantedUncertainty } = plan;
  const plannedU = readingUncertainty({ readability: options.readability, repeatability, tared: true });
  const perU = wantedUncertainty / plannedU;
  const plusMinus = reckon(perU, "*", fn("N", working.u));
  const needed = reckon(reckon(fn("N", settings.planned), "*", plusMinus), "/", settings.wanted);
  const isCoarser = is(fn("N", working.u), ">", plannedU * (1 + ALIKE));
  const isCloser = is(settings.wanted, "<", wantedUncertainty * (1 - ALIKE));
  const isLess = samples.map((sample) => all(is(fn("COUNT", vessel(sample), moistCell(sheet, sample)), "=", 2), is(moistOf(sample), "<", needed)));
  return {
    isOff: all(isNumber(settings.planned), any(isCoarser, isCloser), is(plusMinus, ">", settings.wanted), any(noneWeighedIn(sheet), ...isLess)),
    says: words.offPlan(
      nameOf(settings.readability),
      fn("FIXED", fn("N", settings.planned), decimalsOf(options.readability), true),
      fn("FIXED", reckon(100, "*", plusMinus), 2, true),
      upToTwoFigures(needed),
    ),
  };
}

/** The first sample that came out dry below some grams; what goes on after drying is weighed against that. */
function firstDryBelow({ drying, across }: RunSheet, grams: Expression, says: (sample: Expression, dry: Expression) => Expression): Step {
  const dry = across(drying.net);
  const isBelow = product(fn("ISNUMBER", dry), is(dry, ">", 0), is(dry, "<", grams));
  const sample = placeWhere(isBelow);
  return step(anyWhere(isBelow), says(sample, fn("INDEX", dry, 1, sample)));
}

/** Less dry sample than planned, by more than a display step. */
function dryBelowPlan(sheet: RunSheet, ofMoist: number): Step {
  const { planned, wanted, readability } = sheet.settings;
  const decimals = decimalsOf(sheet.options.readability);
  const plannedDry = reckon(fn("N", planned), "*", ofMoist);
  return firstDryBelow(sheet, reckon(plannedDry, "-", fn("N", readability)), (sample, dry) =>
    words.dryBelowPlan(
      sample,
      fn("FIXED", dry, decimals, true),
      fn("FIXED", plannedDry, decimals, true),
      fn("FIXED", reckon(reckon(reckon(100, "*", wanted), "*", plannedDry), "/", dry), 2, true),
    ),
  );
}

/** Less weighed in than planned, by more than a display step; the ± that was planned grows as the sample shrinks. */
function belowPlan({ settings, vessel, options }: RunSheet, sample: number, moist: Expression): Step {
  const { planned, wanted, readability } = settings;
  const decimals = decimalsOf(options.readability);
  return step(
    all(
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
