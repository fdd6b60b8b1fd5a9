import { all, any, firstOf, isNumber, NOTHING, when, type Condition } from "../expressions/choices";
import { cell, fixed, fn, is, joined, reckon, type Expression } from "../expressions/Expression";
import { nameOf } from "../expressions/formulaText";
import { checkWords } from "../words/checkWords";
import { saltWords } from "../words/saltWords";
import type { ShareName } from "../sheet/layout";
import type { RunSheet, Salt } from "../sheet/RunSheet";
import { isMarked, percent, type ChecksAt } from "./answer";

const { says } = saltWords;
const { verdicts } = checkWords;

/** Whether theory is in doubt itself; where it is not, less than it left, of which the comparison tells the meaning. */
const isUnread = ({ theory, startMass, residueMass }: Salt): Condition =>
  any(fn("ISERROR", startMass), fn("ISERROR", residueMass), is(when(isNumber(theory), is(theory, ">", 0), false), "=", false));

const theoryPercent = ({ theory }: Salt): Expression => percent(theory, 2);

/** What the loss comes to: n and which number is claimed, or the share of theory; before that, what theory says. */
export function saltSays(sheet: RunSheet, salt: Salt, checks: ChecksAt): Expression {
  const { heating, across, share, setup, working, options } = sheet;
  const of = (name: ShareName) => across((sample) => share(name, sample));
  const hasAll = (name: ShareName): Condition => is(fn("COUNT", of(name), working.together(name)), ">", fn("MAX", 1, working.inUse));
  const isUnfinished = heating === undefined ? any(is(1, "=", 1)) : is(heating.allSteady, "=", 0);
  const before = firstOf(
    [
      [isNumber(salt.theory), says.theory(theoryPercent(salt), salt.equation)],
      [is(salt.isWater, "=", 1), says.findsWater(salt.residue)],
    ],
    says.invite(fn("ROW", salt.formula), fn("ROW", salt.residue)),
  );
  const isDifferent = all(any(is(setup.samplesAre, "=", "different"), is(setup.samplesAre, "=", "")), is(working.inUse, ">", 1));
  return firstOf(
    [
      [isMarked(checks), says.waits],
      ...(checks.theory === undefined
        ? []
        : ([[all(is(checks.theory, "=", verdicts.doubt), isUnread(salt)), says.inDoubt(nameOf(checks.theory))]] as const)),
      [any(isUnfinished, is(fn("COUNT", of("lossOnHeating")), "<", fn("MAX", 1, working.inUse))), before],
      ...(options.replicates === 1 ? [] : ([[isDifferent, says.each]] as const)),
      [hasAll("waters"), watersSay(sheet, salt)],
      [hasAll("ofTheory"), shareSays(sheet)],
    ],
    before,
  );
}

const togetherText = ({ rows, columns }: RunSheet, name: ShareName): Expression => fixed(cell(rows.results.shares[name] ?? 0, columns.verdict));

function shareSays(sheet: RunSheet): Expression {
  const { across, share, working } = sheet;
  const [mean, off] = [fn("AVERAGE", across((sample) => share("ofTheory", sample))), working.together("ofTheory")]; // prettier-ignore
  const told = (verdict: string): Expression => says.theoryShare(togetherText(sheet, "ofTheory"), verdict);
  return firstOf(
    [
      [is(mean, ">", reckon(1, "+", off)), told(says.aboveWhole)],
      [is(reckon(mean, "+", off), ">=", 1), told(says.whole)],
    ],
    told(says.part),
  );
}

/** Whole parts of so many within n ± U: how many there are, and the last of them. */
const within = (parts: number, least: Expression, most: Expression) => {
  const last = fn("INT", reckon(parts, "*", most));
  // The least whole number not below x is -INT(-x).
  const first = reckon(0, "-", fn("INT", reckon(0, "-", reckon(parts, "*", least))));
  return { last, count: reckon(reckon(last, "-", first), "+", 1) };
};

/** A whole, half or third number of waters is claimed only where it alone of them lies within the ± 95 %. */
function watersSay(sheet: RunSheet, salt: Salt): Expression {
  const { across, share, working } = sheet;
  const [n, off] = [fn("AVERAGE", across((sample) => share("waters", sample))), working.together("waters")]; // prettier-ignore
  const [least, most] = [fn("MAX", 0, reckon(n, "-", off)), reckon(n, "+", off)];
  const [wholes, halves, thirds] = [within(1, least, most), within(2, least, most), within(3, least, most)];
  // Each whole number is a half and a third number too.
  const simple = reckon(reckon(halves.count, "+", thirds.count), "-", wholes.count);
  const byFormula = when(isNumber(salt.waters), says.formulaSays(fn("ROUND", salt.waters, 2)), NOTHING);
  const claimed = (called: Expression, number: Expression): Expression => {
    const isTheSame = is(fn("ROUND", reckon(salt.waters, "-", number), 2), "=", 0);
    return joined(says.claimed(called), when(isNumber(salt.waters), when(isTheSame, says.asFormula, byFormula), NOTHING));
  };
  const besideFormula = (verdict: Expression): Expression => joined(verdict, byFormula);
  const verdict = firstOf(
    [
      [all(is(wholes.count, "=", 1), is(wholes.last, "=", 0)), besideFormula(says.noWater)],
      [all(is(wholes.count, "=", 1), is(simple, "=", 1)), claimed(wholes.last, wholes.last)],
      [is(wholes.count, "=", 1), besideFormula(says.fits(wholes.last))],
      [is(simple, ">", 1), besideFormula(says.open)],
      [is(simple, "<", 1), besideFormula(says.between)],
      [is(halves.count, "=", 1), claimed(halfText(halves.last), reckon(halves.last, "/", 2))],
    ],
    claimed(says.third(thirds.last), reckon(thirds.last, "/", 3)),
  );
  return says.waters(togetherText(sheet, "waters"), salt.residue, verdict);
}

const halfText = (halves: Expression): Expression => when(is(halves, "=", 1), joined("1/2"), says.half(fn("INT", reckon(halves, "/", 2))));
