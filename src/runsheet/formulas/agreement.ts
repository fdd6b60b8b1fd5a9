import { all, any, firstOf, isNumber, when, type Condition } from "../expressions/choices";
import { criticalRangeFactor } from "../../confidence/criticalRangeFactor";
import { fn, is, range, reckon, type Call, type Cell, type Expression, type Range } from "../expressions/Expression";
import { optionBounds } from "../options/optionBounds";
import type { ShareName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { judgedBy, sharesOf } from "../sheet/sharesOf";
import { headline } from "./headline";

/** How the samples of a row of the results agree: as a number, so that the row, the check of it and the answer read one verdict. */
export const AGREEMENT = { agree: 0, wide: 1, apart: 2, beyondMethod: 3, unsaid: 4, unexplained: 5 } as const;

// Scatter below this many times the weighing ±, six standard uncertainties, is not worth a word; own bound.
export const WORTH_SAYING = 3;

export const sharesAcross = ({ across, share }: RunSheet, name: ShareName): Range => across((sample) => share(name, sample));

/** How far apart the samples lie, least to largest. */
export const spreadOf = (sheet: RunSheet, name: ShareName): Expression =>
  reckon(fn("MAX", sharesAcross(sheet, name)), "-", fn("MIN", sharesAcross(sheet, name)));

/** The largest ± by weighing of any sample. */
export const weighingOf = ({ across, plusMinus }: RunSheet, name: ShareName): Call =>
  fn(
    "MAX",
    across((sample) => plusMinus(name, sample)),
  );

/** Whether samples are repeats of one material, as chosen from the list: any other word says nothing of them. */
export const areRepeats = ({ setup }: RunSheet): Condition => is(setup.samplesAre, "=", "repeats");
export const areDifferent = ({ setup }: RunSheet): Condition => is(setup.samplesAre, "=", "different");
const isUnsaid = (sheet: RunSheet): Condition => is(any(areRepeats(sheet), areDifferent(sheet)), "=", false);

/** Whether several samples are under way of which nobody has said what they are. */
export const areUnsaid = (sheet: RunSheet): Condition => all(is(sheet.working.inUse, ">", 1), isUnsaid(sheet));

/** Whether samples under way are different materials, which are never averaged; or nobody has said what they are. */
export const areKeptApart = (sheet: RunSheet): Condition => all(is(sheet.working.inUse, ">", 1), is(areRepeats(sheet), "=", false));

// In cell formulas a whole number over a power of ten; of what may be wanted tenths.
const TENTHS = 10;

/** Whether a ± is wanted that can be one: no text, and none that the box itself refuses. */
export const isWantedKnown = ({ settings: { wanted } }: RunSheet): Condition =>
  when(isNumber(wanted), all(is(wanted, ">", 0), is(reckon(wanted, "*", TENTHS), "<=", optionBounds.wanted.atMost * TENTHS)), false);

/** Whether repeats differ in a row by more than is wanted and than weighing explains. */
export const areFarApart = (sheet: RunSheet, name: ShareName): Condition =>
  is(spreadOf(sheet, name), ">", fn("MAX", reckon(WORTH_SAYING, "*", weighingOf(sheet, name)), typed(sheet.settings.wanted)));

// In cell formulas a whole number over a power of ten; of a factor that is judged by two decimals.
const PER = 1_000_000;

/**
 * Critical-range factor f(n) of so many results, in millionths, as REPLICATES takes it (ISO 5725-6), written out so that the check needs no call of ours:
 * 2.772 for two, to six samples, which are the most that a sheet holds.
 */
const criticalFactor = (count: Expression): Expression => {
  const factors = Array.from({ length: optionBounds.replicates.atMost - 1 }, (_, index) => Math.round(criticalRangeFactor(index + 2) * PER));
  const answers = factors.slice(0, -1).map((factor, index) => [is(count, "=", index + 2), factor] as const);
  return firstOf(answers, factors.at(-1) ?? 0);
};

/** A setting as typed; what is no number there is named by its check, and counts for nothing. */
const typed = (setting: Cell): Expression => when(isNumber(setting), setting, 0);

/** The range that the method's own scatter explains. */
export const criticalRange = (sheet: RunSheet): Expression =>
  reckon(reckon(criticalFactor(fn("COUNT", sharesAcross(sheet, headline(sheet)))), "*", typed(sheet.settings.methodScatter)), "/", PER);

/**
 * How a row agrees: repeats whose ± together is more than is wanted are too wide, and without a common value where they also lie farther
 * apart than is wanted and than weighing explains. The wanted ± and the method's own scatter are of the answer's share; the wanted ± holds
 * for every other share too, in its own unit; where none is known, more than weighing explains is in doubt. The answer's row says besides that nobody said what the samples are.
 */
export function agreementOf(sheet: RunSheet, name: ShareName): Expression {
  const { settings, working } = sheet;
  const { agree, wide, apart, beyondMethod, unsaid, unexplained } = AGREEMENT;
  const isHeadline = name === headline(sheet);
  const together = working.together(name);
  const isWithin = when(is(fn("COUNT", together, settings.wanted), "<", 2), true, is(fn("N", together), "<=", settings.wanted));
  // With nothing to hold them against, more than weighing explains is told all the same.
  const isUnexplained = all(is(isWantedKnown(sheet), "=", false), is(spreadOf(sheet, name), ">", reckon(WORTH_SAYING, "*", weighingOf(sheet, name))));
  const isBeyond = all(is(fn("COUNT", settings.methodScatter), ">", 0), is(spreadOf(sheet, name), ">", criticalRange(sheet)));
  return firstOf(
    [
      ...(isHeadline ? [[areUnsaid(sheet), unsaid] as const] : []),
      [any(is(areRepeats(sheet), "=", false), is(fn("COUNT", sharesAcross(sheet, name)), "<", 2)), agree],
      [isUnexplained, unexplained],
      [is(isWithin, "=", false), fn("IF", areFarApart(sheet, name), apart, wide)],
      ...(isHeadline ? [[isBeyond, beyondMethod] as const] : []),
    ],
    agree,
  );
}

/** The agreement of each row of the results, one below the other. */
export function everyAgreement({ options, working }: RunSheet): Range {
  const names = sharesOf(options);
  const [first, last] = [names[0], names.at(-1)];
  if (first === undefined || last === undefined) throw new Error(options.kind);
  return range(working.agreement(first), working.agreement(last));
}

/** Whether the samples of a row have no common value: repeats that lie far apart. */
export function haveNoCommonValue(sheet: RunSheet, name: ShareName): Condition {
  const { apart, beyondMethod } = AGREEMENT;
  const agreement = sheet.working.agreement(name);
  if (name !== headline(sheet) && judgedBy(name) !== headline(sheet)) return is(agreement, "=", apart);
  return any(is(agreement, "=", apart), all(is(agreement, "=", beyondMethod), areFarApart(sheet, headline(sheet))));
}
