import { all, any, firstOf, isNumber, NOTHING, sum, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, joined, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import type { ShareName } from "../../sheet/layout";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { resultWords } from "../../words/resultWords";
import { isAbsent } from "./absence";
import { saltWords } from "../../words/saltWords";
import { areKeptApart, areRepeats, areUnsaid, haveNoCommonValue, spreadOf, weighingOf, WORTH_SAYING } from "../agreement";
import { headline } from "../headline";
import { aboveTheory, lossSays } from "./saltAnswer";
import { lastRowWhere } from "../cellsNamed";
import { block, isNotDry } from "../weighings";

const words = headWords.answer;
const { verdicts } = checkWords;

/** Where the checks stand that the head tells of. */
export interface ChecksAt {
  readonly verdicts: Range;
  readonly findings: Range;
  readonly count: number;
  /** Undefined on a sheet of one sample. */
  readonly agree: Cell | undefined;
  /** It marks the comparison with open burning only. Undefined for a run that ends with drying. */
  readonly analysis: Cell | undefined;
  /** Those that mark the product ledger only. Left out where there is none. */
  readonly ledger?: readonly Cell[];
  /** How the samples agree in the rows that bear on the answer, all but those of the ledger. Left out where there is no ledger or one sample. */
  readonly agreedBesideLedger?: Range;
  /** That of the theoretical loss. Left out where no salt is heated. */
  readonly theory?: Cell;
  /** That of what was typed over: wrong where the answer is calculated from it, in doubt where it is not. */
  readonly typedOver: Cell;
}

export const percent = (fraction: Expression, decimals = 1): Expression => fn("FIXED", reckon(100, "*", fraction), decimals, true);

export const counted = ({ verdicts: every }: ChecksAt, verdict: string): Expression => fn("COUNTIF", every, verdict);

/** How many checks that bear on the answer are in doubt; those on the analysis, the ledger and the formulas of a salt do not. */
const doubts = (checks: ChecksAt): Expression => {
  const beside = [...[checks.analysis, checks.theory].flatMap((at) => at ?? []), ...(checks.ledger ?? [])].map((at) => is(at, "=", verdicts.doubt));
  return [...beside, ...disagreeInLedger(checks)].reduce<Expression>(
    (so, isBeside) => reckon(so, "-", when(isBeside, 1, 0)),
    counted(checks, verdicts.doubt),
  );
};

/** Whether samples disagree in rows of the ledger only, on a sheet that has one. */
export const disagreeInLedger = ({ agree, agreedBesideLedger }: ChecksAt): Condition[] =>
  agree === undefined || agreedBesideLedger === undefined ? [] : [all(is(agree, "=", verdicts.doubt), is(fn("SUM", agreedBesideLedger), "=", 0))];

/** Whether the answer is marked. By the checks, not by the mark it begins with: a spreadsheet may read "?" as any one character. */
export const isMarked = (checks: ChecksAt): Condition => any(is(counted(checks, verdicts.contradiction), ">", 0), is(doubts(checks), ">", 0));

/** Whether a cell that the answer is calculated from was typed over. */
export const restsOnTypedOver = ({ typedOver }: ChecksAt): Condition => is(typedOver, "=", verdicts.contradiction);

/** The answer in a sentence, as far as the run has come. @param together the words of the headline's and of the other share together */
export function answerOf(sheet: RunSheet, checks: ChecksAt): Expression {
  const { drying, charring, working } = sheet;
  const nothing = any(is(working.inUse, "=", 0), is(fn("COUNT", block(sheet, drying)), "=", 0));
  const begun = [
    [nothing, words.nothing],
    [restsOnTypedOver(checks), words.typedOver],
    ...aboveTheory(sheet, checks),
    [is(counted(checks, verdicts.contradiction), ">", 0), words.withheld],
    [isAbsent(sheet), words.absent],
  ] as const;
  const wet = sheet.across((sample) => sheet.share("moistureWet", sample));
  const [table] = sheet.fired;
  // What was lost so far comes from the column of losses, and nothing else of the answer does.
  const soFarDried = joined(when(is(checks.typedOver, "=", verdicts.doubt), words.inDoubt, NOTHING), whileDrying(sheet));
  if (table === undefined) return firstOf([...begun, [isNotDry(sheet), soFarDried], ...noCommonAnswer(sheet, checks)], settled(sheet, checks));
  const isHeated = is(fn("COUNT", block(sheet, table)), ">", 0);
  const shares = sheet.across((sample) => sheet.share(headline(sheet), sample));
  const [soFar, moist, dry] =
    charring === undefined
      ? [sheet.salt === undefined ? words.soFar : saltWords.soFar, words.heatedMoist, words.driedNotHeated]
      : [words.atLeast, words.charredMoist, words.dry];
  const dried = joined(dry(meanOrEnds(sheet, wet)), ofSome(sheet, wet));
  const undried = sheet.caught !== undefined ? words.fedMoist : sheet.salt !== undefined ? saltWords.notHeated : undefined;
  const notHeated = undried === undefined ? dried : when(is(fn("COUNT", wet), "=", 0), undried, dried);
  return firstOf(
    [
      ...begun,
      [all(isNotDry(sheet), isHeated), marked(checks, moist)],
      [isNotDry(sheet), soFarDried],
      [is(fn("COUNT", block(sheet, table)), "=", 0), marked(checks, notHeated)],
      [is(fn("COUNT", shares), "=", 0), words.someOf(0, working.inUse)],
      [
        is(table.allSteady, "=", 0),
        marked(
          checks,
          joined(
            soFar(charring === undefined ? meanOrEnds(sheet, shares) : leastOrEnds(sheet, shares), material(sheet)),
            ofSome(sheet, shares),
            // One sample that is in doubt lowers what all are said to have lost at least.
            sheet.options.replicates === 1 ? NOTHING : when(is(doubts(checks), ">", 0), words.doubtedCounted, NOTHING),
          ),
        ),
      ],
      ...noCommonAnswer(sheet, checks),
    ],
    settled(sheet, checks),
  );
}

/** The mean share of repeats, in percent; of different materials the least and the largest. */
function meanOrEnds(sheet: RunSheet, shares: Range): Expression {
  const mean = percent(fn("AVERAGE", shares));
  if (sheet.options.replicates === 1) return mean;
  return when(areKeptApart(sheet), words.fromTo(percent(fn("MIN", shares)), percent(fn("MAX", shares))), mean);
}

/** The least share, which each of repeats has lost at least; of different materials the least and the largest. */
function leastOrEnds(sheet: RunSheet, shares: Range): Expression {
  const least = percent(fn("MIN", shares));
  return sheet.options.replicates === 1 ? least : when(areKeptApart(sheet), words.fromTo(least, percent(fn("MAX", shares))), least);
}

/** A sample without its share is not in a mean, and the mean says so. */
const ofSome = ({ options, working: { inUse } }: RunSheet, shares: Range): Expression => {
  const count = fn("COUNT", shares);
  return options.replicates === 1 ? NOTHING : when(is(count, "<", inUse), words.meanOfSome(count, inUse), NOTHING);
};

const marked = (checks: ChecksAt, sentence: Expression): Expression => joined(when(is(doubts(checks), ">", 0), words.inDoubt, NOTHING), sentence);

// As its box asks for: with a longer name the answer would run past its line, and lose its verdict there.
const MOST_LETTERS = 24;
// Names of several samples share one line with their shares.
const MOST_OF_A_NAME = 12;

/** A text as it is, or so many letters of it, the last for what is left out. */
const shortened = (of: Cell, most: number): Expression => when(is(fn("LEN", of), ">", most), joined(fn("LEFT", of, most - 1), words.leftOut), of);

const material = ({ setup }: RunSheet): Expression => when(is(setup.material, "=", ""), words.sample, shortened(setup.material, MOST_LETTERS));

/** Lost so far, of all samples together: from what was weighed in to the lowest filled box of each, rows left out or not. */
function whileDrying(sheet: RunSheet): Expression {
  const { drying, across, vessel, samples } = sheet;
  const moist = across((sample) => drying.counted(sample).from);
  const latestOf = (sample: number): Expression => {
    const boxes = drying.counted(sample);
    const down = reckon(lastRowWhere(fn("ISNUMBER", boxes), boxes), "-", reckon(fn("ROW", fixed(drying.box(drying.rows.first, sample))), "-", 1));
    return fn("N", fn("INDEX", boxes, fn("MAX", 1, down)));
  };
  const lost = reckon(fn("SUM", moist), "-", sum(...samples.map(latestOf)));
  const weighedIn = reckon(fn("SUM", moist), "-", fn("SUM", across(vessel)));
  const soFar = fn("IFERROR", percent(reckon(lost, "/", weighedIn)), NOTHING);
  return when(
    any(is(fn("COUNT", moist), "<", sheet.working.inUse), is(fn("COUNT", block(sheet, drying)), "<=", sheet.working.inUse)),
    when(is(fn("COUNT", block(sheet, drying)), ">", sheet.working.inUse), words.roundMissing, words.oneRound),
    sheet.options.replicates === 1 ? words.drying(soFar) : when(areKeptApart(sheet), words.dryingTogether(soFar), words.drying(soFar)),
  );
}

type Headline = ReturnType<typeof headline>;

const EACH_AND_ALL: Readonly<Record<Headline, readonly [ofEach: string, ofAll: string]>> = {
  moistureWet: [words.waterOfEach, words.wasWater],
  volatile: [words.leftOfEach, words.leftAsVapour],
  lostInAll: [words.lostOfEach, words.wasLost],
  lossOnHeating: [saltWords.lostOfEach, saltWords.wasLost],
};

function noCommonAnswer(sheet: RunSheet, { agree }: ChecksAt) {
  const { share, plusMinus, across, setup, working, options, samples } = sheet;
  const name = headline(sheet);
  const shares = across((sample) => share(name, sample));
  const some = [is(fn("COUNT", shares), "<", working.inUse), words.someOf(fn("COUNT", shares), working.inUse)] as const;
  if (options.replicates === 1 || agree === undefined) return [some];
  const listed = (named: boolean): Expression =>
    joined(
      ...samples.flatMap((sample): Expression[] => {
        const known = when(
          is(setup.name(sample), "=", ""),
          joined(sample === 1 ? "" : ", ", named ? `${sample} ` : ""),
          joined(sample === 1 ? "" : ", ", shortened(setup.name(sample), MOST_OF_A_NAME), " "),
        );
        const before: Expression = named ? known : sample === 1 ? "" : ", ";
        const one = share(name, sample);
        return [when(isNumber(one), joined(before, percent(one), " %"), NOTHING)];
      }),
    );
  const each = across((sample) => plusMinus(name, sample));
  const [ofEach, ofAll] = EACH_AND_ALL[name];
  return [
    some,
    [haveNoCommonValue(sheet, name), words.disagree(listed(false), ofAll)] as const,
    [areUnsaid(sheet), words.unsaid(nameOf(setup.samplesAre), ofEach, listed(true))] as const,
    [areKeptApart(sheet), words.different(listed(true), ofEach, percent(fn("MAX", each), 2))] as const,
  ];
}

/** The answer of a run whose samples are weighed to the end: "71.46 % ± 0.31 % (95 %) of the dry …". */
function settled(sheet: RunSheet, checks: ChecksAt): Expression {
  const { rows, columns, options, stages, working } = sheet;
  const at = (name: ShareName): Cell => ({ kind: "cell", row: rows.results.shares[name] ?? 0, column: columns.verdict, fixed: "both" });
  const together = at(headline(sheet));
  const shares = sheet.across((sample) => sheet.share(headline(sheet), sample));
  const { readability, repeatability } = sheet.settings;
  const decimals = reckon(reckon(fn("FIND", " %", together), "-", fn("FIND", ".", joined(together, "."))), "-", 1);
  const stayed = resultWords.percent(fn("FIXED", reckon(100, "*", reckon(1, "-", fn("AVERAGE", shares))), fn("MAX", 0, decimals), true));
  const samples = options.replicates === 1 ? words.oneSample : when(is(working.inUse, "=", 1), words.oneSample, words.meanOf(working.inUse));
  const sentence = {
    moistureWet: () => words.water(together, stayed, samples, material(sheet)),
    volatile: () => words.vapour(together, stayed, samples, material(sheet)),
    lostInAll: () => words.stages(together, stayed, stages?.allSteady ?? 0, samples, material(sheet)),
    lossOnHeating: () => lossSays(sheet, together, stayed, samples, material(sheet)),
  }[headline(sheet)]();
  // Without a step, or with a text for the repeatability, nothing has a ±.
  const hasNone = is(fn("COUNT", working.together(headline(sheet))), "=", 0);
  return when(hasNone, words.noUncertainty(nameOf(readability), nameOf(repeatability)), marked(checks, sentence));
}

/** How the checks stand: all in order, some waiting, or how many fail with what the gravest found first says. */
export function checksSay(checks: ChecksAt): Expression {
  const { verdicts: every, findings, count } = checks;
  const [wrong, doubted, waiting] = [counted(checks, verdicts.contradiction), counted(checks, verdicts.doubt), counted(checks, verdicts.notYet)];
  const gravest = when(is(wrong, ">", 0), verdicts.contradiction, verdicts.doubt);
  // What was typed over explains whatever else contradicts, and is looked at last.
  const finding = fn("INDEX", findings, when(restsOnTypedOver(checks), count, fn("MATCH", gravest, every, 0)));
  return firstOf(
    [
      [
        is(reckon(wrong, "+", doubted), ">", 0),
        headWords.checks.failed(fn("LEFT", finding, 1), reckon(wrong, "+", doubted), count, withoutMark(finding)),
      ],
      [is(waiting, ">", 0), headWords.checks.some(counted(checks, verdicts.inOrder), waiting)],
    ],
    headWords.checks.all(count),
  );
}

const MARK_LENGTH = 2;
// Longer than any finding, in characters.
const ALL_OF_IT = 255;

/** The mark stands before the count, so it is left out of the finding. */
const withoutMark = (finding: Expression): Expression => fn("MID", finding, 1 + MARK_LENGTH, ALL_OF_IT);

/** What the ± covers and what it does not. */
export function coversSay(sheet: RunSheet, checks: ChecksAt): Expression {
  const { share, across, options, working, settings } = sheet;
  const name = headline(sheet);
  const covers = { ...headWords.covers, ...(sheet.salt === undefined ? {} : saltWords.covers) };
  const shares = across((sample) => share(name, sample));
  const [spread, weighing] = [spreadOf(sheet, name), weighingOf(sheet, name)];
  const times = when(
    is(spread, ">", reckon(WORTH_SAYING, "*", weighing)),
    covers.times(fn("FIXED", reckon(spread, "/", weighing), 0, true)),
    NOTHING,
  );
  const rounding = when(isNumber(settings.repeatability), NOTHING, covers.roundingOnly);
  const others = covers.others[sheet.charring !== undefined ? "charring" : sheet.stages !== undefined ? "stages" : "drying"];
  const several = [
    [all(is(working.inUse, ">", 1), areRepeats(sheet), is(fn("COUNT", shares), ">", 1)), covers.scatter(working.inUse, times, others)],
    [is(working.inUse, ">", 1), covers.each(rounding, others)],
  ] as const;
  const [table] = sheet.fired;
  // While the answer has no ±: withheld, not judged, unfinished, or waiting for a sample.
  const hasNone = any(
    is(counted(checks, verdicts.contradiction), ">", 0),
    isAbsent(sheet),
    isNotDry(sheet),
    is((table ?? sheet.drying).allSteady, "=", 0),
    is(fn("COUNT", shares), "<", fn("MAX", 1, working.inUse)),
    is(fn("COUNT", working.together(name)), "=", 0),
  );
  const disagree = checks.agree === undefined ? [] : ([[haveNoCommonValue(sheet, name), covers.each(rounding, others)]] as const);
  const isSeveral = options.replicates > 1;
  const before = isSeveral ? when(areKeptApart(sheet), covers.beforeEach, covers.before(true)) : covers.before(false);
  return firstOf([[hasNone, before], ...(isSeveral ? [...disagree, ...several] : [])], covers.alone(rounding, others));
}
