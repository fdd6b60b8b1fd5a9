import { all, any, firstOf, NOTHING, onceNumbers, when, type Condition } from "../expressions/choices";
import { fixed, fn, is, range, reckon, retort, type Call, type Cell, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { isAbsent } from "./sentences/absence";
import { COMPARED, type Compared } from "../sheet/layout";
import type { Composition, RunSheet } from "../sheet/RunSheet";
import { openFireWords } from "../words/openFireWords";
import { weighingWords } from "../words/weighingWords";

/** Row and column of a quantity in the table that BURN.COMPARE gives, headings counted as row 1. */
const PLACE: Readonly<Record<Exclude<Compared, "charLeft" | "vapourLeft">, readonly [row: number, column: number]>> = {
  oxygenTaken: [3, 4],
  ashLeft: [5, 4],
  gases: [6, 4],
  notCovered: [10, 4],
  air: [12, 4],
};

/** The boxes of the analysis, carbon to sulfur. */
export const analysis = ({ carbon, sulfur }: Composition) => range(fixed(carbon), fixed(sulfur));

export const isAnalysed = (composition: Composition): Condition => is(fn("COUNT", analysis(composition)), ">", 0);
export const hasFormula = ({ formula }: Composition): Condition => is(fn("COUNTA", formula), ">", 0);
export const hasBoth = (composition: Composition): Condition => all(isAnalysed(composition), hasFormula(composition));

/** The least that an analysis and the ash may add up to, %: BURN.COMPARE answers from there on. */
export const LEAST_ANALYSED_PERCENT = 90;

/** How much of a sample its analysis and ash account for, %, to a tenth; ash not yet weighed counts as none. */
export function analysedPercent({ drying, ashing }: RunSheet, composition: Composition, sample: number): Call {
  const shares = fn("SUM", analysis(composition));
  if (ashing === undefined) return fn("ROUND", shares, 1);
  const [ash, dry] = [ashing.net(sample), drying.net(sample)];
  const ofDry = when(is(fn("COUNT", ash, dry), "<", 2), 0, reckon(reckon(100, "*", ash), "/", dry));
  return fn("ROUND", reckon(shares, "+", ofDry), 1);
}

/** Where a quantity of the comparison stands. */
export const compared = ({ rows, columns }: RunSheet, quantity: Compared, sample: number): Cell =>
  fixed(columns.reckoned((rows.openFire?.boxes.carbon ?? 0) + COMPARED.indexOf(quantity), sample));

const PERCENT = 100;

/**
 * A quantity of the comparison with open burning, g. What the closed run left needs the weights alone; the rest is empty until the char is weighed
 * and a composition given, a formula or an analysis with carbon, hydrogen and whatever else brings the sum near the whole; and while both are given,
 * or the weights contradict.
 */
export function comparedValue(sheet: RunSheet, composition: Composition, quantity: Compared, sample: number): Expression {
  const { drying, charring, ashing, working } = sheet;
  if (charring === undefined) return NOTHING;
  const [dry, char, ash] = [drying.net(sample), charring.net(sample), ashing?.net(sample) ?? ""];
  const isInOrder = is(working.contradiction(sample), "=", NOTHING);
  if (quantity === "charLeft" || quantity === "vapourLeft") {
    const left = quantity === "charLeft" ? char : reckon(dry, "-", char);
    return when(isInOrder, onceNumbers([dry, char], left), NOTHING);
  }
  const share = (of: Cell): Expression => reckon(of, "/", PERCENT);
  const { formula, carbon, hydrogen, oxygen, nitrogen, sulfur } = composition;
  const byFormula = retort("BURN.COMPARE", weighingWords.tared, dry, char, ash, formula);
  const byAnalysis = retort(
    "BURN.COMPARE",
    weighingWords.tared,
    dry,
    char,
    ash,
    "",
    share(carbon),
    share(hydrogen),
    share(oxygen),
    share(nitrogen),
    share(sulfur),
  );
  const place = PLACE[quantity];
  const isTooLittle = any(is(fn("COUNT", carbon, hydrogen), "<", 2), is(analysedPercent(sheet, composition, sample), "<", LEAST_ANALYSED_PERCENT));
  const told = firstOf(
    [
      [hasBoth(composition), NOTHING],
      [hasFormula(composition), fn("INDEX", byFormula, ...place)],
      [isTooLittle, NOTHING],
    ],
    fn("INDEX", byAnalysis, ...place),
  );
  // What the analysis or the formula has wrong is said in words beside the boxes and by its check.
  return when(isInOrder, onceNumbers([dry, char], fn("IFERROR", told, NOTHING)), NOTHING);
}

/** Without Retort nobody reads the formula; a sheet in built-in functions reckons with an analysis all the same. */
const formulaUnread = (sheet: RunSheet, { formula, carbon, sulfur }: Composition): Expression =>
  when(isAbsent(sheet), openFireWords.retortMissing, openFireWords.formulaUnread(nameOf(formula), nameOf(carbon), nameOf(sulfur)));

/** One sentence where a formula and an analysis are both given, or what is wrong with the formula; else what the figures are. */
export const openFireSays = (sheet: RunSheet, composition: Composition): Expression =>
  firstOf(
    [
      [hasBoth(composition), openFireWords.both(nameOf(composition.formula), nameOf(composition.carbon), nameOf(composition.sulfur))],
      [hasFormula(composition), fn("IFERROR", retort("FORMULA.CHECK", composition.formula), formulaUnread(sheet, composition))],
    ],
    openFireWords.nitrogenOfAir,
  );
