import { all, isNumber, when, type Condition } from "../../expressions/choices";
import { fn, is, reckon, type Expression } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import type { RunSheet } from "../../sheet/RunSheet";
import { checkWords } from "../../words/checkWords";
import { saltWords } from "../../words/saltWords";
import type { ChecksAt } from "./checksSay";

const { contradiction } = checkWords.verdicts;

const percent = (fraction: Expression, decimals: number): Expression => fn("FIXED", reckon(100, "*", fraction), decimals, true);

/** The answer where more left than the formulas allow, and nothing contradicts besides. */
export function aboveTheory({ salt, across, share }: RunSheet, checks: ChecksAt): readonly (readonly [Condition, Expression])[] {
  if (salt === undefined || checks.theory === undefined) return [];
  const losses = across((sample) => share("lossOnHeating", sample));
  const alone = all(is(checks.theory, "=", contradiction), is(fn("COUNTIF", checks.verdicts, contradiction), "=", 1));
  return [[alone, saltWords.above(percent(fn("AVERAGE", losses), 1), salt.formula, salt.residue, percent(salt.theory, 2))]];
}

/** The answer of a salt that is heated to the end, with theory beside it where that is known. */
export function lossSays({ salt }: RunSheet, together: Expression, stayed: Expression, samples: Expression, material: Expression): Expression {
  const plain = saltWords.lost(together, stayed, samples, material);
  if (salt === undefined) return plain;
  const beside = saltWords.lostBeside(together, salt.formula, salt.residue, percent(salt.theory, 2), samples);
  const ofNothing = saltWords.lostOfNothing(together, nameOf(salt.formula), nameOf(salt.residue), samples);
  return when(isNumber(salt.theory), when(is(salt.theory, ">", 0), beside, ofNothing), plain);
}
