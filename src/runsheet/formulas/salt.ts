import { all, isNumber, NOTHING, onceNumbers, product, square, sum, unlessError, when, any, type Condition } from "../expressions/choices";
import { fn, is, reckon, retort, type Expression } from "../expressions/Expression";
import type { ShareName } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import type { Salt } from "../sheet/Salt";
import { saltWords } from "../words/saltWords";
import { countOf, isGapless, latest } from "./weighings";

/** A salt heated as weighed in, g without the vessel: its latest weighing before the fire; nothing where it is to be dried first. */
export function asWeighed({ drying, vessel }: RunSheet, { water }: Salt, sample: number): Expression {
  const isWeighed = all(isNumber(vessel(sample)), is(countOf(drying, sample), ">", 0), isGapless(drying, sample));
  return when(is(water, "=", saltWords.choices.asWeighed), when(isWeighed, reckon(latest(drying, sample, 0), "-", vessel(sample)), NOTHING), NOTHING);
}

export const isGiven = (at: Salt["formula"]): Condition => is(fn("COUNTA", at), ">", 0);
const isBlank = (at: Salt["formula"]): Condition => is(fn("COUNTA", at), "=", 0);

// As spreadsheets number their errors (ECMA-376 Part 1, 18.17.7.96, from memory): what a sheet in built-in functions leaves open, and unknown names.
const [NAME, NOT_AVAILABLE] = [5, 7] as const;

/** Whether a formula is read by nobody here: no error that our functions give for one that cannot be read is of these kinds. */
export function isUnreadHere({ startMass, theory, residueMass }: Salt): Condition {
  const isOf = (at: Salt["theory"], kind: number): Condition => unlessError(is(fn("ERROR.TYPE", at), "=", kind));
  return any(...[startMass, theory, residueMass].flatMap((at) => [isOf(at, NAME), isOf(at, NOT_AVAILABLE)]));
}

export const theoryOf = ({ formula, residue }: Salt): Expression =>
  when(any(isBlank(formula), isBlank(residue)), NOTHING, retort("THEORETICALLOSS", formula, residue));

export const equationOf = ({ formula, residue, theory }: Salt): Expression =>
  when(
    any(isBlank(formula), isBlank(residue)),
    NOTHING,
    when(isNumber(theory), retort("THEORETICALLOSS", formula, residue, "", "equation"), NOTHING),
  );

export const startMassOf = ({ formula }: Salt): Expression => when(isBlank(formula), NOTHING, retort("MOLARMASS", formula));

/** Of one substance; a residue of several has no molar mass, and no n. */
export const residueMassOf = ({ residue }: Salt): Expression =>
  when(any(isBlank(residue), isNumber(fn("FIND", "+", residue))), NOTHING, retort("MOLARMASS", residue));

// g/mol, CIAAW 2021: 2 × 1.008 + 15.999; in cell formulas a whole number over a power of ten.
const [WATER, PER] = [18_015, 1000] as const;

/** Waters for one formula of the residue where a share w of the start is water: n = w / (1 - w) × M(residue) / M(water). */
const watersAt = ({ residueMass }: Salt, loss: Expression): Expression =>
  reckon(product(reckon(loss, "/", reckon(1, "-", loss)), residueMass, PER), "/", WATER);

export const watersByTheory = (salt: Salt): Expression =>
  onceNumbers([salt.theory, salt.residueMass], when(is(salt.theory, "<", 1), watersAt(salt, salt.theory), NOTHING));

// Halves and thirds of a water are whole sixths; no sum of CO2, SO2, SO3, NH3, HCl and water comes as near to one.
const SIXTHS = 6;
const NEAR = 10_000;

/** 1 where only water leaves: by theory a whole number of sixths of a water, or with no formula given, as the person takes it to be. */
export function onlyWater(salt: Salt): Expression {
  const sixths = product(SIXTHS, salt.waters);
  const off = fn("ABS", reckon(sixths, "-", fn("ROUND", sixths, 0)));
  const isWhole = when(isNumber(salt.waters), when(all(is(salt.waters, ">", 0), is(reckon(off, "*", NEAR), "<", 1)), 1, 0), 0);
  return when(isBlank(salt.formula), when(isNumber(salt.residueMass), 1, 0), isWhole);
}

export type ByTheory = "ofTheory" | "waters";
export const isByTheory = (name: ShareName): name is ByTheory => name === "ofTheory" || name === "waters";

/** What is measured over theory; n, where only water leaves. */
export function byTheory({ share }: RunSheet, salt: Salt, name: ByTheory, sample: number): Expression {
  const loss = share("lossOnHeating", sample);
  if (name === "ofTheory") return onceNumbers([loss, salt.theory], when(is(salt.theory, ">", 0), reckon(loss, "/", salt.theory), NOTHING));
  return onceNumbers([loss, salt.residueMass], when(all(is(salt.isWater, "=", 1), is(loss, "<", 1)), watersAt(salt, loss), NOTHING));
}

/**
 * ± 95 % of the same from that of the loss: U / theory, and U M(residue) / M(water) / (1 - w)^2 (GUM, JCGM 100:2008, 5.1.2). The atomic
 * weights add a few parts in 100,000, which no weighing here sees.
 */
export function byTheoryPlusMinus({ share, plusMinus }: RunSheet, salt: Salt, name: ByTheory, sample: number): Expression {
  const [loss, off] = [share("lossOnHeating", sample), plusMinus("lossOnHeating", sample)];
  if (name === "ofTheory") return onceNumbers([share(name, sample), off], reckon(off, "/", salt.theory));
  const slope = reckon(product(off, salt.residueMass, PER), "/", product(WATER, square(sum(1, reckon(0, "-", loss)))));
  return onceNumbers([share(name, sample), off], slope);
}
