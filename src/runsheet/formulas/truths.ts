import { NOTHING, when, type Condition } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";

// Above the number of any box, so that one cell holds two.
const PER_TRUTH = 1_000_000;

/** The last wrong clock box and the last truth as one number, below 0 where there is a truth: sheets hold few cells more. */
export const withTruth = (clock: Expression, truth: Expression): Expression => reckon(clock, "-", reckon(PER_TRUTH, "*", truth));

/** Whether a box holds a truth that the spreadsheet counts as a number. */
export const isTruthHeld = ({ working }: RunSheet): Condition => is(working.wrongClock, "<", 0);

/** The number of that box. */
export const truthOf = ({ working }: RunSheet): Expression => reckon(0, "-", fn("INT", reckon(working.wrongClock, "/", PER_TRUTH)));

/** Nothing while one does: without the vessel no sample is judged, and none has a share. */
export const unlessTruth = (sheet: RunSheet, vessel: Expression): Expression => when(isTruthHeld(sheet), NOTHING, vessel);
