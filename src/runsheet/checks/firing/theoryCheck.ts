import { all, isNumber, noNumber, when } from "../../expressions/choices";
import { fn, is, reckon, type Cell, type Expression } from "../../expressions/Expression";
import { nameOf } from "../../expressions/formulaText";
import { percent } from "../../formulas/percent";
import { isGiven, isUnreadHere } from "../../formulas/salt";
import { isVesselDoubtful } from "../../formulas/vesselAgain";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Salt } from "../../sheet/Salt";
import type { Fired } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { step, type Check, type Step } from "../Check";

const words = checkWords.theory;

/** Whether the formulas can be read and belong together, and each sample lost what they say, within its ± by weighing. */
export function theoryCheck(sheet: RunSheet): Check | undefined {
  const { salt, samples, share, plusMinus, across, end, heating, working, drying } = sheet;
  if (salt === undefined) return undefined;
  const { formula, residue, theory, startMass, residueMass } = salt;
  const [start, stays] = [nameOf(formula), nameOf(residue)];
  const isUnasked = is(fn("COUNTA", formula, residue), "=", 0);
  // With formulas in order there is nothing to look at until something is heated.
  const isRead = when(isNumber(theory), is(theory, ">", 0), all(is(fn("COUNTA", formula), "=", 0), is(fn("ISERROR", residueMass), "=", false)));
  const waits = all(noNumber(across((sample) => share("lossOnHeating", sample))), isRead);
  return {
    silentWhile: fn("OR", isUnasked, waits),
    steps: [
      step(isUnreadHere(salt), words.notHere),
      step(fn("ISERROR", startMass), words.unread(start, nameOf(startMass))),
      step(all(isGiven(formula), is(fn("COUNTA", residue), "=", 0)), words.residueMissing(stays)),
      step(fn("ISERROR", theory), words.notFrom(stays, start, nameOf(theory))),
      step(fn("ISERROR", residueMass), words.unread(stays, nameOf(residueMass))),
      step(all(isNumber(theory), is(fn("N", theory), "<=", 0)), words.nothingLeaves(start, stays)),
      ...samples.map((sample): Step => {
        const [loss, off] = [share("lossOnHeating", sample), plusMinus("lossOnHeating", sample)];
        // The ± of a doubtful vessel reaches over its whole gain and would hide what it does; by its readings alone it stays below 4 u.
        const ofReadings = reckon(reckon(4, "*", fn("N", working.u)), "/", fn("N", drying.net(sample)));
        const within = end === undefined ? fn("N", off) : when(isVesselDoubtful(sheet, end, sample), ofReadings, fn("N", off));
        const isAbove = is(reckon(fn("N", loss), "-", within), ">", theory);
        const plain = words.above(sample, percent(loss, 2), percent(theory, 2));
        const said = end === undefined ? plain : when(isVesselDoubtful(sheet, end, sample), byVessel(sheet, end, sample, loss, theory), plain);
        return step(all(is(fn("COUNT", loss, off, theory), "=", 3), isAbove), said);
      }),
      ...(heating === undefined ? [] : samples.map((sample) => below(sheet, salt, heating, sample))),
    ],
  };
}

/** Heated to the end, and less lost than theory by more than its ±: not all of it changed, or not all of it is what the formula says. */
function below({ share, plusMinus }: RunSheet, { theory }: Salt, heating: Fired, sample: number): Step {
  const [loss, off] = [share("lossOnHeating", sample), plusMinus("lossOnHeating", sample)];
  const isBelow = is(reckon(fn("N", loss), "+", fn("N", off)), "<", theory);
  const isDone = all(is(fn("COUNT", loss, off, theory), "=", 3), is(heating.allSteady, ">", 0));
  return step(all(isDone, isBelow), words.below(sample, percent(loss, 2), percent(theory, 2)));
}

const byVessel = ({ columns, rows }: RunSheet, end: NonNullable<RunSheet["end"]>, sample: number, loss: Cell, theory: Cell): Expression =>
  words.aboveByVessel(sample, percent(loss, 2), percent(theory, 2), nameOf(end.vessel(sample)), nameOf(columns.box(rows.drying.vessel, sample)));
