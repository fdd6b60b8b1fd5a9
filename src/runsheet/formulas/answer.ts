import { all, any, firstOf, isNumber, NOTHING, when, type Condition } from "../expressions/choices";
import { fixed, fn, is, joined, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import type { ShareName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { checkWords } from "../words/checkWords";
import { headWords } from "../words/headWords";
import { resultWords } from "../words/resultWords";
import { compared } from "./burning";
import { block } from "./weighings";

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
}

// Scatter below this many times the weighing ±, six standard uncertainties, is not worth a word; own bound.
const WORTH_SAYING = 3;

const percent = (fraction: Expression, decimals = 1): Expression => fn("FIXED", reckon(100, "*", fraction), decimals, true);

/** The share that the answer is about: what left as vapour, or of a run that ends with drying what was water. */
export const headline = ({ charring }: RunSheet): ShareName => (charring === undefined ? "moistureWet" : "volatile");

const counted = ({ verdicts: every }: ChecksAt, verdict: string): Expression => fn("COUNTIF", every, verdict);

/** How many checks that bear on the answer are in doubt; one on the analysis does not. */
const doubts = (checks: ChecksAt): Expression =>
  checks.analysis === undefined
    ? counted(checks, verdicts.doubt)
    : reckon(counted(checks, verdicts.doubt), "-", when(is(checks.analysis, "=", verdicts.doubt), 1, 0));

/** The answer in a sentence, as far as the run has come. @param together the words of the headline's and of the other share together */
export function answerOf(sheet: RunSheet, checks: ChecksAt): Expression {
  const { drying, charring, working } = sheet;
  const nothing = any(is(working.inUse, "=", 0), is(fn("COUNT", block(sheet, drying)), "=", 0));
  const begun = [
    [nothing, words.nothing],
    [is(counted(checks, verdicts.contradiction), ">", 0), words.withheld],
  ] as const;
  const wet = sheet.across((sample) => sheet.share("moistureWet", sample));
  if (charring === undefined)
    return firstOf([...begun, [is(drying.allSteady, "=", 0), whileDrying(sheet)], ...noCommonAnswer(sheet, checks)], settled(sheet, checks));
  const isCharred = is(fn("COUNT", block(sheet, charring)), ">", 0);
  const shares = sheet.across((sample) => sheet.share("volatile", sample));
  return firstOf(
    [
      ...begun,
      [all(is(drying.allSteady, "=", 0), isCharred), marked(checks, words.charredMoist)],
      [is(drying.allSteady, "=", 0), whileDrying(sheet)],
      [is(fn("COUNT", block(sheet, charring)), "=", 0), marked(checks, words.dry(percent(fn("AVERAGE", wet))))],
      [is(fn("COUNT", shares), "=", 0), words.someOf(0, working.inUse)],
      [is(charring.allSteady, "=", 0), marked(checks, words.atLeast(percent(fn("AVERAGE", shares)), material(sheet)))],
      ...noCommonAnswer(sheet, checks),
    ],
    settled(sheet, checks),
  );
}

const marked = (checks: ChecksAt, sentence: Expression): Expression => joined(when(is(doubts(checks), ">", 0), words.inDoubt, NOTHING), sentence);

const material = ({ setup }: RunSheet): Expression => when(is(setup.material, "=", ""), words.sample, setup.material);

/** Lost so far, of all samples together: what the table has lost over what was weighed in. */
function whileDrying(sheet: RunSheet): Expression {
  const { drying, across, vessel } = sheet;
  const { first, total } = drying.rows;
  const down = range(fixed(drying.lost(first + 1, 1)), fixed(drying.lost(total, sheet.options.replicates)));
  // The row of the total belongs to the range, so that rows put in above it do.
  const lost = reckon(fn("SUM", down), "-", fn("SUM", across(drying.net)));
  const moist = across((sample) => drying.counted(sample).from);
  const weighedIn = reckon(fn("SUM", moist), "-", fn("SUM", across(vessel)));
  return when(
    any(is(fn("COUNT", moist), "<", sheet.working.inUse), is(fn("COUNT", block(sheet, drying)), "<=", sheet.working.inUse)),
    words.oneRound,
    words.drying(fn("IFERROR", percent(reckon(lost, "/", weighedIn)), NOTHING)),
  );
}

function noCommonAnswer(sheet: RunSheet, { agree }: ChecksAt) {
  const { share, plusMinus, across, setup, working, options, charring, samples } = sheet;
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
          joined(sample === 1 ? "" : ", ", setup.name(sample), " "),
        );
        const before: Expression = named ? known : sample === 1 ? "" : ", ";
        const one = share(name, sample);
        return [when(isNumber(one), joined(before, percent(one), " %"), NOTHING)];
      }),
    );
  const isDifferent = any(is(setup.samplesAre, "=", "different"), is(setup.samplesAre, "=", ""));
  const each = across((sample) => plusMinus(name, sample));
  const [ofEach, ofAll] = charring === undefined ? [words.waterOfEach, words.wasWater] : [words.leftOfEach, words.leftAsVapour];
  return [
    some,
    [disagrees(sheet, agree), words.disagree(listed(false), ofAll)] as const,
    [all(isDifferent, is(working.inUse, ">", 1)), words.different(listed(true), ofEach, percent(fn("MAX", each), 2))] as const,
  ];
}

