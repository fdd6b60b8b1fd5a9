import { all, any, firstOf, isNumber, NOTHING, sum, when, type Condition } from "../../expressions/choices";
import { cell, fixed, fn, is, joined, reckon, type Expression } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import type { Salt } from "../../sheet/Salt";
import { checkWords } from "../../words/checkWords";
import { saltWords } from "../../words/saltWords";
import type { ShareName } from "../../sheet/layout";
import type { RunSheet } from "../../sheet/RunSheet";
import { areKeptApart } from "../agreement";
import { percent } from "../percent";
import { isMarked, type ChecksAt } from "./checksSay";
import { isUnreadHere } from "../salt";

const { says } = saltWords;
const { verdicts } = checkWords;

/** Whether theory is in doubt itself; where it is not, less than it left, of which the comparison tells the meaning. */
const isUnread = ({ theory, startMass, residueMass }: Salt): Condition =>
  any(fn("ISERROR", startMass), fn("ISERROR", residueMass), is(when(isNumber(theory), is(theory, ">", 0), false), "=", false));

const theoryPercent = ({ theory }: Salt): Expression => percent(theory, 2);

/** What the loss comes to: n and which number is claimed, or the share of theory; before that, what theory says. */
export function saltSays(sheet: RunSheet, salt: Salt, checks: ChecksAt): Expression {
  const { heating, across, share, working, options } = sheet;
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
  const isDifferent = areKeptApart(sheet);
  return firstOf(
    [
      [isUnreadHere(salt), says.notHere],
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
  return { last, count: fn("MAX", 0, reckon(reckon(last, "-", first), "+", 1)) };
};

// Hydrates with half a water are hemihydrates, sesquihydrates and those of 2 1/2 and 3 1/2 (CaSO4·0.5H2O, K2CO3·1.5H2O, CdCl2·2.5H2O,
// FeCl3·3.5H2O); from memory. Above, salts take up whole waters.
const MOST_HALVES = 7;
/** A number is claimed only where of n drawn at random no more than one in ten would fit too, so that the fit is evidence; own bound. */
const MOST_BY_CHANCE = 10;

/**
 * A whole number of waters, or a half up to 3 1/2, is claimed only where it alone lies within the ± 95 % and few n would by chance: 2 U of
 * them where whole numbers fit, 4 U where halves do too. That of the formula is told to fit; other parts are no usual hydrate.
 */
function watersSay(sheet: RunSheet, salt: Salt): Expression {
  const { across, share, working } = sheet;
  const [n, off] = [fn("AVERAGE", across((sample) => share("waters", sample))), working.together("waters")]; // prettier-ignore
  const [least, most] = [fn("MAX", 0, reckon(n, "-", off)), reckon(n, "+", off)];
  const upTo = fn("MIN", most, reckon(MOST_HALVES, "/", 2));
  const [wholes, halves, belowHalves] = [within(1, least, most), within(2, least, upTo), within(1, least, upTo)];
  // Each whole number is two halves too.
  const fitting = sum(wholes.count, halves.count, reckon(0, "-", belowHalves.count));
  const isOfHalves = is(n, "<", reckon(MOST_HALVES + 1, "/", 2));
  const byChance = fn("ROUNDUP", reckon(when(isOfHalves, 400, 200), "*", off), 0);
  const isByFormula = all(isNumber(salt.waters), is(fn("ABS", reckon(n, "-", fn("N", salt.waters))), "<=", off));
  const byFormula = when(isNumber(salt.waters), says.formulaSays(fn("ROUND", salt.waters, 2)), NOTHING);
  const besideFormula = (verdict: Expression): Expression => joined(verdict, byFormula);
  const fits = (called: Expression, number: Expression): Expression => {
    const isTheSame = is(fn("ROUND", reckon(fn("N", salt.waters), "-", number), 2), "=", 0);
    return when(
      is(byChance, ">", MOST_BY_CHANCE),
      besideFormula(says.fits(called, byChance)),
      joined(says.claimed(called, byChance), when(isNumber(salt.waters), when(isTheSame, says.asFormula, byFormula), NOTHING)),
    );
  };
  const verdict = firstOf(
    [
      [all(is(wholes.count, "=", 1), is(wholes.last, "=", 0)), besideFormula(says.noWater)],
      [is(fitting, ">", 1), besideFormula(says.open)],
      [is(wholes.count, "=", 1), fits(wholes.last, wholes.last)],
      [is(fitting, "=", 1), fits(halfText(halves.last), reckon(halves.last, "/", 2))],
      [isByFormula, says.formulaFits(fn("ROUND", salt.waters, 2))],
    ],
    besideFormula(says.between),
  );
  return says.waters(togetherText(sheet, "waters"), salt.residue, verdict);
}

const halfText = (halves: Expression): Expression => when(is(halves, "=", 1), joined("1/2"), says.half(fn("INT", reckon(halves, "/", 2))));
