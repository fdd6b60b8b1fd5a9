import { all, any, firstOf, isNumber, NOTHING, sum, when } from "../../expressions/choices";
import { fixed, fn, is, joined, reckon, type Cell, type Expression, type Range } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import type { ShareName } from "../../sheet/layout";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { headWords } from "../../words/headWords";
import { resultWords } from "../../words/resultWords";
import { isAbsent } from "./absence";
import { saltWords } from "../../words/saltWords";
import { areKeptApart, areUnsaid, haveNoCommonValue } from "../agreement";
import { headline } from "../headline";
import { aboveTheory, lossSays } from "./saltAnswer";
import { lastRowWhere } from "../cellsNamed";
import { percent } from "../percent";
import { block, isNotDry } from "../weighings";
import { counted, doubts, restsOnTypedOver, type ChecksAt } from "./checksSay";

const words = headWords.answer;
const { verdicts } = checkWords;

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