/**
 * Whether repeats differ so much that they have no common answer: their check fails, and they differ by more than is wanted and than
 * weighing explains. Two samples that lie closer keep their mean, in doubt because two are few.
 */
export function disagrees(sheet: RunSheet, agree: Cell): Condition {
  const name = headline(sheet);
  const shares = sheet.across((sample) => sheet.share(name, sample));
  const weighing = fn(
    "MAX",
    sheet.across((sample) => sheet.plusMinus(name, sample)),
  );
  const spread = reckon(fn("MAX", shares), "-", fn("MIN", shares));
  const most = fn("MAX", reckon(WORTH_SAYING, "*", weighing), fn("N", sheet.settings.wanted));
  return all(is(agree, "=", verdicts.doubt), is(spread, ">", most));
}

/** The answer of a run whose samples are weighed to the end: "71.46 % ± 0.31 % (95 %) of the dry …". */
function settled(sheet: RunSheet, checks: ChecksAt): Expression {
  const { rows, columns, options, charring, working } = sheet;
  const words2 = charring === undefined ? words.water : words.vapour;
  const at = (name: ShareName): Cell => ({ kind: "cell", row: rows.results.shares[name] ?? 0, column: columns.verdict, fixed: "both" });
  const together = at(headline(sheet));
  const shares = sheet.across((sample) => sheet.share(headline(sheet), sample));
  const decimals = reckon(reckon(fn("FIND", " %", together), "-", fn("FIND", ".", joined(together, "."))), "-", 1);
  const stayed = resultWords.percent(fn("FIXED", reckon(100, "*", reckon(1, "-", fn("AVERAGE", shares))), fn("MAX", 0, decimals), true));
  const samples = options.replicates === 1 ? words.oneSample : when(is(working.inUse, "=", 1), words.oneSample, words.meanOf(working.inUse));
  return marked(checks, words2(together, stayed, samples, material(sheet)));
}

