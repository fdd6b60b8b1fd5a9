import { any, firstOf, isNumber, NOTHING, onceNumbers, product, square, sum, when } from "../expressions/choices";
import { fn, is, reckon, type Cell, type Expression } from "../expressions/Expression";
import type { Caught } from "../sheet/Caught";
import type { ShareName } from "../sheet/layout";
import { isLedgerShare, isStageShare } from "../sheet/sharesOf";
import type { RunSheet } from "../sheet/RunSheet";
import type { Fired } from "../sheet/Weighed";
import { resultWords } from "../words/resultWords";
import { weighingWords } from "../words/weighingWords";
import { areKeptApart, haveNoCommonValue } from "./agreement";
import { knownMoisture, ledgerPlusMinus, ledgerShare } from "./ledger";
import { byTheory, byTheoryPlusMinus, isByTheory } from "./salt";
import { stagePlusMinus, stageShare } from "./stages";
import { gainVariance } from "./vesselAgain";
import { countWithUncertainty, withUncertainty } from "./withUncertainty";
import { offByDrying } from "./yetToDry";

/** What is left of one sample at each stage, g without the vessel. */
interface Nets {
  readonly moist: Expression;
  readonly dry: Cell;
  readonly char: Cell | undefined;
  readonly ash: Cell | undefined;
  /** Undefined but for staged heating, and for a salt or mineral. */
  readonly left: Cell | undefined;
  readonly heated: Cell | undefined;
}

const netsOf = (sheet: RunSheet, sample: number): Nets => ({
  moist: reckon(moistCell(sheet, sample), "-", sheet.vessel(sample)),
  dry: sheet.drying.net(sample),
  char: sheet.charring?.net(sample),
  ash: sheet.ashing?.net(sample),
  left: sheet.stages?.net(sample),
  heated: sheet.heating?.net(sample),
});

/** What counts of round 1, g with the vessel. */
export function moistCell({ drying }: RunSheet, sample: number): Cell {
  const counted = drying.counted(sample);
  return counted.from;
}

/** A share as what is left over what there was before: y = after / before, all in g without the vessel. */
interface Ratio {
  readonly after: Expression;
  readonly before: Expression;
  readonly needed: readonly Cell[];
  /** Of a share that counts what left, 1 - y, or what left over what stayed, 1/y - 1. */
  readonly gives: "stayed" | "left" | "leftOfRest";
}

function ratioOf({ moist, dry, char, ash, left, heated }: Nets, name: ShareName): Ratio | undefined {
  if (name === "moistureWet") return { after: dry, before: moist, needed: [dry], gives: "left" };
  if (name === "moistureDry") return { after: dry, before: moist, needed: [dry], gives: "leftOfRest" };
  if (left !== undefined && name === "lostInAll") return { after: left, before: dry, needed: [dry, left], gives: "left" };
  if (left !== undefined && name === "leftAtEnd") return { after: left, before: dry, needed: [dry, left], gives: "stayed" };
  if (heated !== undefined && name === "lossOnHeating") return { after: heated, before: dry, needed: [dry, heated], gives: "left" };
  if (heated !== undefined && name === "leftOnHeating") return { after: heated, before: dry, needed: [dry, heated], gives: "stayed" };
  if (char === undefined) return undefined;
  if (name === "volatile") return { after: char, before: dry, needed: [dry, char], gives: "left" };
  if (name === "charYield") return { after: char, before: dry, needed: [dry, char], gives: "stayed" };
  if (ash === undefined) return undefined;
  if (name === "ash") return { after: ash, before: dry, needed: [dry, ash], gives: "stayed" };
  return { after: reckon(char, "-", ash), before: reckon(dry, "-", ash), needed: [dry, char, ash], gives: "stayed" };
}

