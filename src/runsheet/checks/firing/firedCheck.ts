import { all, any, anyWhere, isNumber, noNumber, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow } from "../../expressions/formulaText";
import { isAbsent } from "../../formulas/sentences/absence";
import { isUnproven } from "../../formulas/proving";
import { isFull } from "../../formulas/sentences/rowSays";
import { block, lastWeighed } from "../../formulas/weighings";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { weighingWords } from "../../words/weighingWords";
import { column } from "./fireOrder";
import { step, type Check, type Step } from "../Check";
import { limitRefused } from "../limitRefused";
import { unjudgedStep } from "../unjudgedStep";

const { fired } = checkWords;
const { unjudged, verdicts } = weighingWords;
const TOLD_ELSEWHERE = [verdicts.gain, unjudged.notDry, unjudged.weightIsText, unjudged.rowMissing];
const PHASE = { Charring: "charring", Ashing: "ashing", Heating: "heating" } as const;

/** Whether nothing more left: asked once the work went on after a firing, or the table is full. */
function firedCheck(sheet: RunSheet, table: Fired, after: Fired | undefined, what: "Charring" | "Ashing" | "Heating"): Check {
  const { end, across, samples, vessel, drying } = sheet;
  const steady = across(table.steady);
  const isNotSteady = is(table.allSteady, "=", 0);
  const isGoneOn: Condition = any(
    ...(after === undefined ? [] : [is(fn("COUNT", block(sheet, after)), ">", 0)]),
    ...(end === undefined ? [] : [is(fn("COUNT", across(end.vessel)), ">", 0)]),
  );
  const wentOn: Condition = any(isFull(sheet, table), isGoneOn);
  // Counted, since a comparison with a verdict that shows an error is an error itself.
  const says = (sample: number, word: string): Condition => is(fn("COUNTIF", table.steady(sample), word), ">", 0);
  // A gain, a text and a gap are told by checks of their own, charred before it was dry by that of dryness.
  const isTold = (sample: number): Condition => any(...TOLD_ELSEWHERE.map((word) => says(sample, word)));
  const isOpen = (sample: number): Condition =>
    all(is(fn("COUNT", vessel(sample), drying.boxes(sample)), ">", 0), noNumber(table.steady(sample)), is(isTold(sample), "=", false));
  const isAnyOpen = any(...samples.map(isOpen));
  const cannot = (reason: string): Condition => is(fn("COUNTIF", steady, reason), ">", 0);
  const reasons = [unjudged.settingsMissing, unjudged.heldMissing] as const;
  const isUnjudged = any(...reasons.map(cannot), anyWhere(fn("ISERROR", steady)));
  return {
    silentWhile: any(
      noNumber(block(sheet, table)),
      all(
        isNotSteady,
        any(is(wentOn, "=", false), is(fn("COUNTIF", steady, unjudged.notDry), ">", 0), is(isAnyOpen, "=", false)),
        is(any(isUnjudged, isUnproven(sheet, table)), "=", false),
      ),
    ),
    unjudgedWhile: isAbsent(sheet),
    steps: [
      ...reasons.map((reason) => step(cannot(reason), fired.unjudged(what, reason))),
      ...limitRefused(sheet, table, (sample) =>
        reckon(fn("N", fixed(sheet.columns.working(table.rows.heading, sample))), "-", fn("N", table.vessel(sample))),
      ),
      unjudgedStep(sheet, table),
      ...unprovenSteps(sheet, table, what),
      ...samples.map((sample) => {
        const isStillLosing = any(says(sample, verdicts.notYet), says(sample, verdicts.tooSoon));
        return step(all(isGoneOn, isStillLosing), fired.wentOn(sample, PHASE[what], lastWeighed(table, sample)));
      }),
      step(all(isNotSteady, wentOn, isAnyOpen), fired.unfinished(what)),
    ],
  };
}

/** What is missing where samples are steady by a firing that proves nothing; its row says which of the two it is. */
function unprovenSteps(sheet: RunSheet, table: Fired, what: "Charring" | "Ashing" | "Heating"): Step[] {
  const { first, last, fire } = table.rows;
  const verdicts = range(fixed(table.verdict(first)), fixed(table.verdict(last)));
  const saying = (word: string): Condition => all(isUnproven(sheet, table), is(fn("COUNTIF", verdicts, word), ">", 0));
  const below = (word: string): Expression => reckon(fn("MATCH", word, verdicts, 0), "-", 1);
  const { colder, short } = weighingWords.says;
  const { set, measured, held } = table.fire(fire.first);
  // Measured against measured where that is what tells, else against what was set; a blank is 0, below any heat.
  const [sets, measures] = [column(table, "set"), column(table, "measured")];
  const here = fn("INDEX", measures, fn("MATCH", colder, verdicts, 0));
  const hottestIn = (of: Range): Expression => nameBelow(of.from, reckon(fn("MATCH", fn("MAX", of), of, 0), "-", 1));
  const hottest = when(is(fn("N", here), "<", fn("MAX", measures)), hottestIn(measures), hottestIn(sets));
  const own = when(isNumber(here), nameBelow(measured, below(colder)), nameBelow(set, below(colder)));
  return [
    step(saying(colder), fired.colder(own, hottest, PHASE[what])),
    step(saying(short), fired.short(nameBelow(held, below(short)), PHASE[what])),
    step(isUnproven(sheet, table), fired.unfinished(what)),
  ];
}

export const charDoneCheck = (sheet: RunSheet): Check | undefined => sheet.charring && firedCheck(sheet, sheet.charring, sheet.ashing, "Charring");
export const heatDoneCheck = (sheet: RunSheet): Check | undefined => sheet.heating && firedCheck(sheet, sheet.heating, undefined, "Heating");
export const ashDoneCheck = (sheet: RunSheet): Check | undefined => sheet.ashing && firedCheck(sheet, sheet.ashing, undefined, "Ashing");
