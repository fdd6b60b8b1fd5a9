import { bears } from "../blocks/resultsBlock";
import { hasGained } from "../checks/gainCheck";
import { letsPass } from "../checks/drynessCheck";
import { areEdgesWhite, isLow } from "../checks/firing/airCheck";
import { isVesselDoubted } from "../checks/vesselCheck";
import { all, any, firstOf, isNumber, NOTHING, noNumber, when, type Condition } from "../expressions/choices";
import { cell, elsewhere, fn, is, range, type Expression } from "../expressions/Expression";
import { formulaText } from "../expressions/formulaText";
import { headline } from "../formulas/headline";
import { AGREEMENT } from "../formulas/agreement";
import { unprovenSample } from "../formulas/proving";
import { isLighter, isMoreThanScale } from "../formulas/vesselAgain";
import { CLOCK } from "../sheet/Columns";
import type { CheckName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired } from "../sheet/Weighed";
import { checkWords } from "../words/checkWords";
import { resultWords } from "../words/resultWords";

// What a cell holds (Excel specifications and limits); with the longest sheet names and all rows what is asked may come to more.
const MOST_CHARACTERS = 8192;

const { contradiction, doubt } = checkWords.verdicts;

/**
 * The trust of one of several different samples: a check that concerns one sample puts only that one in doubt. Whatever a check finds first
 * hides what it finds of others, so what it asks of a sample is asked again of this one; of a check that cannot be asked so its verdict stands.
 * @param trust of the whole line, as the run sheet has it
 */
export function trustOfSample(run: RunSheet, sheetName: string, trust: Expression, sample: number): Expression {
  const name = headline(run);
  const { lines } = run.rows.checks;
  const [own, share] = [askedOf(run, sample), run.share(name, sample)];
  const found = lines.flatMap(({ check, row }, index): (readonly [Condition, string])[] => {
    const [verdict, number] = [cell(row, CLOCK), index + 1];
    const asked = own[check];
    const says = (word: string): Condition => (asked === undefined ? is(verdict, "=", word) : all(is(verdict, "=", word), asked));
    const wrong =
      check === "vessel" || check === "typedOver" || check === "theory" ? [[says(contradiction), resultWords.contradicted(number)] as const] : [];
    if (check === "agree") return [[is(run.working.agreement(name), ">", AGREEMENT.agree), resultWords.doubted(number)]];
    return [...wrong, ...(bears(name).includes(check) ? [[says(doubt), resultWords.doubted(number)] as const] : [])];
  });
  const isMarked = any(is(fn("LEFT", trust, 1), "=", "▲"), is(fn("LEFT", trust, 1), "=", "?"));
  const isOwn = all(is(run.setup.samplesAre, "=", "different"), isNumber(share), is(run.working.contradiction(sample), "=", NOTHING));
  const told = when(all(isMarked, is(onSheet(isOwn, sheetName), "=", true)), onSheet(firstOf(found, resultWords.trusted), sheetName), trust);
  // Where the spreadsheet cannot tell, the line's own trust stands; a sheet that is gone is told by the mark.
  const ofLine = fn("IFERROR", trust, NOTHING);
  const whole = fn("IFERROR", told, ofLine);
  return formulaText(whole).length > MOST_CHARACTERS ? ofLine : whole;
}

/** What some checks ask, of this sample alone. */
function askedOf(run: RunSheet, sample: number): Readonly<Partial<Record<CheckName, Condition>>> {
  const { drying, charring, ashing, heating, stages, end, working } = run;
  const notSteady = (table: Fired | undefined): Condition | undefined =>
    table && any(noNumber(table.steady(sample)), is(unprovenSample(table, sample), ">", 0));
  const [charDone, ashDone, heatDone] = [charring, ashing, heating].map(notSteady);
  const gained = [drying, ashing, heating].flatMap((table) => (table === undefined ? [] : [hasGained(run, table, sample)]));
  // Exchanged samples are two, and which of them only the check's words say.
  const isCrosswise = is(fn("COUNTIF", range(working.crosswise, working.crosswise), 0), "=", 0);
  const isCrosswiseFired = is(fn("COUNTIF", range(working.crosswiseFired, working.crosswiseFired), 0), "=", 0);
  return {
    vessel: isVesselDoubted(run, sample),
    dryness: any(noNumber(drying.net(sample)), letsPass(run)),
    ...(charring === undefined ? {} : { air: any(hasGained(run, charring, sample), areEdgesWhite(charring), isLow(run.share("charYield", sample))) }),
    // Between stages it is asked of shares, one sample after another in one formula.
    ...(stages === undefined ? { gain: any(...gained, isCrosswise, ...(run.fired.length === 0 ? [] : [isCrosswiseFired])) } : {}),
    ...(end === undefined ? {} : { vesselAgain: any(isLighter(run, end, sample), isMoreThanScale(run, end, sample)) }),
    ...(charDone === undefined ? {} : { charDone }),
    ...(ashDone === undefined ? {} : { ashDone }),
    ...(heatDone === undefined ? {} : { heatDone }),
  };
}

/** The same expression of cells on another sheet. */
function onSheet(of: Expression, name: string): Expression {
  if (typeof of !== "object") return of;
  switch (of.kind) {
    case "cell":
      return elsewhere(name, of);
    case "range":
      return range(elsewhere(name, of.from), elsewhere(name, of.to));
    case "infix":
      return { ...of, left: onSheet(of.left, name), right: onSheet(of.right, name) };
    case "call":
      return { ...of, given: of.given.map((one) => onSheet(one, name)) };
    case "joined":
      return { ...of, parts: of.parts.map((one) => onSheet(one, name)) };
    case "bracketed":
      return { ...of, inner: onSheet(of.inner, name) };
  }
}