/** A share of one sample, a fraction; the word "withheld" where its weights contradict one another, so that no average takes it. */
export function shareOf(sheet: RunSheet, name: ShareName, sample: number): Expression {
  const unlessContradicted = (value: Expression): Expression =>
    when(is(sheet.working.contradiction(sample), "=", NOTHING), value, resultWords.withheld);
  if (sheet.caught !== undefined && isLedgerShare(name)) return unlessContradicted(ledgerShare(sheet, sheet.caught, name, sample));
  if (sheet.stages !== undefined && isStageShare(name)) return unlessContradicted(stageShare(sheet, sheet.stages, name, sample));
  if (sheet.salt !== undefined && isByTheory(name)) return byTheory(sheet, sheet.salt, name, sample);
  const ratio = ratioOf(netsOf(sheet, sample), name);
  if (ratio === undefined) return NOTHING;
  const { after, before, gives } = ratio;
  // Of a salt heated as weighed in nothing was dried off. Of a sample fed moist its moisture was typed, not weighed.
  const needed =
    (sheet.caught !== undefined || sheet.salt !== undefined) && isOfDrying(name) ? [...ratio.needed, sheet.drying.steady(sample)] : ratio.needed;
  const value = {
    stayed: reckon(after, "/", before),
    left: reckon(1, "-", reckon(after, "/", before)),
    leftOfRest: reckon(reckon(before, "/", after), "-", 1),
  }[gives];
  return unlessContradicted(onceNumbers(needed, value));
}

const isOfDrying = (name: ShareName): boolean => name === "moistureWet" || name === "moistureDry";

/**
 * ± 95 % of a share by weighing, and by what was still to dry off: 2 u(y), with y = after / before and u of one zeroed weighing. Where one vessel weighing serves
 * both, u(y) = u / before sqrt(1 + y^2 + (1 - y)^2); on a tared balance no vessel weighing comes in, sqrt(1 + y^2), both as
 * LOSSFRACTION.U; where the vessel was weighed again, each mass has two weighings of its own, sqrt(2 (1 + y^2)); of char without its
 * ash, whose own weighing stands in both, the first, and twice its square. What the vessel gained adds its own variance (gainVariance). On the dry basis U = 1/y - 1, so u(U) = u(y) / y^2 (GUM, JCGM 100:2008,
 * 5.1.2). What was still to dry off shifts the share one way and does not average out, so it is added whole to the ± (F.2.4.5 from memory).
 */
export function plusMinusOf(sheet: RunSheet, name: ShareName, sample: number): Expression {
  if (sheet.caught !== undefined && isLedgerShare(name)) return ledgerPlusMinus(sheet, sheet.caught, name, sample);
  if (sheet.stages !== undefined && isStageShare(name)) return stagePlusMinus(sheet, sheet.stages, name, sample);
  if (sheet.salt !== undefined && isByTheory(name)) return byTheoryPlusMinus(sheet, sheet.salt, name, sample);
  const ratio = ratioOf(netsOf(sheet, sample), name);
  if (ratio === undefined) return NOTHING;
  const { after, before, gives } = ratio;
  const { u } = sheet.working;
  const isCharred = sheet.caught !== undefined && !isOfDrying(name);
  // Of what went into the fire, which is what was weighed; u(y) is then multiplied to the dry sample.
  const y = reckon(after, "/", isCharred ? sheet.caught.fed(sample) : before);
  const common = sum(1, square(y), square(reckon(1, "-", y)));
  // Without its ash, the ash weighing stands in for the vessel, whether or not the balance was tared.
  const own = name === "charYieldAshFree" ? common : reckon(1, "+", square(y));
  const isTared = is(sheet.columns.box(sheet.rows.drying.vessel, sample), "=", weighingWords.tared);
  const again = isOfDrying(name) ? undefined : sheet.end?.vessel(sample);
  const once = when(isTared, own, common);
  const ofWeighing = reckon(square(u), "*", again === undefined ? once : when(isNumber(again), reckon(2, "*", own), once));
  const isAshedLater = sheet.ashing !== undefined && (name === "volatile" || name === "charYield" || name === "charYieldAshFree");
  const moisture = isCharred ? [square(product(after, moistureOff(sheet, sheet.caught, sample)))] : [];
  const scale = isOfDrying(name) || sheet.end === undefined ? [] : [gainVariance(sheet, sample, isAshedLater ? "half" : "all")];
  const variance = sum(ofWeighing, ...scale, ...moisture);
  const plusMinus = reckon(reckon(2, "*", fn("SQRT", variance)), "/", before);
  const ofOne = gives === "leftOfRest" ? reckon(plusMinus, "/", square(y)) : plusMinus;
  return onceNumbers([sheet.share(name, sample), u], sum(ofOne, offByDrying(sheet, name, sample)));
}