/** How the checks stand: all in order, some waiting, or how many fail with what the gravest found first says. */
export function checksSay(checks: ChecksAt): Expression {
  const { verdicts: every, findings, count } = checks;
  const [wrong, doubted, waiting] = [counted(checks, verdicts.contradiction), counted(checks, verdicts.doubt), counted(checks, verdicts.notYet)];
  const gravest = when(is(wrong, ">", 0), verdicts.contradiction, verdicts.doubt);
  const finding = fn("INDEX", findings, fn("MATCH", gravest, every, 0));
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
export function coversSay(sheet: RunSheet): Expression {
  const { share, plusMinus, across, options, setup, working, settings } = sheet;
  const name = headline(sheet);
  const covers = headWords.covers;
  const shares = across((sample) => share(name, sample));
  const weighing = fn(
    "MAX",
    across((sample) => plusMinus(name, sample)),
  );
  const spread = reckon(fn("MAX", shares), "-", fn("MIN", shares));
  const times = when(
    is(spread, ">", reckon(WORTH_SAYING, "*", weighing)),
    covers.times(fn("FIXED", reckon(spread, "/", weighing), 0, true)),
    NOTHING,
  );
  const rounding = when(isNumber(settings.repeatability), NOTHING, covers.roundingOnly);
  const several = [
    [all(is(working.inUse, ">", 1), is(setup.samplesAre, "=", "repeats"), is(fn("COUNT", shares), ">", 1)), covers.scatter(working.inUse, times)],
    [is(working.inUse, ">", 1), covers.each(rounding)],
  ] as const;
  return firstOf(
    [[is(fn("COUNT", shares), "=", 0), covers.before(options.replicates > 1)], ...(options.replicates > 1 ? several : [])],
    covers.alone(rounding),
  );
}

/** What open burning would have taken up and sent away, beside what left closed. */
export function openlySays(sheet: RunSheet, checks: ChecksAt): Expression {
  const { composition, charring, across, share, drying, rows } = sheet;
  const openly = headWords.openly;
  if (composition === undefined || charring === undefined || rows.openFire === undefined) return openly.ofDrying;
  const oxygen = across((sample) => compared(sheet, "oxygenTaken", sample));
  const gases = across((sample) => compared(sheet, "gases", sample));
  const dry = fn("SUM", across(drying.net));
  const volatile = fn(
    "AVERAGE",
    across((sample) => share("volatile", sample)),
  );
  const per100 = (of: Range): Expression => fn("FIXED", reckon(reckon(100, "*", fn("SUM", of)), "/", dry), 0, true);
  const off = (thousandths: number): Expression => fn("FIXED", reckon(reckon(composition.exactness, "*", thousandths), "/", 1000), 0, true);
  const said = when(
    all(isNumber(composition.exactness), is(fn("COUNT", composition.carbon), ">", 0)),
    openly.open(per100(oxygen), off(OFF.oxygen), per100(gases), off(OFF.gases)),
    openly.openExact(per100(oxygen), per100(gases)),
  );
  const closed = percent(volatile);
  // By the checks, not by the mark that the answer begins with: a spreadsheet may read "?" as any one character.
  const isMarked = any(is(counted(checks, verdicts.contradiction), ">", 0), is(doubts(checks), ">", 0));
  const invite = openly.invite(fn("ROW", composition.carbon), fn("ROW", composition.formula));
  return firstOf(
    [
      [isMarked, openly.waits],
      ...(checks.analysis === undefined ? [] : ([[is(checks.analysis, "=", verdicts.doubt), openly.inDoubt(nameOf(checks.analysis))]] as const)),
      [is(fn("COUNT", oxygen), "<", sheet.working.inUse), invite],
      [is(fn("COUNT", oxygen), "=", 0), invite],
      [is(charring.allSteady, "=", 0), joined(openly.soFar(closed), said)],
    ],
    joined(openly.closed(closed), said),
  );
}

/**
 * By how much oxygen in and gases out, mg per g dry, may be off for one percent that carbon, hydrogen and oxygen may each be off:
 * roots of the sums of squares of their coefficients, from M(C) 12.011, M(H) 1.008 and M(O) 15.999 g/mol. Oxygen in is
 * 31.998/12.011 C + 15.999/2.016 H - O, sqrt(2.664^2 + 7.936^2 + 1^2) = 8.431; gases out are 44.009/12.011 C + 18.015/2.016 H, the
 * sample's own oxygen among them, sqrt(3.664^2 + 8.936^2) = 9.658 (GUM, JCGM 100:2008, equation 10).
 */
const OFF = { oxygen: 8431, gases: 9658 } as const;