/** What the moisture of a sample fed moist adds to u of a share of its dry part, relative: u(w) / (1 - w). */
const moistureOff = (sheet: RunSheet, caught: Caught, sample: number): Expression =>
  reckon(reckon(knownMoisture(sheet, caught, sample), "*", caught.fed(sample)), "/", sheet.drying.net(sample));

// 95 %, two-sided: one in twenty lies outside.
const ONE_IN = 20;

/** The factor that n samples ask for: Student's t at 95 % with n - 1 degrees of freedom, 4.30 for three. */
export const studentFactor = (count: Expression): Expression => fn("TINV", reckon(1, "/", ONE_IN), reckon(count, "-", 1));

/**
 * ± 95 % of all samples together: of one, its weighing; of more, the larger of t s / sqrt(n), which holds the scatter of the
 * weighings too, and weighing / sqrt(n), for samples that happen to agree better than they can be weighed; and besides what was still to dry off,
 * which is alike in all that dry together and so shows in no scatter.
 */
export function togetherOf(sheet: RunSheet, name: ShareName): Expression {
  const { share, plusMinus, across } = sheet;
  const [shares, weighing] = [
    across((sample) => share(name, sample)),
    fn(
      "MAX",
      across((sample) => plusMinus(name, sample)),
    ),
  ];
  const count = fn("COUNT", shares);
  const root = fn("SQRT", count);
  const scatter = reckon(reckon(studentFactor(count), "*", fn("STDEV", shares)), "/", root);
  const ofSample = sheet.samples.map((sample) => fn("IFERROR", offByDrying(sheet, name, sample), 0));
  const together = fn("MAX", scatter, reckon(weighing, "/", root));
  return firstOf(
    [
      [is(count, "=", 0), NOTHING],
      [is(weighing, "=", 0), NOTHING],
      [is(count, "=", 1), weighing],
    ],
    sum(together, fn("MAX", ...ofSample)),
  );
}

/** What all samples say together, in words: the mean ± 95 %, or why there is none. */
export function togetherSays(sheet: RunSheet, name: ShareName): Expression {
  const { working, share, across, options } = sheet;
  const shares = across((sample) => share(name, sample));
  const together = working.together(name);
  const isSeveral = options.replicates > 1;
  return firstOf(
    [
      [is(fn("COUNTIF", shares, resultWords.withheld), ">", 0), resultWords.contradicts],
      [any(is(fn("COUNT", shares), "=", 0), is(fn("COUNT", shares), "<", working.inUse)), NOTHING],
      ...(isSeveral
        ? ([
            [haveNoCommonValue(sheet, name), resultWords.noCommonValue],
            [areKeptApart(sheet), resultWords.keptApart],
          ] as const)
        : []),
      [is(fn("COUNT", together), "=", 0), NOTHING],
    ],
    (name === "waters" ? countWithUncertainty : withUncertainty)(fn("AVERAGE", shares), together),
  );
}

/** What a sample's vessel weighed when a table was weighed, g: weighed again at the end, the last table by that, one before by the middle. */
export function firedVessel(sheet: RunSheet, table: Fired, sample: number): Expression {
  const { end, vessel, ashing } = sheet;
  const first = vessel(sample);
  if (end === undefined) return first;
  const gain = end.gain(sample);
  const isLast = ashing === undefined || table.rows === ashing.rows;
  return when(isNumber(first), reckon(first, "+", isLast ? fn("N", gain) : reckon(fn("N", gain), "/", 2)), NOTHING);
}
